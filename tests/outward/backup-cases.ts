/** A store with something in every kind of column, and everything that a database and its files hold, to be compared. */
import { createHash, randomUUID } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { makeBackup } from '#server/outward/backup.ts';
import { hashOf, putBlob, releaseBlobs } from '#server/store/blobs.ts';
import { database } from '#server/store/database.ts';
import { appendUpdates, lastUpdateId, raiseEpoch, replaceBySnapshot } from '#server/store/live-updates.ts';

/** Rows of every table as the database itself writes them, by table. */
export async function everyRow(): Promise<Map<string, string[]>> {
  const tables = await database().$queryRaw<{ name: string }[]>`
    SELECT table_name::text AS name FROM information_schema.tables
    WHERE table_schema = current_schema() AND table_name <> '_prisma_migrations'`;
  const rows = new Map<string, string[]>();
  for (const { name } of tables) {
    const found = await database().$queryRawUnsafe<{ row: string }[]>(
      `SELECT each::text AS row FROM "${name}" AS each`,
    );
    rows.set(name, found.map(({ row }) => row).sort());
  }
  return rows;
}

/** Path inside the data folder -> SHA-256, of the stored files. */
export async function everyFile(dataFolder: string): Promise<Map<string, string>> {
  const files = new Map<string, string>();
  for (const folder of await readdir(join(dataFolder, 'blobs')).catch(() => [])) {
    for (const name of await readdir(join(dataFolder, 'blobs', folder))) {
      const bytes = await readFile(join(dataFolder, 'blobs', folder, name));
      files.set(`${folder}/${name}`, createHash('sha256').update(bytes).digest('hex'));
    }
  }
  return files;
}

/** Fills a store with what is easily lost: bytes, large numbers, fractions, JSON, nulls, odd letters, days, a room that was compacted. */
export async function fillStore(): Promise<{ boardId: string }> {
  const personId = randomUUID();
  await database().person.create({
    data: { id: personId, name: 'Þóra "the \\ quiet"\n😀', isHost: true, email: `${personId}@example.org` },
  });
  const { id: boardId } = await database().board.create({
    data: { id: randomUUID(), title: 'Reeds; at, the “weir”', ownerId: personId, overAt: new Date(1) },
  });
  const bytes = Uint8Array.from({ length: 9000 }, (_, at) => (at * 31) % 256);
  const originalHash = await putBlob(bytes);
  const { id: pictureId } = await database().picture.create({
    data: {
      ...{ id: randomUUID(), boardId, kind: 'painting', painterId: personId, widthPx: 4, heightPx: 3 },
      ...{ originalHash, originalType: 'image/png', clippedHigh: 0.1 + 0.2, clippedLow: 5e-324 },
      renditions: {
        create: {
          name: 'plate',
          hash: originalHash,
          mediaType: 'image/png',
          widthPx: 4,
          heightPx: 3,
          sizeBytes: 9000,
        },
      },
    },
  });
  releaseBlobs([originalHash]);
  await database().measure.create({
    data: {
      ...{ pictureId, inputsHash: hashOf(bytes), formulaVersion: 3 },
      document: { planes: [{ name: 'Far \u0001 ridge', dark: 1 / 3, big: 2 ** 53 }], none: null },
    },
  });
  for (const value of [1, 2, 3, 250]) {
    await appendUpdates([{ boardId, room: 'marks', bytes: Uint8Array.of(0, value, 10, 13) }]);
  }
  const through = await lastUpdateId(boardId, 'marks');
  // A snapshot in three parts, and no update left beside it: the next number must still be above it.
  await replaceBySnapshot(
    boardId,
    'marks',
    through,
    Uint8Array.from({ length: 600_000 }, (_, at) => at % 251),
  );
  await raiseEpoch(boardId, 'marks');
  return { boardId };
}

/** Makes a backup of the open store. @returns Where it lies. */
export async function backupTo(folder: string): Promise<string> {
  const path = join(folder, `${randomUUID()}.veilstep`);
  await pipeline(await makeBackup(), createWriteStream(path));
  return path;
}
