/**
 * A backup: every row of the database from one moment, and every stored file that a row of that moment names.
 *
 * In the flow: `npm run backup` -> (the running server, by the lock's socket) -> [backup] -> file. While it is made
 * nothing is removed from the files, so whatever the rows name is there. IO: the database, the data folder.
 */
import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { finished } from 'node:stream/promises';
import { z } from 'zod';
import { ARCHIVE_VERSION, ManifestBase } from '../core/outward/manifest.ts';
import { say } from '../core/say/say.ts';
import { sweepBlobs } from '../store/blob-sweep.ts';
import { blobPath, incomingFolder, listBlobs, pauseRemovals } from '../store/blobs.ts';
import { dumpRows, rowsFile } from '../store/dump-rows.ts';
import { Packing } from './packing.ts';
import { PRODUCT_VERSION } from './product-version.ts';
import { Archive, archiveRefused } from './unpacking.ts';

/** The manifest of a backup. */
export const BackupManifest = ManifestBase.extend({
  format: z.literal('veilstep backup'),
  migrations: z.array(z.string().max(200)),
  tables: z.array(z.strictObject({ name: z.string().max(100), rows: z.int().min(0) })),
  sequences: z.array(z.strictObject({ name: z.string().max(100), last: z.string().regex(/^\d{1,20}$/) })),
});
export type BackupManifest = z.infer<typeof BackupManifest>;

/** A backup is the operator's own file: its size is bounded by the disk alone. */
const UNBOUNDED = { mostBytes: Number.MAX_SAFE_INTEGER, mostFiles: 200_001 };

/** Path of a table's rows, and of a stored file, inside a backup. */
export const rowsPath = (table: string): string => `rows/${rowsFile(table)}`;
export const filePath = (hash: string): string => `files/${hash}`;

/** Begins a backup. The stream fails when it cannot be made; the database must be open. */
export async function makeBackup(now = new Date()): Promise<Readable> {
  const resume = await pauseRemovals();
  await mkdir(incomingFolder(), { recursive: true, mode: 0o700 });
  const folder = await mkdtemp(join(incomingFolder(), 'backup-'));
  const settle = async () => {
    resume();
    await rm(folder, { recursive: true, force: true });
    await sweepBlobs();
  };
  try {
    const out = await packed(folder, now);
    // Whatever becomes of it; whoever reads the stream hears of its errors.
    finished(out)
      .catch(() => undefined)
      .then(settle)
      .catch(() => undefined);
    return out;
  } catch (thrown) {
    await settle();
    throw thrown;
  }
}

async function packed(folder: string, now: Date): Promise<Readable> {
  const dump = await dumpRows(folder);
  const packing = new Packing();
  for (const { name } of dump.tables) {
    await packing.addFile(rowsPath(name), join(folder, rowsFile(name)), { compress: true });
  }
  for (const sha256 of await listBlobs())
    await packing.addFile(filePath(sha256), blobPath(sha256), { sha256 });
  return packing.finish({
    format: 'veilstep backup',
    formatVersion: ARCHIVE_VERSION,
    madeBy: PRODUCT_VERSION,
    at: now.toISOString(),
    ...dump,
  });
}

/**
 * Opens a backup and reads all of it once: every hash is right.
 *
 * @throws Problem 'archive-refused' when it is not whole.
 */
export async function openWholeBackup(path: string): Promise<{ archive: Archive; manifest: BackupManifest }> {
  const archive = await Archive.open(path, 'veilstep backup', UNBOUNDED);
  try {
    const manifest = BackupManifest.safeParse(archive.manifest);
    if (!manifest.success) throw archiveRefused(say`has a list that cannot be read`, manifest.error);
    for (const { path: part } of manifest.data.files) {
      const stream = await archive.stream(part);
      stream.resume();
      await finished(stream);
    }
    for (const { name } of manifest.data.tables) {
      if (!archive.has(rowsPath(name))) throw archiveRefused(say`lacks a part (${rowsPath(name)})`);
    }
    return { archive, manifest: manifest.data };
  } catch (thrown) {
    archive.close();
    throw thrown;
  }
}
