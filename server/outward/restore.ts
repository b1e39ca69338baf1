/**
 * Puts a backup into an empty data folder, all of it or nothing.
 *
 * In the flow: `npm run restore` -> [restore] -> store. Everything is made in `<data>/restoring` and moved to its place
 * at the end, so that a restore that broke off is seen as such and can be begun again. IO: the data folder, the database.
 */
import { createWriteStream, existsSync } from 'node:fs';
import { mkdir, open, readdir, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { Problem } from '../core/problem.ts';
import type { Environment } from '../env.ts';
import { lockFolder } from '../store/lock.ts';
import {
  type EmptyDatabase,
  emptyPostgres,
  openEmptyEmbedded,
  openEmptyPostgres,
  refuseUnknownMigrations,
} from '../store/open-empty.ts';
import { restoreRows } from '../store/restore-rows.ts';
import { storeProblem } from '../store/trouble.ts';
import { type BackupManifest, filePath, openWholeBackup, rowsPath } from './backup.ts';
import type { Archive } from './unpacking.ts';

type Place = Pick<Environment, 'dataFolder' | 'dataFolderName' | 'databaseUrl'>;

/** What came back. */
export interface Restored {
  /** When the backup was made, ISO 8601. */
  at: string;
  files: number;
  rows: number;
}

const MAKING = 'restoring';
/** What a disk of its own may bring along. */
const NOT_OURS = new Set(['lost+found', '.DS_Store']);

/**
 * @param file Absolute path of the backup.
 * @throws Problem 'archive-refused', 'database-newer', 'data-folder-busy' when the folder or the database holds
 *   something, 'disk-full'.
 */
export async function restoreBackup(file: string, place: Place): Promise<Restored> {
  const { archive, manifest } = await openWholeBackup(file);
  try {
    refuseUnknownMigrations(manifest.migrations);
    return await withFolder(place, () => restoreInto(place, archive, manifest));
  } catch (thrown) {
    throw storeProblem(thrown);
  } finally {
    archive.close();
  }
}

async function withFolder<T>({ dataFolder, dataFolderName }: Place, act: () => Promise<T>): Promise<T> {
  const wasThere = existsSync(dataFolder);
  await mkdir(dataFolder, { recursive: true, mode: 0o700 });
  let done = false;
  try {
    const lock = await lockFolder(dataFolder, dataFolderName, async () => 'not yet');
    try {
      await refuseUsed(dataFolder, dataFolderName);
      const result = await act();
      done = true;
      return result;
    } finally {
      await lock.release();
    }
  } finally {
    if (!done && !wasThere) await rm(dataFolder, { recursive: true, force: true });
  }
}

/** An empty folder, or one in which a restore broke off. */
async function refuseUsed(dataFolder: string, name: string): Promise<void> {
  const found = (await readdir(dataFolder)).filter((entry) => !NOT_OURS.has(entry));
  const brokeOff = found.includes(MAKING) && found.every((entry) => entry === MAKING || entry === 'blobs');
  if (brokeOff) {
    for (const entry of found) await rm(join(dataFolder, entry), { recursive: true, force: true });
  } else if (found.length > 0) {
    throw new Problem(
      'data-folder-busy',
      `The folder ${name} is not empty (it holds ${found.slice(0, 3).join(', ')}), and a backup goes into an empty ` +
        'one. Move it away, or set VEILSTEP_DATA to another folder.',
    );
  }
}

async function restoreInto(place: Place, archive: Archive, manifest: BackupManifest): Promise<Restored> {
  const making = join(place.dataFolder, MAKING);
  let database: EmptyDatabase | null = null;
  try {
    await mkdir(making, { mode: 0o700 });
    const files = await restoreFiles(archive, manifest, join(making, 'blobs'));
    database = place.databaseUrl
      ? await openEmptyPostgres(place.databaseUrl, manifest.migrations)
      : await openEmptyEmbedded(join(making, 'database'), manifest.migrations);
    await restoreRows(database.client, manifest, (table) => archive.stream(rowsPath(table)));
    await database.close();
    // The database comes last: with it the folder is one that a server starts on.
    for (const part of (await readdir(making)).sort())
      await rename(join(making, part), join(place.dataFolder, part));
    await rm(making, { recursive: true, force: true });
    return { at: manifest.at, files, rows: manifest.tables.reduce((sum, { rows }) => sum + rows, 0) };
  } catch (thrown) {
    await database?.close().catch(() => undefined);
    if (database && place.databaseUrl) await emptyPostgres(place.databaseUrl);
    await rm(making, { recursive: true, force: true });
    throw thrown;
  }
}

async function restoreFiles(archive: Archive, { files }: BackupManifest, folder: string): Promise<number> {
  await mkdir(folder, { recursive: true, mode: 0o700 });
  let count = 0;
  for (const { path, sha256 } of files) {
    if (path !== filePath(sha256)) continue;
    const target = join(folder, basename(path).slice(0, 2), basename(path));
    await mkdir(dirname(target), { recursive: true, mode: 0o700 });
    await pipeline(await archive.stream(path), createWriteStream(target, { mode: 0o600, flags: 'wx' }));
    const written = await open(target, 'r');
    await written.sync().finally(() => written.close());
    count++;
  }
  return count;
}
