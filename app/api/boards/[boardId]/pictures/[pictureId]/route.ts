import { audited } from '#server/access/audit.ts';
import { knownNames, namingFor } from '#server/access/school.ts';
import { PictureNotes } from '#server/core/contract/requests.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { pictureNotFound } from '#server/http/picture-not-found.ts';
import { refuseNoting, refuseTakingBack } from '#server/http/picture-rules.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { refuseUnseen } from '#server/http/seen-picture.ts';
import { services } from '#server/http/services.ts';
import { type OnBoard, visitorOnBoard } from '#server/http/visitor.ts';
import { withdrawPicture } from '#server/http/withdraw.ts';
import { findPicture, notePicture, readPictureView } from '#server/store/pictures.ts';

type Params = { boardId: string; pictureId: string };

/** What is known of a picture: a `PictureView`. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId } = await params;
  const by = await visitorOnBoard(request, boardId);
  await refuseUnseen(boardId, pictureId, by);
  return viewFor(by, boardId, pictureId);
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
      say`This picture is a reference: medium, drying and light are noted of paintings only. Choose a painting.`,
    );
  }
  await notePicture(boardId, pictureId, await readJson(request, PictureNotes));
  services().pictureNoted(boardId, pictureId);
  return viewFor({ visitor, role }, boardId, pictureId);
});

/** With its painter under the name by which the caller knows them. */
async function viewFor({ visitor, role }: OnBoard, boardId: string, pictureId: string): Promise<PictureView> {
  const view = await readPictureView(boardId, pictureId);
  if (!view) throw pictureNotFound();
  const naming = await namingFor(await knownNames({ boardId }, visitor.personId, role), [view.painter]);
  return { ...view, painter: naming(view.painter) };
}

/** Takes a picture back: its row, its copies, its measures, its painting room and its files. */
export const DELETE = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  const picture = await findPicture(boardId, pictureId);
  if (!picture) throw pictureNotFound();
  refuseTakingBack(role, visitor.personId, picture.painterId);
  await withdrawPicture(boardId, pictureId);
  await audited.pictureWithdrawn(visitor, boardId, picture.painterId);
});
