/** Boards: make, list, read, rename, delete. Who may do so is decided in access/. IO: the database. */
import { randomUUID } from 'node:crypto';
import type { BoardListItem, PersonView } from '../core/contract/responses.ts';
import { InviteRole } from '../core/contract/roles.ts';
import { database } from './database.ts';

/** Shown where a board outlived the person who made it, or was there from the start. */
export const NOBODY: PersonView = { id: '', name: 'The house' };

/** @returns The new board's id. */
export async function addBoard(ownerId: string, title: string): Promise<string> {
  const { id } = await database().board.create({ data: { id: randomUUID(), title, ownerId } });
  return id;
}

/** The board's owner, or undefined when there is no such board; null when it has no owner. */
export async function ownerOf(boardId: string): Promise<string | null | undefined> {
  const row = await database().board.findUnique({ where: { id: boardId }, select: { ownerId: true } });
  return row === null ? undefined : row.ownerId;
}

export async function renameBoard(boardId: string, title: string): Promise<void> {
  await database().board.updateMany({ where: { id: boardId }, data: { title } });
}

/** Removes the board with its members, invites and picture rows. Live history and blobs go elsewhere. */
export async function removeBoard(boardId: string): Promise<void> {
  await database().board.deleteMany({ where: { id: boardId } });
}

/** The boards a person may open, newest first; every board for a host. */
export async function listBoards(personId: string, isHost: boolean): Promise<BoardListItem[]> {
  const mine = { OR: [{ ownerId: personId }, { members: { some: { personId } } }] };
  const rows = await database().board.findMany({
    where: isHost ? {} : mine,
    orderBy: { createdAt: 'desc' },
    include: {
      owner: { select: { id: true, name: true } },
      members: { where: { personId }, select: { role: true } },
      pictures: { select: { id: true, kind: true }, orderBy: { createdAt: 'asc' } },
    },
  });
  return rows.map((row) => ({
    id: row.id,
    title: row.title,
    role: row.ownerId === personId ? 'owner' : isHost ? 'host' : InviteRole.parse(row.members[0]?.role),
    demo: row.demo,
    owner: row.owner ?? NOBODY,
    createdAt: row.createdAt.toISOString(),
    coverPictureId:
      (row.pictures.find((picture) => picture.kind === 'reference') ?? row.pictures[0])?.id ?? null,
    references: row.pictures.filter((picture) => picture.kind === 'reference').length,
    paintings: row.pictures.filter((picture) => picture.kind === 'painting').length,
  }));
}
