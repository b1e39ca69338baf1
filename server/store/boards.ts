/** Boards: make, list, read, rename, delete. Who may do so is decided in access/. IO: the database. */
import { randomUUID } from 'node:crypto';
import type { BoardListItem, PersonView } from '../core/contract/responses.ts';
import { type BoardRole, MemberRole } from '../core/contract/roles.ts';
import { say } from '../core/say/say.ts';
import { database } from './database.ts';
import { guardedBoards } from './guardians.ts';

/** Shown where a board outlived the person who made it, or was there from the start. */
export const NOBODY: PersonView = { id: '', name: say`The house` };

/** @param groupId The group it belongs to, if any. @returns The new board's id. */
export async function addBoard(
  ownerId: string,
  title: string,
  groupId: string | null = null,
): Promise<string> {
  const { id } = await database().board.create({ data: { id: randomUUID(), title, ownerId, groupId } });
  return id;
}

export async function renameBoard(boardId: string, title: string): Promise<void> {
  await database().board.updateMany({ where: { id: boardId }, data: { title } });
}

/** Ids of every board there is. */
export async function allBoardIds(): Promise<string[]> {
  return (await database().board.findMany({ select: { id: true } })).map(({ id }) => id);
}

/** Its title, or null when it is gone. */
export async function boardName(boardId: string): Promise<string | null> {
  const row = await database().board.findUnique({ where: { id: boardId }, select: { title: true } });
  return row?.title ?? null;
}

/** A board as far as its deletion goes. */
export interface BoardAge {
  id: string;
  title: string;
  groupId: string | null;
  pictureIds: string[];
  /** When the board was made or its newest picture posted, whichever is later. */
  newestAt: Date;
}

/** Every board but the demo. */
export async function boardAges(): Promise<BoardAge[]> {
  const rows = await database().board.findMany({
    where: { demo: false },
    select: {
      id: true,
      title: true,
      groupId: true,
      createdAt: true,
      pictures: { select: { id: true, createdAt: true } },
    },
  });
  return rows.map(({ id, title, groupId, createdAt, pictures }) => ({
    ...{ id, title, groupId, pictureIds: pictures.map((picture) => picture.id) },
    newestAt: new Date(Math.max(createdAt.getTime(), ...pictures.map((each) => each.createdAt.getTime()))),
  }));
}

/** Removes the board with its members, invites and picture rows. Live history and blobs go elsewhere. */
export async function removeBoard(boardId: string): Promise<void> {
  await database().board.deleteMany({ where: { id: boardId } });
}

/** The boards a person may open, newest first; every board for a host. */
export async function listBoards(personId: string, isHost: boolean): Promise<BoardListItem[]> {
  const rows = await database().board.findMany({
    where: isHost ? {} : await theirs(personId),
    orderBy: { createdAt: 'desc' },
    include: {
      owner: { select: { id: true, name: true } },
      members: { where: { personId }, select: { role: true } },
      group: {
        select: {
          id: true,
          name: true,
          ownerId: true,
          members: { where: { personId }, select: { role: true } },
          guardianships: { select: { id: true }, take: 1 },
        },
      },
      guardianships: { select: { id: true }, take: 1 },
      consents: { where: { use: 'class', given: false }, select: { use: true }, take: 1 },
      pictures: { select: { id: true, kind: true }, orderBy: { createdAt: 'asc' } },
    },
  });
  return rows.map((row) => ({
    id: row.id,
    title: row.title,
    role: isHost ? 'host' : roleIn(row, personId),
    demo: row.demo,
    owner: row.owner ?? NOBODY,
    group: row.group && { id: row.group.id, name: row.group.name },
    createdAt: row.createdAt.toISOString(),
    coverPictureId: coverOf(row)?.id ?? null,
    references: row.pictures.filter((picture) => picture.kind === 'reference').length,
    paintings: row.pictures.filter((picture) => picture.kind === 'painting').length,
  }));
}

interface Covered {
  pictures: { id: string; kind: string }[];
  guardianships: unknown[];
  consents: unknown[];
  group: { guardianships: unknown[] } | null;
}

/** A painting only where nobody's may be kept from anybody for want of consent. */
function coverOf({ pictures, guardianships, consents, group }: Covered): { id: string } | undefined {
  const reference = pictures.find((picture) => picture.kind === 'reference');
  const asked = guardianships.length + consents.length + (group?.guardianships.length ?? 0) > 0;
  return reference ?? (asked ? undefined : pictures[0]);
}

async function theirs(personId: string) {
  const keptOff = { members: { none: { personId, role: 'none' } } };
  const mine = { members: { some: { personId } } };
  return {
    OR: [
      { ownerId: personId },
      { group: { ownerId: personId } },
      { members: { some: { personId, role: { not: 'none' } } } },
      { group: mine, ...keptOff },
      { id: { in: await guardedBoards(personId) } },
    ],
  };
}

interface Listed {
  ownerId: string | null;
  members: { role: string }[];
  group: { ownerId: string | null; members: { role: string }[] } | null;
}

/** As access/roles has it; whoever is on the list and has no role of their own is a guardian. */
function roleIn({ ownerId, members, group }: Listed, personId: string): BoardRole {
  if (ownerId === personId || group?.ownerId === personId) return 'owner';
  return MemberRole.safeParse(members[0]?.role ?? group?.members[0]?.role).data ?? 'guardian';
}
