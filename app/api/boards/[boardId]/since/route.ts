import { boardAsSeen } from '#server/access/consent.ts';
import { newsOn, rememberLook } from '#server/access/since.ts';
import { LookedRequest } from '#server/core/contract/own-time-requests.ts';
import type { BoardView } from '#server/core/contract/responses.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { boardNotFound, visitorOnBoard } from '#server/http/visitor.ts';

type Params = { boardId: string };

async function boardOf(request: Request, boardId: string): Promise<BoardView> {
  const { visitor, role } = await visitorOnBoard(request, boardId);
  const board = await boardAsSeen(boardId, visitor, role);
  if (!board) throw boardNotFound();
  return board;
}

/** What came since the caller last looked at the board; 204 when they never did. */
export const GET = handle<Params>(async (request, { params }) => {
  const news = await newsOn(await boardOf(request, (await params).boardId));
  return news ?? undefined;
});

/** The caller looked, and saw this far. */
export const POST = handle<Params>(async (request, { params }) => {
  const board = await boardOf(request, (await params).boardId);
  await rememberLook(board, await readJson(request, LookedRequest));
});
