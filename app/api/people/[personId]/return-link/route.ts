import { makeReturnLink } from '#server/access/account.ts';
import { audited } from '#server/access/audit.ts';
import { say } from '#server/core/say/say.ts';
import { countCall, INVITING } from '#server/http/rate-limit.ts';
import { handle } from '#server/http/respond.ts';
import { originOf, refuseUnlessMay, visitorOf } from '#server/http/visitor.ts';

type Params = { personId: string };

/** Makes a link by which one person comes back under the id they had, once; its address is shown this once. */
export const POST = handle<Params>(async (request, { params }) => {
  const { personId } = await params;
  const visitor = await visitorOf(request);
  refuseUnlessMay(
    visitor.isHost ? 'host' : 'stranger',
    'return.link',
    say`Only the host may make a link for somebody to come back by.`,
  );
  countCall(INVITING, visitor.personId);
  const link = await makeReturnLink(personId, originOf(request));
  await audited.returnLinkMade(visitor, personId);
  return link;
});
