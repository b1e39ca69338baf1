/** A picture that somebody may look at: on the board, and not kept from them for want of consent. IO: the database. */
import { hiddenPainters } from '../access/consent.ts';
import { findPicture } from '../store/pictures.ts';
import { pictureNotFound } from './picture-not-found.ts';
import type { OnBoard } from './visitor.ts';

/** @throws Problem 'picture-not-found' alike for no such picture and one that is not for them to see. */
export async function refuseUnseen(
  boardId: string,
  pictureId: string,
  { visitor, role }: OnBoard,
): Promise<void> {
  const hidden = await hiddenPainters(boardId, visitor.personId, role);
  if (hidden.size === 0) return;
  const picture = await findPicture(boardId, pictureId);
  if (!picture || hidden.has(picture.painterId)) throw pictureNotFound();
}
