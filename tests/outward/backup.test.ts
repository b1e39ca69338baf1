/** A backup brings everything back, row by row and byte by byte, and goes into an empty folder or nowhere. */
import { randomBytes } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { environment } from '#server/env.ts';
import { makeBackup, openWholeBackup } from '#server/outward/backup.ts';
import { restoreBackup } from '#server/outward/restore.ts';
import { sweepBlobs } from '#server/store/blob-sweep.ts';
import { database } from '#server/store/database.ts';
import { appendUpdates, lastUpdateId, readRoom } from '#server/store/live-updates.ts';
import { migrationNames } from '#server/store/migration-engine.ts';
import { closeDatabase, openDatabase } from '#server/store/open-database.ts';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';
import { backupTo, everyFile, everyRow, fillStore } from './backup-cases.ts';

let store: AStore;
let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'veilstep-backup-'));
  store = await openAStore();
});
afterEach(async () => {
  await store.close();
  await rm(stored(), { recursive: true, force: true });
  await rm(folder, { recursive: true, force: true });
});

/** The environment is read once a process: the files of every test here lie in the folder of the first. */
const stored = () => environment().dataFolder;
const into = (name: string) => ({ dataFolder: join(folder, name), dataFolderName: name, databaseUrl: null });

test('every row and every file comes back as it was, and numbering goes on where it stood', async () => {
  const { boardId } = await fillStore();
  const [rows, files] = [await everyRow(), await everyFile(stored())];
  const backup = await backupTo(folder);
  const highest = (await readRoom(boardId, 'marks')).throughId;
  await closeDatabase();

  const restored = await restoreBackup(backup, into('again'));
  expect(restored.files).toBe(files.size);
  expect((await readdir(into('again').dataFolder)).sort()).toEqual(['blobs', 'database']);
  expect(await openDatabase(into('again'))).toEqual({ migrated: [], backup: null });
  expect(await everyRow()).toEqual(rows);
  expect(await everyFile(into('again').dataFolder)).toEqual(files);
  await appendUpdates([{ boardId, room: 'marks', bytes: Uint8Array.of(7) }]);
  expect(await lastUpdateId(boardId, 'marks')).toBeGreaterThan(highest);
  expect((await readRoom(boardId, 'marks')).loose).toBe(1);
});

test('a file that goes while a backup is being made is in it all the same, and is gone afterwards', async () => {
  await fillStore();
  const files = await everyFile(stored());
  const stream = await makeBackup();
  await database().picture.deleteMany();
  expect(await sweepBlobs()).toBe(0);
  const path = join(folder, 'one.veilstep');
  await pipeline(stream, createWriteStream(path));
  await expect.poll(async () => (await everyFile(stored())).size).toBe(0);
  await closeDatabase();
  await restoreBackup(path, into('again'));
  expect(await everyFile(into('again').dataFolder)).toEqual(files);
});

test('a folder that holds something is left as it is', async () => {
  const backup = await backupTo(folder);
  const place = into('used');
  await mkdir(place.dataFolder);
  await writeFile(join(place.dataFolder, 'letter.txt'), 'mine');
  await expect(restoreBackup(backup, place)).rejects.toMatchObject({
    code: 'data-folder-busy',
    message: expect.stringContaining('letter.txt'),
  });
  expect(await readdir(place.dataFolder)).toEqual(['letter.txt']);
});

test('a restore that broke off can be begun again', async () => {
  await fillStore();
  const rows = await everyRow();
  const backup = await backupTo(folder);
  await closeDatabase();
  const place = into('again');
  await mkdir(join(place.dataFolder, 'restoring', 'database'), { recursive: true });
  await mkdir(join(place.dataFolder, 'blobs', 'ab'), { recursive: true });
  await restoreBackup(backup, place);
  await openDatabase(place);
  expect(await everyRow()).toEqual(rows);
});

test('a backup that is cut short is refused, and nothing is left of it', async () => {
  await fillStore();
  const whole = await readFile(await backupTo(folder));
  await closeDatabase();
  const broken = join(folder, 'broken.veilstep');
  const cuts = Array.from({ length: 20 }, (_, at) => whole.subarray(0, Math.floor((whole.length * at) / 20)));
  for (const bytes of [...cuts, whole.subarray(0, -1), randomBytes(500)]) {
    await writeFile(broken, bytes);
    await expect(restoreBackup(broken, into('never'))).rejects.toMatchObject({ code: 'archive-refused' });
    expect(await readdir(folder)).not.toContain('never');
  }
});

test('whichever byte of a backup is changed, it is refused or brings back exactly what it held', async () => {
  await fillStore();
  const path = await backupTo(folder);
  const whole = await readFile(path);
  const { archive, manifest } = await openWholeBackup(path);
  archive.close();
  const broken = join(folder, 'broken.veilstep');
  let refused = 0;
  for (let at = 0; at < 150; at++) {
    const changed = Uint8Array.from(whole);
    const place = Math.floor((whole.length * at) / 150);
    changed[place] = (changed[place] ?? 0) ^ 0x5a;
    await writeFile(broken, changed);
    const opened = await openWholeBackup(broken).catch((thrown: unknown) => {
      expect(thrown).toMatchObject({ code: 'archive-refused' });
      return null;
    });
    if (!opened) refused++;
    opened?.archive.close();
    if (opened) expect(opened.manifest).toEqual(manifest);
  }
  expect(refused).toBeGreaterThan(100);
});

test('a backup of a later version is refused with what to do', async () => {
  await database()
    .$executeRaw`INSERT INTO _prisma_migrations (id, checksum, migration_name, finished_at, applied_steps_count)
    VALUES ('x', 'x', '29990101000000_from_the_future', now(), 1)`;
  const backup = await backupTo(folder);
  await expect(restoreBackup(backup, into('never'))).rejects.toMatchObject({
    code: 'database-newer',
    message: expect.stringContaining('29990101000000_from_the_future'),
  });
});

test('a backup of an earlier version comes back and is brought up to date at the next start', async () => {
  const [first] = migrationNames();
  const earlier = into('earlier');
  await closeDatabase();
  const { openEmptyEmbedded } = await import('#server/store/open-empty.ts');
  await mkdir(earlier.dataFolder);
  await (await openEmptyEmbedded(join(earlier.dataFolder, 'database'), [first ?? ''])).close();
  await openDatabase({ ...earlier, asItIs: true });
  await database().$executeRaw`INSERT INTO "Person" (id, name) VALUES ('p1', 'Ottoline')`;
  const backup = await backupTo(folder);
  await closeDatabase();
  await restoreBackup(backup, into('again'));
  expect((await openDatabase(into('again'))).migrated).toEqual(migrationNames().slice(1));
  expect(await database().person.findUnique({ where: { id: 'p1' } })).toMatchObject({ name: 'Ottoline' });
});
