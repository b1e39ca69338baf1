import { existsSync } from 'node:fs';
import { mkdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { backUpBeforeMigration } from '#server/store/backup.ts';
import { migrationNames } from '#server/store/migration-engine.ts';
import { migrationState } from '#server/store/migrations.ts';
import { closeDatabase, openDatabase } from '#server/store/open-database.ts';
import { aDataFolder } from '#tests/helpers/a-store.ts';

let dataFolder: string;
beforeEach(async () => {
  dataFolder = await aDataFolder();
});
afterEach(async () => {
  await closeDatabase();
  await rm(dataFolder, { recursive: true, force: true });
});

async function withDatabase<T>(folder: string, work: (pglite: PGlite) => Promise<T>): Promise<T> {
  const pglite = await PGlite.create(join(folder, 'database'));
  try {
    return await work(pglite);
  } finally {
    await pglite.close();
  }
}

const asking = (pglite: PGlite) => async (sql: string) =>
  (await pglite.query<Record<string, unknown>>(sql)).rows;

describe('migrations on the embedded database', () => {
  test('every committed migration stands in the table that Prisma keeps', async () => {
    const names = await withDatabase(
      dataFolder,
      async (pglite) =>
        (
          await pglite.query<{ name: string }>(
            'SELECT migration_name AS name FROM _prisma_migrations ORDER BY 1',
          )
        ).rows,
    );
    expect(names.map((row) => row.name)).toEqual(migrationNames());
  });

  test('opening again applies nothing and copies nothing', async () => {
    await expect(openDatabase({ dataFolder, databaseUrl: null })).resolves.toEqual({
      migrated: [],
      backup: null,
    });
    expect(existsSync(join(dataFolder, 'backups'))).toBe(false);
  });

  test('a database that a newer version wrote is refused and left as it was', async () => {
    await withDatabase(dataFolder, (pglite) =>
      pglite.exec(`INSERT INTO _prisma_migrations (id, checksum, migration_name, finished_at, applied_steps_count)
        VALUES ('x', 'x', '29990101000000_from_the_future', now(), 1)`),
    );
    await expect(openDatabase({ dataFolder, databaseUrl: null })).rejects.toMatchObject({
      code: 'database-newer',
      message: expect.stringContaining('29990101000000_from_the_future'),
    });
    const count = await withDatabase(
      dataFolder,
      async (pglite) => (await pglite.query('SELECT 1 FROM _prisma_migrations')).rows.length,
    );
    expect(count).toBe(migrationNames().length + 1);
  });

  test('a migration that breaks off leaves nothing of itself', async () => {
    await withDatabase(dataFolder, (pglite) =>
      // The same state as before the last migration, but with a table in its way.
      pglite.exec(`DROP SCHEMA public CASCADE; CREATE SCHEMA public; CREATE TABLE "Picture" (id int)`),
    );
    await expect(openDatabase({ dataFolder, databaseUrl: null })).rejects.toThrow(
      /Picture|already exists|migrat/i,
    );
    const tables = await withDatabase(
      dataFolder,
      async (pglite) =>
        (
          await pglite.query<{ name: string }>(
            `SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public'`,
          )
        ).rows,
    );
    expect(tables).toEqual([{ name: 'Picture' }]);
  });

  test('a database that was half made when the process was killed is made anew', async () => {
    await rm(join(dataFolder, 'database'), { recursive: true });
    await mkdir(join(dataFolder, 'database.making'), { recursive: true });
    await writeFile(join(dataFolder, 'database.making', 'PG_VERSION'), 'half');
    const { migrated } = await openDatabase({ dataFolder, databaseUrl: null });
    expect(migrated).toEqual(migrationNames());
    expect(existsSync(join(dataFolder, 'database.making'))).toBe(false);
  });
});

describe('the copy before a migration', () => {
  test('holds a database that opens and every picture, and counts as no second copy of the pixels', async () => {
    const blob = join(dataFolder, 'blobs', 'ab', 'abcd');
    await mkdir(join(dataFolder, 'blobs', 'ab'), { recursive: true });
    await writeFile(blob, 'pixels');
    const backup = await withDatabase(dataFolder, async (pglite) => {
      await pglite.exec(`INSERT INTO "Person" (id, name) VALUES ('p1', 'Ottoline')`);
      const state = await migrationState(asking(pglite), [...migrationNames(), '20990101000000_next']);
      return backUpBeforeMigration(dataFolder, state, pglite, new Date('2026-05-04T03:02:01Z'));
    });
    expect(backup).toBe(join(dataFolder, 'backups', '2026-05-04T030201-before-20990101000000_next'));
    if (backup === null) return;
    const people = await withDatabase(
      backup,
      async (pglite) => (await pglite.query('SELECT name FROM "Person"')).rows,
    );
    expect(people).toEqual([{ name: 'Ottoline' }]);
    const copied = join(backup, 'blobs', 'ab', 'abcd');
    await expect(readFile(copied, 'utf8')).resolves.toBe('pixels');
    expect((await stat(copied)).ino).toBe((await stat(blob)).ino);
    expect(existsSync(`${backup}.making`)).toBe(false);
  });

  test('is not made for a new database', async () => {
    const backup = await withDatabase(dataFolder, (pglite) =>
      backUpBeforeMigration(dataFolder, { applied: [], missing: ['a'], broken: null }, pglite),
    );
    expect(backup).toBeNull();
  });
});
