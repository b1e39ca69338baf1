import { accountOf, setAccount } from '#server/access/account.ts';
import { sessionIdOf } from '#server/access/session.ts';
import { AccountRequest } from '#server/core/contract/requests.ts';
import { CHANGING_PASSWORD, countCall } from '#server/http/rate-limit.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { visitorOf } from '#server/http/visitor.ts';

/** What somebody can see of themselves: an `AccountView`. */
export const GET = handle(async (request) => accountOf(await visitorOf(request)));

/** Gives oneself e-mail and password, or new ones; one keeps one's id, marks and pictures. */
export const PUT = handle(async (request) => {
  const visitor = await visitorOf(request);
  countCall(CHANGING_PASSWORD, visitor.personId);
  const wanted = await readJson(request, AccountRequest);
  const ended = await setAccount(visitor.personId, wanted, sessionIdOf(request.headers.get('cookie')));
  await services().sessionsEnded(ended);
  return accountOf(visitor);
});
