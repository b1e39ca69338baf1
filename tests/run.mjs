/**
 * Runs every test and closes with one line, `N passed, N failed`.
 *
 * First the tests that need no browser (vitest), then those in a real Chromium (Playwright). Arguments narrow
 * the run: `npm test -- unit` runs vitest on paths with "unit", `npm test -- browser` the browser tests alone.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const out = fileURLToPath(new URL('.out/', import.meta.url));
const narrowed = process.argv.slice(2);

/** @returns the parsed report and the exit code; the report is null when the runner died before writing one. */
function run(name, program, args) {
  const report = `${out}${name}.json`;
  rmSync(report, { force: true });
  const ended = spawnSync(process.execPath, [`${root}${program}`, ...args], {
    cwd: root,
    stdio: 'inherit',
    // The tests speak English, whatever the house of whoever runs them speaks.
    env: {
      ...process.env,
      VEILSTEP_TEST_REPORT: report,
      VEILSTEP_BUILD: '.next-test',
      VEILSTEP_LANGUAGE: 'en',
    },
  });
  try {
    return { status: ended.status ?? 1, report: JSON.parse(readFileSync(report, 'utf8')) };
  } catch {
    return { status: ended.status ?? 1, report: null };
  }
}

function unitTests() {
  const { status, report } = run('vitest', 'node_modules/vitest/vitest.mjs', [
    'run',
    '--config',
    'tests/vitest.config.ts',
    ...narrowed,
  ]);
  const passed = report?.numPassedTests ?? 0;
  const failed = report?.numFailedTests ?? 0;
  // A file that fails to load has no tests to count; it still is a failure.
  return { passed, failed: status !== 0 && failed === 0 ? 1 : failed };
}

function browserTests() {
  const { status, report } = run('playwright', 'node_modules/@playwright/test/cli.js', [
    'test',
    '--config',
    'tests/playwright.config.ts',
    ...narrowed.filter((word) => word !== 'browser'),
  ]);
  const passed = report?.stats?.expected ?? 0;
  const failed = (report?.stats?.unexpected ?? 0) + (report?.stats?.flaky ?? 0);
  return { passed, failed: status !== 0 && failed === 0 ? 1 : failed };
}

mkdirSync(out, { recursive: true });
const onlyBrowser = narrowed.includes('browser');
const onlyUnit = narrowed.length > 0 && !onlyBrowser;
const parts = [onlyBrowser ? null : unitTests(), onlyUnit ? null : browserTests()].filter(Boolean);
const passed = parts.reduce((sum, part) => sum + part.passed, 0);
const failed = parts.reduce((sum, part) => sum + part.failed, 0);
process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
process.exit(failed === 0 && passed > 0 ? 0 : 1);
