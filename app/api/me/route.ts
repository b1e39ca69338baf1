import type { PersonView } from '#server/core/contract/responses.ts';
import { handle } from '#server/http/respond.ts';
import { visitorOf } from '#server/http/visitor.ts';

/** Who the session is. */
export const GET = handle(async (request): Promise<PersonView> => {
  const { personId, name } = await visitorOf(request);
  return { id: personId, name };
});
