/** People: who entered. Marks and pictures name their ids for ever. IO: the database. */
import { randomUUID } from 'node:crypto';
import { database } from './database.ts';

export interface PersonRow {
  id: string;
  name: string;
  isHost: boolean;
}

const COLUMNS = { id: true, name: true, isHost: true } as const;

/** @param name Already parsed by `PersonName`. */
export function addPerson(name: string, isHost: boolean): Promise<PersonRow> {
  return database().person.create({ data: { id: randomUUID(), name, isHost }, select: COLUMNS });
}

/** The person is host from now on. */
export function makeHost(personId: string): Promise<PersonRow> {
  return database().person.update({ where: { id: personId }, data: { isHost: true }, select: COLUMNS });
}

/** The person, or null when there is none with that id. */
export function findPerson(personId: string): Promise<PersonRow | null> {
  return database().person.findUnique({ where: { id: personId }, select: COLUMNS });
}

/** Names by id, of those who are there. */
export async function namesOf(ids: readonly string[]): Promise<Map<string, string>> {
  if (ids.length === 0) return new Map();
  const rows = await database().person.findMany({
    where: { id: { in: [...ids] } },
    select: { id: true, name: true },
  });
  return new Map(rows.map((row) => [row.id, row.name]));
}

/** Everybody who is a host, oldest first. */
export async function listHosts(): Promise<{ id: string; name: string; since: Date }[]> {
  const rows = await database().person.findMany({
    where: { isHost: true },
    select: { id: true, name: true, createdAt: true },
    orderBy: { createdAt: 'asc' },
  });
  return rows.map(({ id, name, createdAt }) => ({ id, name, since: createdAt }));
}
