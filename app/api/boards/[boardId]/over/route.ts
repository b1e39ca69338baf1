import { audited } from '#server/access/audit.ts';
import { keepingOn } from '#server/access/keeping.ts';
import type { OverView } from '#server/core/contract/decency.ts';
import { say } from '#server/core/say/say.ts';
import { handle } from '#server/http/respond.ts';
import { boardNotFound, refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';
import { endPictures } from '#server/http/withdraw.ts';
import { boardPlace, sayOver } from '#server/store/board-place.ts';

type Params = { boardId: string };

const REFUSED = say`Only the owner of a board and the host may say that its class is over.`;

/** What would go and what stay if the class were over now: an `OverView`. */
export const GET = handle<Params>(async (request, { params }): Promise<OverView> => {
  const { boardId } = await params;
  const { role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(role, 'board.over', REFUSED);
  const [board, { goes, stays }] = await Promise.all([boardPlace(boardId), keepingOn(boardId, null)]);
  return { goes: goes.length, stays: stays.length, overAt: board?.overAt?.toISOString() ?? null };
});

/** The class is over: paintings whose painter, or the guardian, did not say that they may be kept are deleted. */
export const POST = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(role, 'board.over', REFUSED);
  const board = await boardPlace(boardId);
  if (!board) throw boardNotFound();
  const { goes } = await keepingOn(boardId, null);
  await endPictures({ board, reason: 'over', pictureIds: goes, whole: false });
  await sayOver(boardId, new Date());
  await audited.classOver(visitor, boardId, goes.length);
});
