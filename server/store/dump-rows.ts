/**
 * Every row of every table as text, all from one moment: what a backup holds of the database.
 *
 * The database writes each row as JSON itself, so that no type is turned twice, and the same text goes back into the
 * embedded database and into a PostgreSQL server. In the flow: backup -> [dump-rows] -> packing. IO: the database,
 * files in a folder of the caller's.
 */
import { createWriteStream } from 'node:fs';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { Prisma } from '../../prisma/generated/client.ts';
import { database } from './database.ts';

/** What was written, and what it takes to make the same tables again. */
export interface Dump {
  /** Migrations that the tables are made of, oldest first. */
  migrations: string[];
  tables: { name: string; rows: number }[];
  /** Last number each sequence gave out; those that gave none are left out. */
  sequences: { name: string; last: string }[];
}

/** Rows fetched at once: a row holds 256 kB at most where it is large. */
const ROWS_AT_ONCE = 40;
const WAIT_MS = 10 * 60_000;
const LASTS_MS = 60 * 60_000;

/** File of a table's rows, one JSON object a line. */
export function rowsFile(table: string): string {
  return `${table}.ndjson`;
}

/**
 * Writes all rows to files in `folder`. Others write on meanwhile on a PostgreSQL server, and wait on the embedded
 * database, whose one session is taken; nothing of theirs is half in.
 */
export function dumpRows(folder: string): Promise<Dump> {
  return database().$transaction(
    async (session) => {
      const tables: Dump['tables'] = [];
      for (const name of await tableNames(session)) {
        const counted = { rows: 0 };
        await pipeline(
          Readable.from(rowsOf(session, name, counted)),
          createWriteStream(join(folder, rowsFile(name)), { mode: 0o600 }),
        );
        tables.push({ name, rows: counted.rows });
      }
      return { migrations: await migrationsIn(session), tables, sequences: await sequencesIn(session) };
    },
    { isolationLevel: 'RepeatableRead', maxWait: WAIT_MS, timeout: LASTS_MS },
  );
}

type Session = Pick<Prisma.TransactionClient, '$queryRaw' | '$queryRawUnsafe' | '$executeRawUnsafe'>;

async function tableNames(session: Session): Promise<string[]> {
  const rows = await session.$queryRaw<{ name: string }[]>`
    SELECT table_name::text AS name FROM information_schema.tables
    WHERE table_schema = current_schema() AND table_type = 'BASE TABLE' AND table_name <> '_prisma_migrations'
    ORDER BY 1`;
  return rows.map(({ name }) => name);
}

async function migrationsIn(session: Session): Promise<string[]> {
  const rows = await session.$queryRaw<{ name: string }[]>`
    SELECT migration_name::text AS name FROM "_prisma_migrations"
    WHERE finished_at IS NOT NULL AND rolled_back_at IS NULL ORDER BY started_at, migration_name`;
  return rows.map(({ name }) => name);
}

async function sequencesIn(session: Session): Promise<Dump['sequences']> {
  return session.$queryRaw<{ name: string; last: string }[]>`
    SELECT sequencename::text AS name, last_value::text AS last FROM pg_sequences
    WHERE schemaname = current_schema() AND last_value IS NOT NULL ORDER BY 1`;
}

async function* rowsOf(session: Session, table: string, counted: { rows: number }): AsyncGenerator<string> {
  const name = quoted(table);
  await session.$executeRawUnsafe(
    `DECLARE backup_rows NO SCROLL CURSOR FOR SELECT row_to_json(each)::text AS row FROM ${name} AS each`,
  );
  for (;;) {
    const rows = await session.$queryRawUnsafe<{ row: string }[]>(`FETCH ${ROWS_AT_ONCE} FROM backup_rows`);
    if (rows.length === 0) break;
    counted.rows += rows.length;
    yield rows.map(({ row }) => `${row}\n`).join('');
  }
  await session.$executeRawUnsafe('CLOSE backup_rows');
}

/** A name of the database's own, for a statement that takes no parameter there. */
export function quoted(name: string): string {
  return `"${name.replaceAll('"', '""')}"`;
}
