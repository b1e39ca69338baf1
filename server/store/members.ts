/** Who may be on a board, and as what. The owner has no row; a host needs none. IO: the database. */
import type { MemberRole } from '../core/contract/roles.ts';
import { database } from './database.ts';

/** Makes the person a member with this role, or changes the role and the invite they hold it by. */
export async function putMember(
  boardId: string,
  personId: string,
  role: MemberRole,
  inviteId: string | null,
): Promise<void> {
  await database().member.upsert({
    where: { boardId_personId: { boardId, personId } },
    create: { boardId, personId, role, inviteId },
    update: { role, inviteId },
  });
}

/** Changes what a member is on this board; the invite they came by stays noted, so that revoking it ends them. */
export async function changeMember(boardId: string, personId: string, role: MemberRole): Promise<void> {
  await database().member.upsert({
    where: { boardId_personId: { boardId, personId } },
    create: { boardId, personId, role },
    update: { role },
  });
}

/**
 * Ends somebody's access to a board. Who belongs to the board's group is kept off this one board by a row.
 *
 * @returns Whether that person was a member here.
 */
export async function removeMember(boardId: string, personId: string): Promise<boolean> {
  return database().$transaction(async (transaction) => {
    const inGroup = await transaction.board.count({
      where: { id: boardId, group: { members: { some: { personId } } } },
    });
    const where = { boardId, personId, role: { not: 'none' } };
    if (inGroup === 0) return (await transaction.member.deleteMany({ where })).count === 1;
    const standing = await transaction.member.findUnique({
      where: { boardId_personId: { boardId, personId } },
    });
    if (standing?.role === 'none') return false;
    await transaction.member.upsert({
      where: { boardId_personId: { boardId, personId } },
      create: { boardId, personId, role: 'none' },
      update: { role: 'none', inviteId: null },
    });
    return true;
  });
}

/** Whether the person belongs to any board or group, and to every one of them only to look on. */
export async function isOnlyViewer(personId: string): Promise<boolean> {
  const [boards, groups, guarding, owned] = await Promise.all([
    database().member.findMany({ where: { personId, role: { not: 'none' } }, select: { role: true } }),
    database().groupMember.findMany({ where: { personId }, select: { role: true } }),
    database().guardianship.count({ where: { guardianId: personId } }),
    database().board.count({ where: { OR: [{ ownerId: personId }, { group: { ownerId: personId } }] } }),
  ]);
  const rows = [...boards, ...groups];
  if (owned > 0 || rows.some((row) => row.role !== 'viewer')) return false;
  return rows.length + guarding > 0;
}
