/** Links that bring people to one board. Only the hash of a token lies here. IO: the database. */
import { randomUUID } from 'node:crypto';
import { InviteRole } from '../core/contract/roles.ts';
import { database } from './database.ts';

export interface InviteRow {
  id: string;
  boardId: string;
  role: InviteRole;
  createdAt: Date;
  expiresAt: Date;
}

const COLUMNS = { id: true, boardId: true, role: true, createdAt: true, expiresAt: true } as const;

function checked(row: { role: string } & Omit<InviteRow, 'role'>): InviteRow {
  return { ...row, role: InviteRole.parse(row.role) };
}

export async function addInvite(
  boardId: string,
  tokenHash: string,
  role: InviteRole,
  expiresAt: Date,
): Promise<InviteRow> {
  const data = { id: randomUUID(), boardId, tokenHash, role, expiresAt };
  return checked(await database().invite.create({ data, select: COLUMNS }));
}

/** The invite behind a token, or null when unknown, revoked, or expired at `now`. */
export async function findInvite(tokenHash: string, now: Date): Promise<InviteRow | null> {
  const row = await database().invite.findFirst({
    where: { tokenHash, revokedAt: null, expiresAt: { gt: now } },
    select: COLUMNS,
  });
  return row && checked(row);
}

/** The invites of a board that still work at `now`, newest first. */
export async function listInvites(boardId: string, now: Date): Promise<InviteRow[]> {
  const rows = await database().invite.findMany({
    where: { boardId, revokedAt: null, expiresAt: { gt: now } },
    select: COLUMNS,
    orderBy: { createdAt: 'desc' },
  });
  return rows.map(checked);
}

/**
 * Revokes an invite and ends the membership of everybody who came by it, together or not at all.
 *
 * @param invite Its token's hash, or its id.
 * @returns The people who lost access, or null when the board has no such invite that is still in force.
 */
export async function revokeInvite(
  boardId: string,
  invite: { tokenHash: string } | { id: string },
  now: Date,
): Promise<string[] | null> {
  return database().$transaction(async (transaction) => {
    const found = await transaction.invite.findFirst({ where: { boardId, revokedAt: null, ...invite } });
    if (!found) return null;
    await transaction.invite.update({ where: { id: found.id }, data: { revokedAt: now } });
    const members = { boardId, inviteId: found.id };
    const ended = await transaction.member.findMany({ where: members, select: { personId: true } });
    await transaction.member.deleteMany({ where: members });
    return ended.map((row) => row.personId);
  });
}
