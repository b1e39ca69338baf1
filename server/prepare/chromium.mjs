/**
 * The browser of the tests: Debian's Chromium, installed when this runs as root on Debian; elsewhere it says
 * what to install. IO: apt-get.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { run } from './run.mjs';

const DEBIAN_CHROMIUM = '/usr/bin/chromium';

/** @throws Error saying what to install when there is no browser and none can be installed from here. */
export function ensureChromium() {
  if (existsSync(process.env.VEILSTEP_CHROMIUM ?? DEBIAN_CHROMIUM) || playwrightHasOne()) return;
  if (process.env.VEILSTEP_CHROMIUM) {
    throw new Error(`VEILSTEP_CHROMIUM names ${process.env.VEILSTEP_CHROMIUM}, and no file is there.`);
  }
  if (!isDebian() || process.getuid?.() !== 0) {
    throw new Error(
      'The browser tests need Chromium. Run "npx playwright install chromium", or set VEILSTEP_CHROMIUM to the ' +
        'path of one, and run this again.',
    );
  }
  process.stderr.write("Installing Debian's Chromium for the browser tests …\n");
  run('apt-get', ['update', '-qq'], {});
  run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], {
    DEBIAN_FRONTEND: 'noninteractive',
  });
}

function isDebian() {
  try {
    return /^ID(_LIKE)?=.*debian/m.test(readFileSync('/etc/os-release', 'utf8'));
  } catch {
    return false;
  }
}

/** Where the test tool keeps the browsers that it downloaded itself. */
function playwrightHasOne() {
  const caches = {
    darwin: join(homedir(), 'Library', 'Caches', 'ms-playwright'),
    win32: join(process.env.LOCALAPPDATA ?? homedir(), 'ms-playwright'),
  };
  const folder =
    process.env.PLAYWRIGHT_BROWSERS_PATH ??
    caches[process.platform] ??
    join(homedir(), '.cache', 'ms-playwright');
  return existsSync(folder) && readdirSync(folder).some((name) => /^chromium/.test(name));
}
