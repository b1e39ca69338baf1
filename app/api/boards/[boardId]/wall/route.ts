import { handle } from '#server/http/respond.ts';
import { visitorOnBoard } from '#server/http/visitor.ts';
import { wallFor } from '#server/http/wall.ts';

type Params = { boardId: string };

/** The board's wall: its paintings under letters; names only once they are shown. `WallView`. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  return wallFor(boardId, await visitorOnBoard(request, boardId));
});
