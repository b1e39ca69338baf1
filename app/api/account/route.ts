import { accountOf, setAccount } from '#server/access/account.ts';
import { leaveSession, sessionIdOf } from '#server/access/session.ts';
import { AccountRequest, LeavingRequest } from '#server/core/contract/requests.ts';
import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { leaveForGood } from '#server/http/leave-for-good.ts';
import { CHANGING_PASSWORD, countCall } from '#server/http/rate-limit.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { cameSecurely, visitorOf } from '#server/http/visitor.ts';

/** What somebody can see of themselves: an `AccountView`. */
export const GET = handle(async (request) => accountOf(await visitorOf(request)));

/** Deletes oneself, for good; one's own name, written out, says that it is meant. */
export const DELETE = handle(async (request) => {
  const { personId, name } = await visitorOf(request);
  const { name: written } = await readJson(request, LeavingRequest);
  if (written.trim() !== name.trim()) {
    throw new Problem(
      'bad-request',
      say`To delete yourself, write your name as it stands here: ${name}. Nothing was deleted.`,
    );
  }
  await leaveForGood(personId);
  const gone = await leaveSession(request.headers.get('cookie'), cameSecurely(request));
  return new Response(null, { status: 204, headers: { 'set-cookie': gone } });
});

/** Gives oneself e-mail and password, or new ones; one keeps one's id, marks and pictures. */
export const PUT = handle(async (request) => {
  const visitor = await visitorOf(request);
  countCall(CHANGING_PASSWORD, visitor.personId);
  const wanted = await readJson(request, AccountRequest);
  const ended = await setAccount(visitor.personId, wanted, sessionIdOf(request.headers.get('cookie')));
  await services().sessionsEnded(ended);
  return accountOf(visitor);
});
