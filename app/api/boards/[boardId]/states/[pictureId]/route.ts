import { statesFor } from '#server/access/states.ts';
import { pictureNotFound } from '#server/http/picture-not-found.ts';
import { handle } from '#server/http/respond.ts';
import { seenPainting, stateDesk } from '#server/http/states.ts';

type Params = { boardId: string; pictureId: string };

/**
 * The states of the painting that one picture is a state of: small ladders, what changed from one to the next, and how much
 * of each card's advice the next state shows. What is still being worked out says so; ask again.
 */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId } = await params;
  const { board } = await seenPainting(request, boardId, pictureId);
  const states = await statesFor(board, pictureId, stateDesk);
  if (!states) throw pictureNotFound();
  return states;
});
