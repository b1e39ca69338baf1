/**
 * Whose a board is: its group and its owner, and the word that its class is over. Who may change them: access/.
 * IO: the database.
 */
import { database } from './database.ts';

export interface BoardPlace {
  id: string;
  title: string;
  ownerId: string | null;
  groupId: string | null;
  overAt: Date | null;
}

/** Null when there is no such board. */
export function boardPlace(boardId: string): Promise<BoardPlace | null> {
  return database().board.findUnique({
    where: { id: boardId },
    select: { id: true, title: true, ownerId: true, groupId: true, overAt: true },
  });
}

/**
 * Moves a board into a group, or out of the one it is in. What it said of members of the group it leaves goes, for that
 * stood in place of the group's word; who came by an invitation to the board itself stays.
 *
 * @param groupId Null = it belongs to no group.
 */
export async function moveBoard(boardId: string, groupId: string | null): Promise<void> {
  await database().$transaction(async (transaction) => {
    const board = await transaction.board.findUnique({ where: { id: boardId }, select: { groupId: true } });
    if (!board || board.groupId === groupId) return;
    if (board.groupId !== null) {
      const members = await transaction.groupMember.findMany({
        where: { groupId: board.groupId },
        select: { personId: true },
      });
      const personId = { in: members.map((row) => row.personId) };
      await transaction.member.deleteMany({ where: { boardId, personId, inviteId: null } });
    }
    await transaction.board.update({ where: { id: boardId }, data: { groupId } });
  });
}

/** Gives a board to somebody else; who had it stays on it as a teacher. */
export async function handBoardOn(boardId: string, personId: string): Promise<void> {
  await database().$transaction(async (transaction) => {
    const board = await transaction.board.findUnique({ where: { id: boardId }, select: { ownerId: true } });
    if (!board || board.ownerId === personId) return;
    await transaction.member.deleteMany({ where: { boardId, personId } });
    await transaction.board.update({ where: { id: boardId }, data: { ownerId: personId } });
    const before = board.ownerId;
    if (before === null) return;
    await transaction.member.upsert({
      where: { boardId_personId: { boardId, personId: before } },
      create: { boardId, personId: before, role: 'teacher' },
      update: { role: 'teacher' },
    });
  });
}

export async function sayOver(boardId: string, now: Date): Promise<void> {
  await database().board.updateMany({ where: { id: boardId }, data: { overAt: now } });
}
