/** Remembers which step succeeded with which inputs, in `.veilstep-stamps/`. IO: that folder. */
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const FOLDER = '.veilstep-stamps';

export function isStamped(step, hash) {
  try {
    return readFileSync(join(FOLDER, step), 'utf8') === hash;
  } catch {
    return false;
  }
}

export function stamp(step, hash) {
  mkdirSync(FOLDER, { recursive: true });
  writeFileSync(join(FOLDER, step), hash);
}

export function unstamp(step) {
  rmSync(join(FOLDER, step), { force: true });
}
