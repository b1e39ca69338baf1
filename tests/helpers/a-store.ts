/**
 * A fresh, migrated store in a folder of its own, for tests of whatever sits on the database.
 *
 * Migrating takes seconds, copying a migrated folder does not: the first test run makes a template, keyed by
 * the migrations, and every store is a copy of it.
 */
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { cp, mkdir, mkdtemp, readdir, readFile, rename, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeFact } from '#server/store/installation.ts';
import { PRISMA_FOLDER } from '#server/store/migration-engine.ts';
import { closeDatabase, openDatabase } from '#server/store/open-database.ts';

export interface AStore {
  /** The data folder; `database` lies in it. */
  dataFolder: string;
  /** Closes the database and removes the folder. */
  close(): Promise<void>;
}

/**
 * Opens a store: one per test file at a time, for a process has one database.
 * Sets VEILSTEP_DATA, so that code which reads the environment finds the same folder.
 */
export async function openAStore(): Promise<AStore> {
  const dataFolder = await aDataFolder();
  process.env.VEILSTEP_DATA = dataFolder;
  await openDatabase({ dataFolder, databaseUrl: null });
  return {
    dataFolder,
    async close() {
      await closeDatabase();
      await rm(dataFolder, { recursive: true, force: true });
    },
  };
}

/** A data folder with a migrated, empty, closed database. The caller removes it. */
export async function aDataFolder(): Promise<string> {
  const template = await migratedTemplate();
  const dataFolder = await mkdtemp(join(tmpdir(), 'veilstep-test-'));
  await cp(template, dataFolder, { recursive: true });
  return dataFolder;
}

async function migratedTemplate(): Promise<string> {
  const template = join(tmpdir(), `veilstep-template2-${await migrationsHash()}`);
  if (existsSync(template)) return template;
  const beside = await mkdtemp(join(tmpdir(), 'veilstep-making-'));
  await mkdir(beside, { recursive: true });
  await openDatabase({ dataFolder: beside, databaseUrl: null });
  // A server started on a copy then leaves the demo board out; tests of the demo start on an empty folder.
  await writeFact('demo-made', 'left out of tests');
  await closeDatabase();
  // Another worker may have been faster; its template is as good.
  await rename(beside, template).catch(() => rm(beside, { recursive: true, force: true }));
  return template;
}

async function migrationsHash(): Promise<string> {
  const folder = join(PRISMA_FOLDER, 'migrations');
  const hash = createHash('sha256');
  for (const name of (await readdir(folder)).sort()) {
    if (name.endsWith('.toml')) continue;
    hash.update(name).update(await readFile(join(folder, name, 'migration.sql')));
  }
  return hash.digest('hex').slice(0, 16);
}
