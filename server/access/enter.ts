/**
 * Entering: a key (the host's, a host link's or an invite's) and a name become a person and a session.
 *
 * Whoever has a session already keeps their id and name; the key only adds to what they may do.
 * In the flow: app/api/enter -> [enter] -> store. IO: the database.
 */
import { INVITE_ROLES, type InviteRole } from '../core/contract/roles.ts';
import { Problem } from '../core/problem.ts';
import { ownerOf } from '../store/boards.ts';
import { spendHostLink } from '../store/host-links.ts';
import { findInvite, type InviteRow } from '../store/invites.ts';
import { findMember, putMember } from '../store/members.ts';
import { addPerson, makeHost } from '../store/people.ts';
import { startSession, type Visitor } from './session.ts';
import { hashToken, sameSecret } from './tokens.ts';

export interface Entering {
  key: string;
  name: string;
  /** Who the browser already is, or null. */
  visitor: Visitor | null;
  /** VEILSTEP_HOST_KEY, or null. */
  hostKey: string | null;
  /** Whether the browser came over https. */
  secure: boolean;
}

export interface Entered {
  visitor: Visitor;
  /** Set-Cookie header of a new session; null when the old one goes on. */
  setCookie: string | null;
  /** The board an invite leads to, or null. */
  boardId: string | null;
}

type Key = { kind: 'host' } | { kind: 'invite'; invite: InviteRow };

/** @throws Problem 'link-not-valid' when the key is none of the three, used, expired or revoked. */
export async function enter(entering: Entering, now = new Date()): Promise<Entered> {
  const key = await readKey(entering, now);
  const known = entering.visitor;
  const visitor = await personFor(entering, key);
  const setCookie = known ? null : await startSession(visitor.personId, entering.secure, now);
  if (key.kind === 'host') return { visitor, setCookie, boardId: null };
  await join(visitor, key.invite);
  return { visitor, setCookie, boardId: key.invite.boardId };
}

async function readKey({ key, hostKey }: Entering, now: Date): Promise<Key> {
  if (hostKey !== null && sameSecret(key, hostKey)) return { kind: 'host' };
  const tokenHash = hashToken(key);
  const invite = await findInvite(tokenHash, now);
  if (invite) return { kind: 'invite', invite };
  if (await spendHostLink(tokenHash, now)) return { kind: 'host' };
  throw new Problem(
    'link-not-valid',
    'This link does not work: it was used already, has run out, or was taken back. Ask for a new one.',
  );
}

async function personFor({ visitor, name }: Entering, key: Key): Promise<Visitor> {
  const host = key.kind === 'host';
  if (visitor && (!host || visitor.isHost)) return visitor;
  const person = visitor ? await makeHost(visitor.personId) : await addPerson(name, host);
  return { personId: person.id, name: person.name, isHost: person.isHost };
}

/** Adds the membership. An invite never lowers what somebody already is on the board. */
async function join(visitor: Visitor, invite: InviteRow): Promise<void> {
  if ((await ownerOf(invite.boardId)) === visitor.personId) return;
  const member = await findMember(invite.boardId, visitor.personId);
  if (member && rank(member.role) >= rank(invite.role)) return;
  await putMember(invite.boardId, visitor.personId, invite.role, invite.id);
}

/** INVITE_ROLES runs from most to least. */
function rank(role: InviteRole): number {
  return INVITE_ROLES.length - INVITE_ROLES.indexOf(role);
}
