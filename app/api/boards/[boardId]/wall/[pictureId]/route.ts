import { OneThingRequest } from '#server/core/contract/requests.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { visitorOnBoard } from '#server/http/visitor.ts';
import { sayOneThing, workFor } from '#server/http/wall.ts';

type Params = { boardId: string; pictureId: string };

/** How a painting on the wall lies in its photograph, and where its planes are. `WallWork`. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId } = await params;
  return workFor(boardId, pictureId, await visitorOnBoard(request, boardId));
});

/** Says one thing to try from a painting: a remark at a place of it, in the caller's name. */
export const POST = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId } = await params;
  const by = await visitorOnBoard(request, boardId);
  return sayOneThing(boardId, pictureId, await readJson(request, OneThingRequest), by);
});
