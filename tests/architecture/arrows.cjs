/**
 * Which folder may import which. Each arrow that is allowed is written down; everything else is refused.
 * DEVELOPERS.md draws the same picture.
 */
const SERVER = {
  core: [],
  imaging: ['core'],
  store: ['core'],
  access: ['core', 'store'],
  live: ['core', 'store', 'access'],
  http: ['core', 'store', 'access'],
  sheet: ['core', 'imaging'],
  pipeline: ['core', 'imaging', 'store', 'sheet'],
  outward: ['core', 'imaging', 'store', 'access'],
  demo: ['core', 'imaging', 'store'],
  cli: ['core', 'imaging', 'pipeline', 'store', 'access', 'prepare', 'outward'],
};

const ROOT_FILES = '^server/(env|log)\\.ts$';

/** A folder of server/ may import itself, the folders listed for it, env and log, and packages. */
const folderRules = Object.entries(SERVER).map(([folder, mayImport]) => ({
  name: `server-${folder}`,
  severity: 'error',
  comment: `server/${folder} may import: ${[folder, ...mayImport].join(', ')}`,
  from: { path: `^server/${folder}/` },
  to: {
    path: '^(server|app|prisma|tests)/',
    pathNot: [
      ...[folder, ...mayImport].map((name) => `^server/${name}/`),
      ...(folder === 'core' ? [] : [ROOT_FILES]),
      ...(folder === 'store' ? ['^prisma/generated/'] : []),
    ],
  },
}));

module.exports = {
  forbidden: [
    ...folderRules,
    {
      name: 'contract-knows-no-rules',
      comment: 'What travels does not depend on the rules that fill it.',
      severity: 'error',
      from: { path: '^server/core/contract/' },
      to: { path: '^server/core/', pathNot: '^server/core/(contract/|say/|problem\\.ts$)' },
    },
    {
      name: 'no-cycles',
      severity: 'error',
      comment: 'A cycle means that two files are one; types alone may point back.',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'core-is-pure',
      severity: 'error',
      comment: 'core runs in the browser too: no Node, no packages but these.',
      from: { path: '^server/core/' },
      to: {
        path: 'node_modules|^node:',
        pathNot: ['node_modules/(culori|yjs|zod|lib0)/'],
        dependencyTypesNot: ['type-only'],
      },
    },
    {
      name: 'core-uses-no-node',
      severity: 'error',
      from: { path: '^server/core/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'pixels-only-in-imaging',
      severity: 'error',
      from: { path: '^(server|app)/', pathNot: '^server/imaging/' },
      to: { path: 'node_modules/(sharp|libheif-js)/' },
    },
    {
      name: 'database-only-in-store',
      severity: 'error',
      from: { path: '^(server|app)/', pathNot: '^server/store/' },
      to: { path: 'node_modules/(@prisma|@electric-sql|pg|pglite-prisma-adapter)/|^prisma/' },
    },
    {
      name: 'main-world-stays-out-of-app',
      severity: 'error',
      comment: 'Next would make a second set of rooms and workers.',
      from: { path: '^app/' },
      to: { path: '^server/(live|pipeline|demo|cli|prepare)/|^server/main\\.ts' },
    },
    {
      name: 'handlers-inspect-only',
      severity: 'error',
      from: { path: '^app/' },
      to: { path: '^server/imaging/', pathNot: '^server/imaging/inspect\\.ts$' },
    },
    {
      name: 'browser-code-imports-core-only',
      severity: 'error',
      from: { path: '^app/.*_[a-z]+/' },
      to: { path: '^server/', pathNot: '^server/core/' },
    },
    {
      name: 'server-never-imports-app',
      severity: 'error',
      from: { path: '^server/' },
      to: { path: '^app/' },
    },
    {
      name: 'nothing-imports-tests',
      severity: 'error',
      from: { path: '^(app|server|prisma)/' },
      to: { path: '^tests/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)(\\.next[a-z-]*|data)/' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
    },
  },
};
