/** Links that bring people to one board or one group. Only the hash of a token lies here. IO: the database. */
import { randomUUID } from 'node:crypto';
import { InviteRole } from '../core/contract/roles.ts';
import { database } from './database.ts';

/** A board or a group: what an invite leads to, what a membership is of. */
export type Place = { boardId: string } | { groupId: string };

export interface InviteRow {
  id: string;
  boardId: string | null;
  groupId: string | null;
  role: InviteRole;
  /** Whom a guardian's invite is about. */
  wardId: string | null;
  createdAt: Date;
  expiresAt: Date;
  /** How many people it lets in, or null for any number; and how many came. */
  uses: number | null;
  used: number;
}

const COLUMNS = {
  id: true,
  boardId: true,
  groupId: true,
  role: true,
  wardId: true,
  createdAt: true,
  expiresAt: true,
  uses: true,
  used: true,
} as const;

function checked(row: { role: string } & Omit<InviteRow, 'role'>): InviteRow {
  return { ...row, role: InviteRole.parse(row.role) };
}

export interface NewInvite {
  tokenHash: string;
  role: InviteRole;
  wardId: string | null;
  uses: number | null;
  expiresAt: Date;
}

export async function addInvite(place: Place, invite: NewInvite): Promise<InviteRow> {
  const data = { id: randomUUID(), ...place, ...invite };
  return checked(await database().invite.create({ data, select: COLUMNS }));
}

/**
 * The invite behind a token, or null when unknown, revoked, or expired at `now`. One that is used up is still
 * found: who came by it may open it again.
 */
export async function findInvite(tokenHash: string, now: Date): Promise<InviteRow | null> {
  const row = await database().invite.findFirst({
    where: { tokenHash, revokedAt: null, expiresAt: { gt: now } },
    select: COLUMNS,
  });
  return row && checked(row);
}

/** The invites there that are neither revoked nor expired at `now`, newest first. */
export async function listInvites(place: Place, now: Date): Promise<InviteRow[]> {
  const rows = await database().invite.findMany({
    where: { ...place, revokedAt: null, expiresAt: { gt: now } },
    select: COLUMNS,
    orderBy: { createdAt: 'desc' },
  });
  return rows.map(checked);
}

/**
 * Revokes an invite and ends the membership of everybody who came by it, together or not at all.
 *
 * @param invite Its token's hash, or its id.
 * @returns Whether there was such an invite in force.
 */
export async function revokeInvite(
  place: Place,
  invite: { tokenHash: string } | { id: string },
  now: Date,
): Promise<boolean> {
  return database().$transaction(async (transaction) => {
    const found = await transaction.invite.findFirst({ where: { ...place, revokedAt: null, ...invite } });
    if (!found) return false;
    await transaction.invite.update({ where: { id: found.id }, data: { revokedAt: now } });
    const where = { inviteId: found.id };
    await transaction.member.deleteMany({ where });
    if (found.groupId !== null) {
      const came = await transaction.groupMember.findMany({ where, select: { personId: true } });
      const personId = { in: came.map((row) => row.personId) };
      await transaction.member.deleteMany({
        where: { personId, inviteId: null, board: { groupId: found.groupId } },
      });
      await transaction.groupMember.deleteMany({ where });
    }
    await transaction.guardianship.deleteMany({ where });
    return true;
  });
}
