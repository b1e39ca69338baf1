import { boardAsSeen } from '#server/access/consent.ts';
import { planSheet } from '#server/access/plan-sheet.ts';
import { pictureNotFound } from '#server/http/picture-not-found.ts';
import { countCall, DRAWING } from '#server/http/rate-limit.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { sheetAnswer, sheetWish } from '#server/http/sheet-answer.ts';
import { refuseVeiled } from '#server/http/veil.ts';
import { visitorOnBoard } from '#server/http/visitor.ts';

type Params = { boardId: string; pictureId: string };

/** The planning sheet of a photograph to take away: frames, values, planned ladder; `?as=pdf|png&paper=a4|letter`. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  const wish = sheetWish(request);
  const board = await boardAsSeen(boardId, visitor, role);
  const photograph = board?.pictures.find(({ id, kind }) => id === pictureId && kind === 'reference');
  if (!board || !photograph) throw pictureNotFound();
  await refuseVeiled(boardId);
  countCall(DRAWING, visitor.personId);
  const figures = await services().measuresOf(boardId, pictureId);
  return sheetAnswer(await planSheet(board, photograph, figures, new Date()), wish, `plan-${board.title}`);
});
