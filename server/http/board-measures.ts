/**
 * Figures of all pictures of a board as somebody may see them, measured now where they are not yet there.
 *
 * In the flow: handlers -> [board-measures] -> services. IO: the database, the main process.
 */
import { boardAsSeen } from '../access/consent.ts';
import { rulesAt } from '../access/school.ts';
import type { MeasuredPicture } from '../core/outward/measures-table.ts';
import { withoutMixing } from '../core/readings/without-mixing.ts';
import { services } from './services.ts';
import { refuseVeiled } from './veil.ts';
import { boardNotFound, visitorOnBoard } from './visitor.ts';

/**
 * Paintings with their references beside them; the references alone while nobody has painted.
 *
 * @throws Problem 'not-entered', 'board-not-found', 'not-yet' while a class looks at a painting alone.
 */
export async function boardMeasures(
  request: Request,
  boardId: string,
): Promise<{ title: string; pictures: MeasuredPicture[] }> {
  const { visitor, role } = await visitorOnBoard(request, boardId);
  await refuseVeiled(boardId);
  const board = await boardAsSeen(boardId, visitor, role);
  if (!board) throw boardNotFound();
  const { noMixingHints } = await rulesAt({ boardId });
  const paintings = board.pictures.filter(({ kind }) => kind === 'painting');
  const pictures: MeasuredPicture[] = [];
  for (const picture of paintings.length > 0 ? paintings : board.pictures) {
    const { id, kind, painter, caption, createdAt: postedAt } = picture;
    const found = await services().measuresOf(boardId, id);
    const measured = 'pending' in found ? null : noMixingHints ? withoutMixing(found) : found;
    const pending = 'pending' in found ? found.pending : null;
    pictures.push({ id, kind, painter: painter.name, caption, postedAt, measures: measured, pending });
  }
  return { title: board.title, pictures };
}
