import { pictureNotFound } from '#server/http/picture-not-found.ts';
import { refuseTakingBack } from '#server/http/picture-rules.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { visitorOnBoard } from '#server/http/visitor.ts';
import { removeUnshared } from '#server/store/blob-sweep.ts';
import { findPicture, readPictureView, removePicture } from '#server/store/pictures.ts';

type Params = { boardId: string; pictureId: string };

/** What is known of a picture: a `PictureView`. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId } = await params;
  await visitorOnBoard(request, boardId);
  const view = await readPictureView(boardId, pictureId);
  if (!view) throw pictureNotFound();
  return view;
});

/** Takes a picture back: its row, its copies, its measures, its painting room and its files. */
export const DELETE = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  const picture = await findPicture(boardId, pictureId);
  if (!picture) throw pictureNotFound();
  refuseTakingBack(role, visitor.personId, picture.painterId);
  const hashes = await removePicture(boardId, pictureId);
  await services().pictureRemoved(boardId, pictureId);
  await removeUnshared(hashes);
});
