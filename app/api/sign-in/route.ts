import { signIn } from '#server/access/account.ts';
import { SignInRequest } from '#server/core/contract/requests.ts';
import { countCall, SIGNING_IN, SIGNING_IN_ADDRESS, SIGNING_IN_EMAIL } from '#server/http/rate-limit.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { asReturned } from '#server/http/returned.ts';
import { addressOf, cameSecurely } from '#server/http/visitor.ts';

/** Signs in with e-mail and password, on this device or another. */
export const POST = handle(async (request) => {
  const address = addressOf(request);
  countCall(SIGNING_IN_ADDRESS, address);
  const wanted = await readJson(request, SignInRequest);
  countCall(SIGNING_IN_EMAIL, wanted.email);
  countCall(SIGNING_IN, `${wanted.email} ${address}`);
  return asReturned(request, await signIn(wanted, cameSecurely(request)));
});
