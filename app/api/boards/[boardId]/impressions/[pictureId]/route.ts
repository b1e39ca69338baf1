import { pictureNotFound } from '#server/http/picture-not-found.ts';
import { handle } from '#server/http/respond.ts';
import { refuseUnseen } from '#server/http/seen-picture.ts';
import { revealedImpressions } from '#server/http/veil.ts';
import { visitorOnBoard } from '#server/http/visitor.ts';
import { findPicture } from '#server/store/pictures.ts';

type Params = { boardId: string; pictureId: string };

/** What everybody saw first in a painting, in the silent look of a class: `ImpressionView[]`; 403 until it is over. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId } = await params;
  const by = await visitorOnBoard(request, boardId);
  await refuseUnseen(boardId, pictureId, by);
  if (!(await findPicture(boardId, pictureId))) throw pictureNotFound();
  return revealedImpressions(boardId, pictureId, by);
});
