/**
 * Entering: a key (the host's, a host link's or an invite's) and a name become a person and a session.
 *
 * Whoever has a session already keeps their id and name; the key only adds to what they may do.
 * In the flow: app/api/enter -> [enter] -> store. IO: the database.
 */
import { BOARD_ROLES, type BoardRole } from '../core/contract/roles.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { wardsInGroup, wardsOn } from '../store/guardians.ts';
import { hostLinkWorks, spendHostLink } from '../store/host-links.ts';
import { findInvite, type InviteRow, type Place } from '../store/invites.ts';
import { joinByInvite, placeOf } from '../store/joining.ts';
import { addPerson, findPerson, listHosts, makeHost, type PersonRow } from '../store/people.ts';
import { roleInGroup, roleOn } from './roles.ts';
import { startSession, type Visitor } from './session.ts';
import { hashToken, sameSecret } from './tokens.ts';

export interface Entering {
  key: string;
  name: string;
  /** With a host's key: the host one was before, to go on as them. */
  as?: string | undefined;
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
  /** The board or the group an invite leads to, or null. */
  place: Place | null;
}

type Key = { kind: 'host' } | { kind: 'invite'; invite: InviteRow };

/** @throws Problem 'link-not-valid' when the key is none of the three, used, used up, expired or revoked. */
export async function enter(entering: Entering, now = new Date()): Promise<Entered> {
  const key = await readKey(entering, now);
  const visitor = key.kind === 'host' ? await asHost(entering) : await asInvited(entering, key.invite, now);
  const goesOn = entering.visitor?.personId === visitor.personId;
  const setCookie = goesOn ? null : await startSession(visitor.personId, entering.secure, now);
  return { visitor, setCookie, place: key.kind === 'host' ? null : placeOf(key.invite) };
}

async function readKey({ key, hostKey }: Entering, now: Date): Promise<Key> {
  if (hostKey !== null && sameSecret(key, hostKey)) return { kind: 'host' };
  const tokenHash = hashToken(key);
  const invite = await findInvite(tokenHash, now);
  if (invite) return { kind: 'invite', invite };
  if (await spendHostLink(tokenHash, now)) return { kind: 'host' };
  throw linkNotValid();
}

/** The hosts whom a host's key lets go on as themselves, oldest first; none for any other key. */
export async function hostsBehind(
  key: string,
  hostKey: string | null,
  now = new Date(),
): Promise<{ id: string; name: string; since: Date }[]> {
  const fits = (hostKey !== null && sameSecret(key, hostKey)) || (await hostLinkWorks(hashToken(key), now));
  return fits ? listHosts() : [];
}

function linkNotValid(): Problem {
  return new Problem(
    'link-not-valid',
    say`This link does not work: it was used already, has run out, or was taken back. Ask for a new one.`,
  );
}

/** Whoever holds a host's key may do all that any host may, so they may also be the one they were. */
async function asHost({ visitor, name, as }: Entering): Promise<Visitor> {
  const before = as === undefined ? null : await findPerson(as);
  if (before?.isHost) return visitorFrom(before);
  if (visitor?.isHost) return visitor;
  return visitorFrom(visitor ? await makeHost(visitor.personId) : await addPerson(name, true));
}

/** Whoever has what the invite gives, or more, already, uses none of it up. */
async function asInvited({ visitor, name }: Entering, invite: InviteRow, now: Date): Promise<Visitor> {
  if (visitor && (await hasAlready(visitor, invite))) return visitor;
  const joined = await joinByInvite(invite, visitor ? { id: visitor.personId } : { name }, now);
  if (!joined) throw linkNotValid();
  return visitorFrom(joined);
}

async function hasAlready(visitor: Visitor, { boardId, groupId, role, wardId }: InviteRow): Promise<boolean> {
  const me = visitor.personId;
  if (role === 'guardian') {
    const wards = boardId === null ? await wardsInGroup(groupId ?? '', me) : await wardsOn(boardId, me);
    return wardId === null || wardId === me || wards.includes(wardId);
  }
  const standing =
    boardId === null ? await roleInGroup(visitor, groupId ?? '') : await roleOn(visitor, boardId);
  return standing !== null && rank(standing) <= rank(role);
}

/** BOARD_ROLES runs from most to least. */
function rank(role: BoardRole): number {
  return BOARD_ROLES.indexOf(role);
}

function visitorFrom({ id, name, isHost }: PersonRow): Visitor {
  return { personId: id, name, isHost };
}
