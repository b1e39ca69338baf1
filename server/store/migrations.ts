/**
 * Brings the database to this version's schema at start, and refuses a database that a newer version wrote.
 *
 * In the flow: open-database -> [migrations] -> database. IO: the database, reads prisma/migrations.
 */
import type { SqlMigrationAwareDriverAdapterFactory } from '@prisma/driver-adapter-utils';
import { Problem } from '../core/problem.ts';
import { migrationNames, NO_FILTER, readMigrations, startMigrationEngine } from './migration-engine.ts';

/** Answers a query with rows of column name to value; over PGlite or PostgreSQL. */
export type Ask = (sql: string) => Promise<Record<string, unknown>[]>;

export interface MigrationState {
  /** Migrations the database has, oldest first. */
  applied: string[];
  /** Migrations of this version that it lacks, oldest first. */
  missing: string[];
  /** A migration that was begun and never finished, or null. */
  broken: string | null;
}

/**
 * What the database has and lacks.
 *
 * @param carried The migrations of this version; the committed ones unless a test says otherwise.
 * @throws Problem 'database-newer' when it has a migration that this version does not know.
 */
export async function migrationState(
  ask: Ask,
  carried: string[] = migrationNames(),
): Promise<MigrationState> {
  const [table] = await ask(`SELECT to_regclass('"_prisma_migrations"')::text AS name`);
  if (!table?.name) return { applied: [], missing: carried, broken: null };
  const rows = await ask(
    `SELECT migration_name AS name, finished_at IS NOT NULL AS finished FROM "_prisma_migrations"
     WHERE rolled_back_at IS NULL ORDER BY started_at`,
  );
  const applied = rows.filter((row) => row.finished).map((row) => String(row.name));
  const unknown = applied.filter((name) => !carried.includes(name));
  if (unknown.length > 0) throw databaseNewer(unknown);
  return {
    applied,
    missing: carried.filter((name) => !applied.includes(name)),
    broken: rows.filter((row) => !row.finished).map((row) => String(row.name))[0] ?? null,
  };
}

/**
 * Applies what is missing and tells what it applied.
 *
 * @throws Problem 'database-unreachable' naming a migration that broke off earlier.
 */
export async function applyMigrations(
  adapter: SqlMigrationAwareDriverAdapterFactory,
  state: MigrationState,
): Promise<string[]> {
  if (state.broken) throw brokenMigration(state.broken);
  if (state.missing.length === 0) return [];
  const engine = await startMigrationEngine(adapter);
  try {
    const { appliedMigrationNames } = await engine.applyMigrations({
      migrationsList: readMigrations(new Set([...state.applied, ...state.missing])),
      filters: NO_FILTER,
    });
    return appliedMigrationNames;
  } finally {
    engine.free();
  }
}

function databaseNewer(unknown: string[]): Problem {
  return new Problem(
    'database-newer',
    `A newer Veilstep wrote this database: it has ${unknown.length} change${unknown.length === 1 ? '' : 's'} ` +
      `that this version does not know (the last is ${unknown.at(-1)}). Start the newer version, or restore ` +
      'the backup that it made before it changed the database.',
  );
}

function brokenMigration(name: string): Problem {
  return new Problem(
    'database-unreachable',
    `The change ${name} of the database broke off half-way. Restore the backup that was made before it, ` +
      'and start again.',
  );
}
