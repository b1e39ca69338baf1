/** The answer to somebody who is in again: who they are, the new cookie, and an end to what this browser was. */
import type { Returned } from '../access/account.ts';
import { leaveSession, sessionIdOf } from '../access/session.ts';
import { services } from './services.ts';
import { cameSecurely } from './visitor.ts';

/** Ends the session that the browser came with, so that none is left behind that nobody can reach. */
export async function asReturned(
  request: Request,
  { person, setCookie, ended }: Returned,
): Promise<Response> {
  const cookie = request.headers.get('cookie');
  const before = sessionIdOf(cookie);
  await leaveSession(cookie, cameSecurely(request));
  await services().sessionsEnded(before === null ? ended : [...ended, before]);
  return Response.json(person, {
    headers: { 'set-cookie': setCookie, 'cache-control': 'private, no-store' },
  });
}
