/**
 * The copy of the data folder that is made before a newer version changes the database.
 *
 * Lies in `<data>/backups/<date>-before-<migration>/` and is laid out like the data folder, so restoring is
 * putting it back. Pictures never change once written: they are hard-linked where the disk can, else copied.
 * In the flow: open-database -> [backup] -> migrations. IO: the data folder.
 */

import { existsSync } from 'node:fs';
import { copyFile, cp, link, mkdir, readdir, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { PGlite } from '@electric-sql/pglite';
import type { MigrationState } from './migrations.ts';

/** Never part of a backup: older backups, files being written, and a database being made. */
const LEFT_OUT = new Set(['backups', 'database', 'database.making', 'incoming']);

/**
 * Copies the data folder when an existing database is about to change.
 *
 * @returns The folder of the copy, or null when the database is new or up to date.
 */
export async function backUpBeforeMigration(
  dataFolder: string,
  state: MigrationState,
  pglite: PGlite,
  now: Date = new Date(),
): Promise<string | null> {
  const [next] = state.missing;
  if (state.applied.length === 0 || next === undefined) return null;
  const stamp = now.toISOString().slice(0, 19).replaceAll(':', '');
  const place = join(dataFolder, 'backups', `${stamp}-before-${next}`);
  const beside = `${place}.making`;
  await rm(beside, { recursive: true, force: true });
  try {
    await mkdir(beside, { recursive: true });
    // Everything is in the files after a checkpoint, and nobody else writes: the lock is held.
    await pglite.exec('CHECKPOINT');
    await pglite.syncToFs();
    await cp(join(dataFolder, 'database'), join(beside, 'database'), { recursive: true });
    await linkAll(dataFolder, beside, LEFT_OUT);
    await rename(beside, place);
  } finally {
    await rm(beside, { recursive: true, force: true });
  }
  return place;
}

async function linkAll(from: string, to: string, leftOut: ReadonlySet<string> = new Set()): Promise<void> {
  for (const entry of await readdir(from, { withFileTypes: true })) {
    if (leftOut.has(entry.name)) continue;
    const [source, target] = [join(from, entry.name), join(to, entry.name)];
    if (entry.isDirectory()) {
      await mkdir(target, { recursive: true });
      await linkAll(source, target);
    } else if (entry.isFile() && existsSync(source)) {
      await link(source, target).catch(() => copyFile(source, target));
    }
  }
}
