/**
 * Invites: a link that brings people to one board or group in one role, until it runs out, is used up or is
 * taken back.
 *
 * In the flow: app/api/…/invites -> [invite] -> store. IO: the database.
 */
import type { InviteRequest } from '../core/contract/requests.ts';
import type { InviteView, OpenInvite } from '../core/contract/responses.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { addInvite, listInvites, type Place, revokeInvite } from '../store/invites.ts';
import { namesOf } from '../store/people.ts';
import { roleInGroup, roleOn } from './roles.ts';
import { hashToken, newToken } from './tokens.ts';

const HOUR_MS = 60 * 60 * 1000;

/**
 * @param origin Where people reach this server, such as http://localhost:3000.
 * @throws Problem 'person-not-found' when a guardian's invite is about somebody who is not there.
 */
export async function makeInvite(
  place: Place,
  { role, hours, uses, ward }: InviteRequest,
  origin: string,
  now = new Date(),
): Promise<InviteView & { id: string }> {
  if (ward !== undefined) await refuseUnlessThere(place, ward);
  const token = newToken();
  const expiresAt = new Date(now.getTime() + hours * HOUR_MS);
  const invite = { tokenHash: hashToken(token), role, wardId: ward ?? null, uses: uses ?? null, expiresAt };
  const { id } = await addInvite(place, invite);
  const url = `${origin}/join/${token}`;
  return { id, token, url, role, expiresAt: expiresAt.toISOString(), uses: invite.uses };
}

/** Whom a guardian guards belongs there themselves, in a role of their own. */
async function refuseUnlessThere(place: Place, personId: string): Promise<void> {
  const person = { personId, name: '', isHost: false };
  const role =
    'boardId' in place ? await roleOn(person, place.boardId) : await roleInGroup(person, place.groupId);
  if (role !== null && role !== 'guardian') return;
  throw new Problem(
    'person-not-found',
    say`That person is not a member here. Invite them first, then their guardian.`,
  );
}

/** The invites in force there, newest first, without their links; used-up ones too, for they can be taken back. */
export async function openInvites(place: Place, now = new Date()): Promise<OpenInvite[]> {
  const rows = await listInvites(place, now);
  const names = await namesOf(rows.flatMap(({ wardId }) => wardId ?? []));
  return rows.map(({ id, role, createdAt, expiresAt, uses, used, wardId }) => ({
    ...{ id, role, uses, used },
    createdAt: createdAt.toISOString(),
    expiresAt: expiresAt.toISOString(),
    ward: wardId === null ? null : { id: wardId, name: names.get(wardId) ?? '' },
  }));
}

/**
 * Takes an invite back, and ends the membership of everybody who came by it.
 *
 * @param tokenOrId The link's token, or the id from the list of invites.
 * @throws Problem 'invite-not-found' when there is no such invite in force.
 */
export async function takeBackInvite(place: Place, tokenOrId: string, now = new Date()): Promise<void> {
  const ended =
    (await revokeInvite(place, { tokenHash: hashToken(tokenOrId) }, now)) ||
    (await revokeInvite(place, { id: tokenOrId }, now));
  if (ended) return;
  throw new Problem('invite-not-found', say`There is no such invite here, or it was taken back already.`);
}
