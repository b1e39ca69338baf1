/**
 * Opens a database for a restore: empty, with the tables of exactly the migrations that the backup was made with.
 *
 * In the flow: restore -> [open-empty] -> restore-rows. Later migrations come at the next start, like at any update.
 * IO: the data folder, or the network to PostgreSQL.
 */
import { mkdir } from 'node:fs/promises';
import { PGlite } from '@electric-sql/pglite';
import { PrismaPg } from '@prisma/adapter-pg';
import { PrismaClient } from '../../prisma/generated/client.ts';
import { Problem } from '../core/problem.ts';
import { migrationNames } from './migration-engine.ts';
import { applyMigrations } from './migrations.ts';
import { pgliteAdapter } from './pglite-adapter.ts';
import { lockPostgres } from './postgres.ts';

export interface EmptyDatabase {
  client: PrismaClient;
  close(): Promise<void>;
}

/** @throws Problem 'database-newer' when this version does not know all of the migrations. */
export function refuseUnknownMigrations(migrations: readonly string[]): void {
  const known = new Set(migrationNames());
  const unknown = migrations.filter((name) => !known.has(name));
  if (unknown.length === 0) return;
  throw new Problem(
    'database-newer',
    `A newer Veilstep made this backup: its database has ${unknown.length} change${unknown.length === 1 ? '' : 's'} ` +
      `that this version does not know (the last is ${unknown.at(-1)}). Restore it with the newer version.`,
  );
}

/** A new embedded database in `folder`, which is made. */
export async function openEmptyEmbedded(
  folder: string,
  migrations: readonly string[],
): Promise<EmptyDatabase> {
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const pglite = await PGlite.create(folder);
  try {
    const adapter = pgliteAdapter(pglite);
    await applyMigrations(adapter, { applied: [], missing: [...migrations], broken: null });
    const client = new PrismaClient({ adapter });
    return {
      client,
      async close() {
        await client.$disconnect();
        await pglite.close();
      },
    };
  } catch (thrown) {
    await pglite.close();
    throw thrown;
  }
}

/**
 * A PostgreSQL database that has no tables yet.
 *
 * @throws Problem 'data-folder-busy' when it has some, or when somebody uses it.
 */
export async function openEmptyPostgres(url: string, migrations: readonly string[]): Promise<EmptyDatabase> {
  const guard = await lockPostgres(url);
  try {
    const ask = async (sql: string) => (await guard.query<Record<string, unknown>>(sql)).rows;
    const [tables] = await ask(
      `SELECT count(*)::int AS count FROM information_schema.tables WHERE table_schema = current_schema()`,
    );
    if (Number(tables?.count) > 0) throw notEmpty();
    const adapter = new PrismaPg({ connectionString: url });
    await applyMigrations(adapter, { applied: [], missing: [...migrations], broken: null });
    const client = new PrismaClient({ adapter });
    return {
      client,
      async close() {
        await client.$disconnect();
        await guard.end();
      },
    };
  } catch (thrown) {
    await guard.end();
    throw thrown;
  }
}

/** Takes every table away again: a restore that broke off leaves the database as empty as it was. */
export async function emptyPostgres(url: string): Promise<void> {
  const guard = await lockPostgres(url);
  try {
    const { rows } = await guard.query<{ name: string }>(
      `SELECT table_name AS name FROM information_schema.tables WHERE table_schema = current_schema()`,
    );
    for (const { name } of rows)
      await guard.query(`DROP TABLE IF EXISTS "${name.replaceAll('"', '""')}" CASCADE`);
  } finally {
    await guard.end();
  }
}

function notEmpty(): Problem {
  return new Problem(
    'data-folder-busy',
    'The database that DATABASE_URL names has tables already, and a backup goes into an empty one. Make a new ' +
      'database, or set DATABASE_URL to another.',
  );
}
