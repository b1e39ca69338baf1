import { BLOCKING, countCall } from '#server/http/rate-limit.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { visitorOf } from '#server/http/visitor.ts';
import { removeBlock } from '#server/store/blocks.ts';

type Params = { personId: string };

/** Blocks somebody no longer. */
export const DELETE = handle<Params>(async (request, { params }) => {
  const { personId } = await params;
  const visitor = await visitorOf(request);
  countCall(BLOCKING, visitor.personId);
  await removeBlock(visitor.personId, personId);
  await services().blocksChanged([visitor.personId, personId]);
});
