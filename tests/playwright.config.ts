/** Settings of the tests in a real Chromium. They run against the built app, each file with a server of its own. */
import { existsSync } from 'node:fs';
import { defineConfig } from '@playwright/test';

const DEBIAN_CHROMIUM = '/usr/bin/chromium';
const executablePath =
  process.env.VEILSTEP_CHROMIUM ?? (existsSync(DEBIAN_CHROMIUM) ? DEBIAN_CHROMIUM : undefined);

export default defineConfig({
  testDir: './browser',
  outputDir: './.out/browser',
  timeout: 120_000,
  expect: { timeout: 15_000 },
  // One at a time: each test drives a server, a database, workers and one to three browsers on two cores.
  workers: 1,
  forbidOnly: true,
  retries: 0,
  reporter: process.env.VEILSTEP_TEST_REPORT
    ? [['list'], ['json', { outputFile: process.env.VEILSTEP_TEST_REPORT }]]
    : [['list']],
  use: {
    viewport: { width: 1440, height: 900 },
    trace: 'retain-on-failure',
    launchOptions: {
      ...(executablePath ? { executablePath } : {}),
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--no-first-run',
      ],
    },
  },
});
