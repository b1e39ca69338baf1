import { comeBack } from '#server/access/account.ts';
import { ReturnRequest } from '#server/core/contract/requests.ts';
import { countCall, ENTERING } from '#server/http/rate-limit.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { asReturned } from '#server/http/returned.ts';
import { addressOf, cameSecurely } from '#server/http/visitor.ts';

/** Comes back by a link that the host made, with a new password where one is given. */
export const POST = handle(async (request) => {
  countCall(ENTERING, addressOf(request));
  const wanted = await readJson(request, ReturnRequest);
  return asReturned(request, await comeBack(wanted, cameSecurely(request)));
});
