/** Groups: a class or a painting circle with its members and boards. Who may do what: access/. IO: the database. */
import { randomUUID } from 'node:crypto';
import type { GroupListItem, MemberView, PersonView } from '../core/contract/responses.ts';
import { MemberRole } from '../core/contract/roles.ts';
import { NOBODY } from './boards.ts';
import { database } from './database.ts';
import { isGuardian } from './guardians.ts';

const PERSON = { select: { id: true, name: true } } as const;

/** @returns The new group's id. */
export async function addGroup(ownerId: string, name: string): Promise<string> {
  const { id } = await database().group.create({ data: { id: randomUUID(), name, ownerId } });
  return id;
}

export async function renameGroup(groupId: string, name: string): Promise<void> {
  await database().group.updateMany({ where: { id: groupId }, data: { name } });
}

/** Its name, or null when it is gone. */
export async function groupName(groupId: string): Promise<string | null> {
  const row = await database().group.findUnique({ where: { id: groupId }, select: { name: true } });
  return row?.name ?? null;
}

/** The group goes with its memberships and invites; its boards stay with whoever made them. */
export async function removeGroup(groupId: string): Promise<void> {
  await database().group.deleteMany({ where: { id: groupId } });
}

/** Ids of the boards of a group. */
export async function boardsOf(groupId: string): Promise<string[]> {
  const rows = await database().board.findMany({ where: { groupId }, select: { id: true } });
  return rows.map((row) => row.id);
}

/** The groups somebody belongs to, by name; every group for a host. */
export async function listGroups(personId: string, isHost: boolean): Promise<GroupListItem[]> {
  const guarding = !isHost && (await isGuardian(personId));
  const rows = await database().group.findMany({
    where: isHost
      ? {}
      : {
          OR: [
            { ownerId: personId },
            { members: { some: { personId } } },
            ...(guarding ? [{ guardianships: { some: { guardianId: personId } } }] : []),
          ],
        },
    orderBy: [{ name: 'asc' }, { createdAt: 'asc' }],
    include: { members: { where: { personId } }, _count: { select: { members: true, boards: true } } },
  });
  return rows.map((row) => ({
    id: row.id,
    name: row.name,
    role: isHost
      ? 'host'
      : row.ownerId === personId
        ? 'owner'
        : (MemberRole.safeParse(row.members[0]?.role).data ?? 'guardian'),
    members: row._count.members + (row.ownerId === null ? 0 : 1),
    boards: row._count.boards,
  }));
}

/** A group with its people and boards, or null when it went meanwhile. */
export async function readGroup(groupId: string): Promise<{
  name: string;
  owner: PersonView;
  members: MemberView[];
  boards: { id: string; title: string }[];
} | null> {
  const row = await database().group.findUnique({
    where: { id: groupId },
    include: {
      owner: PERSON,
      members: { include: { person: PERSON }, orderBy: { createdAt: 'asc' } },
      boards: { select: { id: true, title: true }, orderBy: { createdAt: 'desc' } },
    },
  });
  if (!row) return null;
  const members = row.members.map(
    (each): MemberView => ({ ...each.person, role: MemberRole.parse(each.role) }),
  );
  return {
    name: row.name,
    owner: row.owner ?? NOBODY,
    members: row.owner ? [{ ...row.owner, role: 'owner' }, ...members] : members,
    boards: row.boards,
  };
}

/** @returns Whether that person is a member, whose role is now this one. */
export async function changeGroupMember(
  groupId: string,
  personId: string,
  role: MemberRole,
): Promise<boolean> {
  const { count } = await database().groupMember.updateMany({ where: { groupId, personId }, data: { role } });
  return count === 1;
}

/** Ends a membership of the group, with what its boards said of it. @returns Whether there was one. */
export async function removeGroupMember(groupId: string, personId: string): Promise<boolean> {
  return database().$transaction(async (transaction) => {
    const { count } = await transaction.groupMember.deleteMany({ where: { groupId, personId } });
    // Rows without an invite were made in place of the group's; who was invited to a board itself stays on it.
    await transaction.member.deleteMany({ where: { personId, inviteId: null, board: { groupId } } });
    return count === 1;
  });
}
