import { queueOf } from '#server/access/queue.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { visitorOf } from '#server/http/visitor.ts';

/** What waits for the caller's look over all boards where they give looks, and what they asked for themselves. */
export const GET = handle(async (request) =>
  queueOf(
    await visitorOf(request),
    (boardId) => services().isVeiled(boardId),
    (pair) => services().statesCompared(pair),
  ),
);
