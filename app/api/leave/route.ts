import { leaveSession } from '#server/access/session.ts';
import { handle } from '#server/http/respond.ts';
import { cameSecurely } from '#server/http/visitor.ts';

/** Ends this browser's session. */
export const POST = handle(async (request) => {
  const setCookie = await leaveSession(request.headers.get('cookie'), cameSecurely(request));
  return new Response(null, { status: 204, headers: { 'set-cookie': setCookie } });
});
