import { consentRelation } from '#server/access/consent.ts';
import { ConsentRequest } from '#server/core/contract/requests.ts';
import { CONSENT_USES, ConsentUse } from '#server/core/contract/roles.ts';
import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';
import { sayConsent } from '#server/store/consents.ts';

type Params = { boardId: string; personId: string; use: string };

/** Gives or withdraws consent to one use of one's own pictures on this board, or of those of a minor one guards. */
export const PUT = handle<Params>(async (request, { params }) => {
  const { boardId, personId, use } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(
    role,
    'consent.say',
    say`Only the painter may answer for their pictures, and for a minor their guardian.`,
    await consentRelation(boardId, visitor.personId, personId),
  );
  const asked = ConsentUse.safeParse(use);
  if (!asked.success) {
    throw new Problem('bad-request', say`There is no such use. Name one of ${CONSENT_USES.join(', ')}.`);
  }
  const { given } = await readJson(request, ConsentRequest);
  await sayConsent({ boardId, personId, use: asked.data, given, saidById: visitor.personId });
  await services().accessChanged([boardId]);
});
