import { PictureNotes } from '#server/core/contract/requests.ts';
import { Problem } from '#server/core/problem.ts';
import { pictureNotFound } from '#server/http/picture-not-found.ts';
import { refuseNoting, refuseTakingBack } from '#server/http/picture-rules.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { refuseUnseen } from '#server/http/seen-picture.ts';
import { services } from '#server/http/services.ts';
import { visitorOnBoard } from '#server/http/visitor.ts';
import { removeUnshared } from '#server/store/blob-sweep.ts';
import { findPicture, notePicture, readPictureView, removePicture } from '#server/store/pictures.ts';

type Params = { boardId: string; pictureId: string };

/** What is known of a picture: a `PictureView`. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId } = await params;
  await refuseUnseen(boardId, pictureId, await visitorOnBoard(request, boardId));
  const view = await readPictureView(boardId, pictureId);
  if (!view) throw pictureNotFound();
  return view;
});

/** Notes medium, drying or light of a painting (`PictureNotes`); answers the `PictureView` as it is now. */
export const PATCH = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  const picture = await findPicture(boardId, pictureId);
  if (!picture) throw pictureNotFound();
  refuseNoting(role, visitor.personId, picture.painterId);
  if (picture.kind !== 'painting') {
    throw new Problem(
      'bad-request',
      'This picture is a reference: medium, drying and light are noted of paintings only. Choose a painting.',
    );
  }
  await notePicture(boardId, pictureId, await readJson(request, PictureNotes));
  services().pictureNoted(boardId, pictureId);
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
