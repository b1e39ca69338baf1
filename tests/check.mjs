/** `npm run check`: format and lint, types, arrows, dead code, schema against migrations. Stops at the first that fails. */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const STEPS = [
  ['format and lint', ['node_modules/@biomejs/biome/bin/biome', 'check', '.']],
  ['types', ['node_modules/typescript/bin/tsc', '--noEmit', '-p', '.']],
  [
    'arrows',
    [
      'node_modules/dependency-cruiser/bin/dependency-cruise.mjs',
      '--config',
      'tests/architecture/arrows.cjs',
      'app',
      'server',
      'prisma',
      'tests',
    ],
  ],
  ['dead code', ['node_modules/knip/bin/knip.js', '--config', 'tests/architecture/knip.json']],
  ['schema and migrations', ['--import', 'tsx', 'prisma/check-drift.ts']],
];

for (const [name, args] of STEPS) {
  process.stdout.write(`- ${name}\n`);
  const { status } = spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit' });
  if (status !== 0) {
    process.stdout.write(`npm run check: ${name} failed.\n`);
    process.exit(1);
  }
}
process.stdout.write('npm run check: all clean.\n');
