import { boardAsSeen } from '#server/access/consent.ts';
import { critiqueSheet } from '#server/access/sheet.ts';
import { refuseSheet } from '#server/access/sheet-consent.ts';
import { pictureNotFound } from '#server/http/picture-not-found.ts';
import { countCall, DRAWING } from '#server/http/rate-limit.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { sheetAnswer, sheetWish } from '#server/http/sheet-answer.ts';
import { refuseVeiled } from '#server/http/veil.ts';
import { visitorOnBoard } from '#server/http/visitor.ts';

type Params = { boardId: string; pictureId: string };

/**
 * The sheet of a painting to take away: one page, `?as=pdf|png&paper=a4|letter`.
 *
 * Nothing is on it that the caller does not see on the board. While a class keeps reference and figures back there is no
 * sheet, for it would show both.
 */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  const wish = sheetWish(request);
  const board = await boardAsSeen(boardId, visitor, role);
  const painting = board?.pictures.find(({ id, kind }) => id === pictureId && kind === 'painting');
  if (!board || !painting) throw pictureNotFound();
  await refuseSheet(board, painting);
  await refuseVeiled(boardId);
  countCall(DRAWING, visitor.personId);
  const figures = await services().measuresOf(boardId, pictureId);
  const content = await critiqueSheet(board, painting, figures, new Date());
  return sheetAnswer(content, wish, content.title);
});
