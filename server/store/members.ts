/** Who may be on a board, and as what. The owner has no row; a host needs none. IO: the database. */
import { InviteRole } from '../core/contract/roles.ts';
import { database } from './database.ts';

export interface MemberRow {
  role: InviteRole;
  inviteId: string | null;
}

/** The membership of one person on one board, or null. */
export async function findMember(boardId: string, personId: string): Promise<MemberRow | null> {
  const row = await database().member.findUnique({
    where: { boardId_personId: { boardId, personId } },
    select: { role: true, inviteId: true },
  });
  return row && { role: InviteRole.parse(row.role), inviteId: row.inviteId };
}

/** Makes the person a member with this role, or changes the role and the invite they hold it by. */
export async function putMember(
  boardId: string,
  personId: string,
  role: InviteRole,
  inviteId: string | null,
): Promise<void> {
  await database().member.upsert({
    where: { boardId_personId: { boardId, personId } },
    create: { boardId, personId, role, inviteId },
    update: { role, inviteId },
  });
}

/** @returns Whether that person was a member. */
export async function removeMember(boardId: string, personId: string): Promise<boolean> {
  const { count } = await database().member.deleteMany({ where: { boardId, personId } });
  return count === 1;
}

/** Whether the person belongs to any board, and to every one of them as a viewer. */
export async function isOnlyViewer(personId: string): Promise<boolean> {
  const rows = await database().member.findMany({ where: { personId }, select: { role: true } });
  if (rows.length === 0 || rows.some((row) => row.role !== 'viewer')) return false;
  return (await database().board.count({ where: { ownerId: personId } })) === 0;
}
