/**
 * Opens, migrates and closes the database: PGlite in the data folder, or a PostgreSQL server.
 *
 * In the flow: start -> [open] -> store. IO: the data folder, or the network to PostgreSQL.
 * The caller holds the lock of the data folder (lock.ts); PGlite takes none.
 */
import { existsSync } from 'node:fs';
import { rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import { PrismaClient } from '../../prisma/generated/client.ts';
import { backUpBeforeMigration } from './backup.ts';
import { database, offerDatabase } from './database.ts';
import { applyMigrations, migrationState } from './migrations.ts';
import { pgliteAdapter } from './pglite-adapter.ts';
import { openPostgres } from './postgres.ts';
import { storeProblem } from './trouble.ts';

export interface DatabaseSettings {
  /** Absolute path of the data folder. */
  dataFolder: string;
  /** PostgreSQL server in place of the embedded database, or null. */
  databaseUrl: string | null;
  /** Leaves the schema as it is: for whoever only copies rows. */
  asItIs?: boolean;
}

export interface Opened {
  /** Names of the migrations that were applied now. */
  migrated: string[];
  /** Where the copy from before them lies; null when nothing was there to copy or PostgreSQL holds the data. */
  backup: string | null;
}

/** An open connection with what it takes to close it. */
interface Connection extends Opened {
  client: PrismaClient;
  close(): Promise<void>;
}

let open: Connection | undefined;

/**
 * Opens the database and brings it to this version's schema.
 *
 * @throws Problem 'database-newer', 'database-unreachable', 'data-folder-busy' (PostgreSQL) or 'disk-full'.
 */
export async function openDatabase(settings: DatabaseSettings): Promise<Opened> {
  if (open) throw new Error('The database is open already.');
  try {
    open = settings.databaseUrl
      ? await openPostgres(settings.databaseUrl, settings.asItIs)
      : await openEmbedded(settings.dataFolder, settings.asItIs);
  } catch (thrown) {
    throw storeProblem(thrown);
  }
  offerDatabase(open.client);
  return { migrated: open.migrated, backup: open.backup };
}

/** Closes the database; does nothing when it is closed. */
export async function closeDatabase(): Promise<void> {
  const closing = open;
  open = undefined;
  if (!closing) return;
  offerDatabase(undefined);
  await closing.client.$disconnect();
  await closing.close();
}

/** Whether the database answers a query. */
export async function databaseAnswers(): Promise<boolean> {
  try {
    await database().$queryRaw`SELECT 1`;
    return true;
  } catch {
    return false;
  }
}

async function openEmbedded(dataFolder: string, asItIs = false): Promise<Connection> {
  const folder = join(dataFolder, 'database');
  const fresh = !existsSync(folder);
  if (fresh) await makeEmbedded(folder);
  const pglite = await PGlite.create(folder);
  try {
    const adapter = pgliteAdapter(pglite);
    if (asItIs) return asFound({ client: new PrismaClient({ adapter }), close: () => pglite.close() });
    const state = await migrationState(
      async (sql) => (await pglite.query<Record<string, unknown>>(sql)).rows,
    );
    const backup = await backUpBeforeMigration(dataFolder, state, pglite);
    const migrated = await inOneTransaction(pglite, () => applyMigrations(adapter, state));
    return { client: new PrismaClient({ adapter }), migrated, backup, close: () => pglite.close() };
  } catch (thrown) {
    await pglite.close();
    throw thrown;
  }
}

function asFound(connection: Pick<Connection, 'client' | 'close'>): Connection {
  return { ...connection, migrated: [], backup: null };
}

/** Makes the empty database beside its place and renames it, so that a kill leaves none half-made. */
async function makeEmbedded(folder: string): Promise<void> {
  const beside = `${folder}.making`;
  await rm(beside, { recursive: true, force: true });
  try {
    const pglite = await PGlite.create(beside);
    await pglite.close();
    await rename(beside, folder);
  } finally {
    await rm(beside, { recursive: true, force: true });
  }
}

/** PGlite is one session, so what the migration engine does inside here happens whole or not at all. */
async function inOneTransaction<T>(pglite: PGlite, work: () => Promise<T>): Promise<T> {
  await pglite.exec('BEGIN');
  try {
    const result = await work();
    await pglite.exec('COMMIT');
    return result;
  } catch (thrown) {
    await pglite.exec('ROLLBACK');
    throw thrown;
  }
}
