/** The hash of everything that goes into a step of preparing: names and contents of files. IO: reads them. */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/**
 * @param paths Files and folders, relative to the project; missing ones count as absent.
 * @param alsoHash Further words that must stay the same, such as the version of Node.js.
 */
export function hashOf(paths, alsoHash = []) {
  const hash = createHash('sha256');
  for (const word of alsoHash) hash.update(`${word}\0`);
  for (const path of paths)
    for (const file of filesUnder(path)) hash.update(`${file}\0`).update(readFileSync(file));
  return hash.digest('hex');
}

function filesUnder(path) {
  if (!existsSync(path)) return [];
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesUnder(join(path, name)));
}
