/**
 * Invites: a link that brings people to one board in one role, until it runs out or is taken back.
 *
 * In the flow: app/api/…/invites -> [invite] -> store. IO: the database.
 */
import type { InviteRequest } from '../core/contract/requests.ts';
import type { InviteView } from '../core/contract/responses.ts';
import { Problem } from '../core/problem.ts';
import { addInvite, revokeInvite } from '../store/invites.ts';
import { hashToken, newToken } from './tokens.ts';

const HOUR_MS = 60 * 60 * 1000;

/** @param origin Where people reach this server, such as http://localhost:3000. */
export async function makeInvite(
  boardId: string,
  { role, hours }: InviteRequest,
  origin: string,
  now = new Date(),
): Promise<InviteView & { id: string }> {
  const token = newToken();
  const expiresAt = new Date(now.getTime() + hours * HOUR_MS);
  const { id } = await addInvite(boardId, hashToken(token), role, expiresAt);
  return { id, token, url: `${origin}/join/${token}`, role, expiresAt: expiresAt.toISOString() };
}

/**
 * Takes an invite back.
 *
 * @param tokenOrId The link's token, or the id from the list of invites.
 * @returns The ids of the people whose access ended with it.
 * @throws Problem 'invite-not-found' when the board has no such invite in force.
 */
export async function takeBackInvite(
  boardId: string,
  tokenOrId: string,
  now = new Date(),
): Promise<string[]> {
  const ended =
    (await revokeInvite(boardId, { tokenHash: hashToken(tokenOrId) }, now)) ??
    (await revokeInvite(boardId, { id: tokenOrId }, now));
  if (ended) return ended;
  throw new Problem('invite-not-found', 'This board has no such invite, or it was taken back already.');
}
