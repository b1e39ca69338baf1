/**
 * Who a request comes from: the session cookie and the person behind it.
 *
 * In the flow: every request and every upgrade -> [session] -> roles. IO: the database.
 */
import { addSession, endSession, extendSession, findSession } from '../store/sessions.ts';
import { hashToken, newToken } from './tokens.ts';

/** The person a request comes from. */
export interface Visitor {
  personId: string;
  name: string;
  isHost: boolean;
}

const COOKIE = 'veilstep';
const DAY_MS = 24 * 60 * 60 * 1000;
/** A session ends this long after it was last used. */
const SESSION_MS = 90 * DAY_MS;
/** The end is moved at most once a day, so that looking does not write. */
const EXTEND_AFTER_MS = DAY_MS;
/** The longest that browsers keep a cookie; the server's own end comes first. */
const COOKIE_SECONDS = 400 * 24 * 60 * 60;

/** @param cookieHeader The request's Cookie header. @returns null without a session that is in force. */
export async function readSession(cookieHeader: string | null, now = new Date()): Promise<Visitor | null> {
  const token = tokenIn(cookieHeader);
  if (!token) return null;
  const tokenHash = hashToken(token);
  const session = await findSession(tokenHash, now);
  if (!session) return null;
  const newEnd = new Date(now.getTime() + SESSION_MS);
  if (newEnd.getTime() - session.expiresAt.getTime() > EXTEND_AFTER_MS)
    await extendSession(tokenHash, newEnd);
  return { personId: session.person.id, name: session.person.name, isHost: session.person.isHost };
}

/** What a session is known by among sockets and in the store: its token's hash; null without a cookie. */
export function sessionIdOf(cookieHeader: string | null): string | null {
  const token = tokenIn(cookieHeader);
  return token === null ? null : hashToken(token);
}

/** Starts a session. @param secure Whether the browser came over https. @returns The Set-Cookie header. */
export async function startSession(personId: string, secure: boolean, now = new Date()): Promise<string> {
  const token = newToken();
  await addSession(hashToken(token), personId, new Date(now.getTime() + SESSION_MS));
  return cookie(token, COOKIE_SECONDS, secure);
}

/** Ends the session of this request. @returns The Set-Cookie header that takes the cookie away. */
export async function leaveSession(cookieHeader: string | null, secure: boolean): Promise<string> {
  const token = tokenIn(cookieHeader);
  if (token) await endSession(hashToken(token));
  return cookie('', 0, secure);
}

function cookie(token: string, maxAgeSeconds: number, secure: boolean): string {
  const parts = [`${COOKIE}=${token}`, 'Path=/', `Max-Age=${maxAgeSeconds}`, 'HttpOnly', 'SameSite=Lax'];
  return [...parts, ...(secure ? ['Secure'] : [])].join('; ');
}

function tokenIn(cookieHeader: string | null): string | null {
  for (const pair of (cookieHeader ?? '').split(';')) {
    const [name, value] = pair.trim().split('=', 2);
    if (name === COOKIE && value) return value;
  }
  return null;
}
