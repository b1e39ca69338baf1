/**
 * Whose marks this person is shown at all: the one place to leave marks out of every screen of theirs.
 *
 * In the flow: board as this person may see it -> [marks-shown] -> mark-reader -> pictures and talk. Numbers are given
 * before anything is left out, so that everybody's "remark 3" is the same one. Pure.
 */
import type { BoardView } from '#server/core/contract/responses.ts';
import type { Mark } from '#server/core/live/marks.ts';

/** Whether a mark is for this person's eyes. A mark that is not comes neither onto a picture nor into the talk. */
export type ShownTo = (mark: Mark) => boolean;

/**
 * A mark on a picture that was taken back, or that this person may not see, is not shown to them; nor is one of somebody
 * whom they block or who blocks them.
 */
export function marksShownOn(board: BoardView): ShownTo {
  const pictures = new Set(board.pictures.map(({ id }) => id));
  const blocked = new Set(board.blocked);
  return (mark) => pictures.has(mark.pictureId) && !blocked.has(mark.author);
}
