/**
 * What `npm start`, `npm test` and the others do first: install, generate the database client, build the
 * pages. Does nothing when nothing changed: each step is stamped, after it succeeded, with a hash of
 * everything that went into it.
 *
 * In the flow: npm's pre-scripts -> [prepare]. Needs only Node.js, for nothing is installed yet when it runs.
 * IO: the project folder, npm, on Debian apt for the browser of the tests.
 */
import { existsSync } from 'node:fs';
import { ensureChromium } from './chromium.mjs';
import { hashOf } from './inputs.mjs';
import { installedAsLocked } from './installed.mjs';
import { runNode, runNpm } from './run.mjs';
import { isStamped, stamp, unstamp } from './stamps.mjs';

/** Which steps each mode needs; `cli` keeps standard output free for the command that follows. */
const MODES = {
  start: ['install', 'generate', process.env.VEILSTEP_LANGUAGE === 'de' ? 'build-german' : 'build'],
  test: ['install', 'generate', 'build-for-tests', 'build-german-for-tests', 'chromium'],
  bench: ['install', 'generate', 'build-for-tests', 'chromium'],
  check: ['install', 'generate', 'page-types'],
  dev: ['install', 'generate'],
  cli: ['install', 'generate'],
};

/** What the pages may import; the checked arrows keep the rest of server/ out of them. */
const BUNDLED = [
  'app',
  ...['core', 'http', 'access', 'store', 'imaging', 'env.ts', 'log.ts'].map((name) => `server/${name}`),
];

/**
 * `made` must exist for a stamp to count, so that removing it by hand brings it back; `done` tells that the
 * step was done by hand already.
 */
const STEPS = {
  install: {
    saying: 'Installing the packages (the first time takes a minute or two) …',
    inputs: ['package-lock.json'],
    alsoHash: [process.platform, process.arch],
    done: installedAsLocked,
    made: 'node_modules/.package-lock.json',
    run: () => runNpm(['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error']),
  },
  generate: {
    saying: 'Preparing the database client …',
    inputs: ['prisma/schema.prisma', 'package-lock.json'],
    made: 'prisma/generated/client.ts',
    // Prisma would download an engine that generating does not use; any program that exists satisfies it.
    run: () =>
      runNode(['node_modules/prisma/build/index.js', 'generate', '--no-hints'], {
        PRISMA_SCHEMA_ENGINE_BINARY: process.execPath,
        PRISMA_HIDE_UPDATE_MESSAGE: '1',
        CHECKPOINT_DISABLE: '1',
      }),
  },
  build: buildStep('.next'),
  'build-german': buildStep('.next-de', 'de'),
  'build-for-tests': buildStep('.next-test'),
  'build-german-for-tests': buildStep('.next-test-de', 'de'),
  'page-types': {
    saying: 'Writing the types of the pages …',
    inputs: ['app', 'next.config.mjs', 'package-lock.json'],
    made: 'next-env.d.ts',
    run: () => runNode(['node_modules/next/dist/bin/next', 'typegen'], { NEXT_TELEMETRY_DISABLED: '1' }),
  },
};

/** Builds into a folder of its own, so that a test run, or a server in another language, is never disturbed. */
function buildStep(folder, language = 'en') {
  return {
    saying: language === 'en' ? 'Building the pages …' : 'Building the pages in German …',
    inputs: [...BUNDLED, 'prisma/schema.prisma', 'next.config.mjs', 'package-lock.json'],
    made: `${folder}/BUILD_ID`,
    run: () =>
      runNode(['node_modules/next/dist/bin/next', 'build'], {
        NODE_ENV: 'production',
        NEXT_TELEMETRY_DISABLED: '1',
        VEILSTEP_BUILD: folder,
        VEILSTEP_LANGUAGE: language,
      }),
  };
}

function perform(name) {
  if (name === 'chromium') return ensureChromium();
  const step = STEPS[name];
  const hash = hashOf(step.inputs, step.alsoHash);
  if (existsSync(step.made) && isStamped(name, hash)) return;
  if (step.done?.()) return stamp(name, hash);
  process.stderr.write(`${step.saying}\n`);
  unstamp(name);
  step.run();
  if (!existsSync(step.made)) throw new Error(`${step.made} is not there after it was made.`);
  stamp(name, hash);
}

const mode = process.argv[2] ?? 'start';
if (!MODES[mode]) {
  process.stderr.write(`prepare.mjs knows ${Object.keys(MODES).join(', ')}; it was asked for ${mode}.\n`);
  process.exit(1);
}
try {
  for (const name of MODES[mode]) perform(name);
} catch (thrown) {
  process.stderr.write(`Preparing failed: ${thrown.message}\n`);
  process.exit(1);
}
