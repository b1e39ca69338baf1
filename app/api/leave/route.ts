import { leaveSession, sessionIdOf } from '#server/access/session.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { cameSecurely } from '#server/http/visitor.ts';

/** Ends this browser's session, and what is open with it. */
export const POST = handle(async (request) => {
  const cookie = request.headers.get('cookie');
  const setCookie = await leaveSession(cookie, cameSecurely(request));
  const ended = sessionIdOf(cookie);
  if (ended !== null) await services().sessionsEnded([ended]);
  return new Response(null, { status: 204, headers: { 'set-cookie': setCookie } });
});
