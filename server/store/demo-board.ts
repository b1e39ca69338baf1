/** The demo board's row: made without an owner, found again when a first start was cut short. IO: the database. */
import { randomUUID } from 'node:crypto';
import { database } from './database.ts';

/** A board that belongs to the house: every host sees it and may delete it. @returns Its id. */
export async function addDemoBoard(title: string, scenario: string): Promise<string> {
  const { id } = await database().board.create({
    data: { id: randomUUID(), title, scenario, demo: true, ownerId: null },
  });
  return id;
}

/** Ids of demo boards, finished or not. */
export async function demoBoards(): Promise<string[]> {
  const rows = await database().board.findMany({ where: { demo: true }, select: { id: true } });
  return rows.map(({ id }) => id);
}
