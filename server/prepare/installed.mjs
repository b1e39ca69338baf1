/**
 * Whether node_modules holds what the lock file names, by npm's own record of its last whole install.
 *
 * So a developer who ran `npm install` by hand does not wait for a second one. IO: reads both files.
 */
import { readFileSync } from 'node:fs';

export function installedAsLocked() {
  let locked;
  let installed;
  try {
    locked = JSON.parse(readFileSync('package-lock.json', 'utf8')).packages;
    installed = JSON.parse(readFileSync('node_modules/.package-lock.json', 'utf8')).packages;
  } catch {
    return false;
  }
  const foreign = Object.values(installed).some(
    ({ os, cpu }) => !serves(os, process.platform) || !serves(cpu, process.arch),
  );
  if (foreign) return false;
  return Object.entries(locked).every(([path, wanted]) => {
    if (path === '') return true;
    const found = installed[path];
    // Packages for other systems are locked and not installed.
    if (!found) return wanted.optional === true || wanted.peer === true;
    return found.version === wanted.version;
  });
}

/** npm's lists name what is served, or with a "!" what is not; no list serves all. */
function serves(list, mine) {
  if (!list) return true;
  return list.includes(mine) || (list.every((name) => name.startsWith('!')) && !list.includes(`!${mine}`));
}
