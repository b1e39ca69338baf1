/**
 * Who may take a painting's sheet along, and whether the reference may stand on it.
 *
 * A sheet leaves the board as a file. For the painter, a minor's guardian and those who teach or run the board it is part
 * of the critique itself: they take it under the consent to be shown on the board. Anybody else may where *shown outside*
 * was said. In the flow: handlers -> [sheet-consent] -> consent. IO: the database.
 */
import type { BoardView, PictureView } from '../core/contract/responses.ts';
import { may } from '../core/permissions/may.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { consentRelation, mayUse } from './consent.ts';

const used = (boardId: string, { painter, kind, rights }: PictureView) => ({
  boardId,
  painterId: painter.id,
  kind,
  rights,
});

/** @throws Problem 'not-allowed' with what would have to be said. */
export async function refuseSheet(board: BoardView, painting: PictureView): Promise<void> {
  if (await mayTake(board, painting)) return;
  throw new Problem(
    'not-allowed',
    say`Only its painter and those who teach here take this painting’s sheet. Others can once its painter says, under Consent, that it may be shown to others outside.`,
  );
}

async function mayTake(board: BoardView, painting: PictureView): Promise<boolean> {
  const { me, role } = board;
  if (painting.painter.id === me.id) return may(role, 'sheet.take', 'own');
  const relation = await consentRelation(board.id, me.id, painting.painter.id);
  if (relation === 'ward') return may(role, 'sheet.take', 'ward');
  const use = may(role, 'sheet.take') ? 'class' : 'others';
  return mayUse(use, used(board.id, painting));
}

/**
 * One's own reference always; what is used with permission was given for the board alone and stays there; else as was
 * said of it, and without a word to those whose critique it is: whoever may post a painting or teaches.
 */
export async function takesReference(board: BoardView, reference: PictureView): Promise<boolean> {
  if (reference.painter.id === board.me.id) return true;
  if (reference.rights === 'permission') return false;
  const use = may(board.role, 'painting.post') ? 'class' : 'others';
  return mayUse(use, used(board.id, reference));
}
