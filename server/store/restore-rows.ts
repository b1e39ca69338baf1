/**
 * Puts the rows of a backup into a database that has their tables and nothing in them.
 *
 * In the flow: restore -> [restore-rows] -> database. All in one transaction. IO: the database.
 */

import { createInterface } from 'node:readline';
import type { Readable } from 'node:stream';
import type { Prisma, PrismaClient } from '../../prisma/generated/client.ts';
import { type Dump, quoted } from './dump-rows.ts';

/** About so many characters go in at once. */
const BATCH_CHARACTERS = 1_000_000;
const LASTS_MS = 60 * 60_000;

type Session = Pick<Prisma.TransactionClient, '$queryRaw' | '$queryRawUnsafe' | '$executeRawUnsafe'>;

/**
 * @param rowsOf The rows of a table as they were dumped, one JSON object a line.
 * @throws Error when a table is not as the backup says.
 */
export async function restoreRows(
  client: PrismaClient,
  { tables, sequences }: Pick<Dump, 'tables' | 'sequences'>,
  rowsOf: (table: string) => Promise<Readable>,
): Promise<void> {
  await client.$transaction(
    async (session) => {
      for (const name of await parentsFirst(session, tables)) {
        await restoreTable(session, name, await rowsOf(name));
        const expected = tables.find((table) => table.name === name)?.rows ?? 0;
        const [found] = await session.$queryRawUnsafe<{ rows: number }[]>(
          `SELECT count(*)::int AS rows FROM ${quoted(name)}`,
        );
        if (found?.rows !== expected)
          throw new Error(`The table ${name} got ${found?.rows} of ${expected} rows.`);
      }
      for (const { name, last } of sequences) {
        // An update whose number was given out before would be taken for one that is known.
        await session.$queryRawUnsafe('SELECT setval($1::regclass, $2::bigint, true)', quoted(name), last);
      }
    },
    { maxWait: LASTS_MS, timeout: LASTS_MS },
  );
}

async function restoreTable(session: Session, table: string, rows: Readable): Promise<void> {
  const name = quoted(table);
  const put = (batch: string[]) =>
    session.$executeRawUnsafe(
      `INSERT INTO ${name} SELECT * FROM json_populate_recordset(NULL::${name}, $1::json)`,
      `[${batch.join(',')}]`,
    );
  let [batch, characters]: [string[], number] = [[], 0];
  for await (const line of createInterface({ input: rows, crlfDelay: Number.POSITIVE_INFINITY })) {
    if (line === '') continue;
    batch.push(line);
    characters += line.length;
    if (characters < BATCH_CHARACTERS) continue;
    await put(batch);
    [batch, characters] = [[], 0];
  }
  if (batch.length > 0) await put(batch);
}

/** The tables so that none comes before one it points to. */
async function parentsFirst(session: Session, tables: Dump['tables']): Promise<string[]> {
  const arrows = await session.$queryRaw<{ child: string; parent: string }[]>`
    SELECT child.relname::text AS child, parent.relname::text AS parent FROM pg_constraint
    JOIN pg_class child ON child.oid = conrelid JOIN pg_class parent ON parent.oid = confrelid
    WHERE contype = 'f' AND conrelid <> confrelid`;
  const left = new Set(tables.map(({ name }) => name));
  const order: string[] = [];
  while (left.size > 0) {
    const free = [...left].filter((name) => {
      return !arrows.some(({ child, parent }) => child === name && left.has(parent));
    });
    if (free.length === 0) throw new Error('The tables of this backup point to one another in a circle.');
    for (const name of free) {
      left.delete(name);
      order.push(name);
    }
  }
  return order;
}
