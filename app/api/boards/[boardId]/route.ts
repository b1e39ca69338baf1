import { audited } from '#server/access/audit.ts';
import { boardAsSeen } from '#server/access/consent.ts';
import { BoardRequest } from '#server/core/contract/requests.ts';
import { say } from '#server/core/say/say.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { boardNotFound, refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';
import { boardName, removeBoard, renameBoard } from '#server/store/boards.ts';

type Params = { boardId: string };

/** The board with its pictures and people. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  const board = await boardAsSeen(boardId, visitor, role);
  if (!board) throw boardNotFound();
  return board;
});

/** Gives the board another title. */
export const PATCH = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(role, 'board.rename', say`Only the owner of a board and the host may rename it.`);
  const { title } = await readJson(request, BoardRequest);
  await renameBoard(boardId, title);
  services().boardChanged(boardId);
});

/** Deletes the board with everything on it. */
export const DELETE = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(role, 'board.delete', say`Only the owner of a board and the host may delete it.`);
  const title = (await boardName(boardId)) ?? '';
  await removeBoard(boardId);
  await services().boardRemoved(boardId);
  await audited.boardDeleted(visitor, boardId, title);
});
