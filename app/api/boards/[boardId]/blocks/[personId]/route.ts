import { blockOnBoard } from '#server/access/block.ts';
import { say } from '#server/core/say/say.ts';
import { BLOCKING, countCall } from '#server/http/rate-limit.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';

type Params = { boardId: string; personId: string };

/** Blocks somebody on the board, both ways: from now on neither sees the other, on any board. */
export const PUT = handle<Params>(async (request, { params }) => {
  const { boardId, personId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(
    role,
    'block.make',
    say`Whoever runs a board or teaches on it has to see everybody there, so blocking is for the others.`,
  );
  countCall(BLOCKING, visitor.personId);
  await blockOnBoard(boardId, visitor, role, personId);
  await services().blocksChanged([visitor.personId, personId]);
});
