/**
 * Which marks stand on a sheet, and under which number.
 *
 * In the flow: marks that somebody sees + answers -> [remarks-on-sheet] -> content. Those with words are numbered, what
 * is still open first; lines without words are drawn and not numbered; sketches, which are paint over the painting, and
 * replies stay on the board. Pure.
 */
import type { FractionPoint } from '../contract/setup.ts';
import type { LiveAnswer } from '../live/layout.ts';
import { markPlace } from '../live/mark-place.ts';
import type { Mark } from '../live/marks.ts';
import { markState } from '../live/remarks.ts';
import type { SheetRemark } from './content.ts';
import { sheetWords } from './words.ts';

/** More numbers than this are not found again on a page read from arm's length. */
export const MOST_REMARKS = 9;
/** Lines without words that are drawn at most, the oldest first. */
const MOST_DRAWN = 24;

export interface RemarkSource {
  /** Marks on this painting that the person may see, oldest first. */
  marks: readonly Mark[];
  answers: ReadonlyMap<string, LiveAnswer>;
  nameOf(personId: string): string;
  toSquared(point: FractionPoint): FractionPoint;
}

/** @returns The remarks, numbered from 1, then what is only drawn; and the sentence about what is not there. */
export function remarksOnSheet(source: RemarkSource): { remarks: SheetRemark[]; more: string } {
  const shown = source.marks.flatMap((mark) => asRemark(mark, source) ?? []);
  const spoken = shown.filter(({ words }) => words !== '');
  const inOrder = [
    ...spoken.filter(({ state }) => state === ''),
    ...spoken.filter(({ state }) => state !== ''),
  ];
  const numbered = inOrder.slice(0, MOST_REMARKS).map((remark, at) => ({ ...remark, number: at + 1 }));
  const drawn = shown.filter(({ words, kind }) => words === '' && kind !== 'pin').slice(0, MOST_DRAWN);
  return { remarks: [...numbered, ...drawn], more: moreOf(spoken.length, numbered.length, drawn.length) };
}

function moreOf(spoken: number, numbered: number, drawn: number): string {
  if (spoken > numbered) return sheetWords.moreRemarks(spoken - numbered);
  if (spoken > 0) return '';
  return drawn > 0 ? sheetWords.drawnOnly : sheetWords.noRemarks;
}

/** Null for replies and sketches, and for what lies outside the squared painting. */
function asRemark(mark: Mark, { answers, nameOf, toSquared }: RemarkSource): SheetRemark | null {
  const { kind, id, author, text } = mark;
  if (kind === 'reply' || kind === 'sketch') return null;
  const points = mark.points.map(([x, y]) => toSquared([x, y]));
  const at = markPlace(kind, points);
  if (!at || !inside(at)) return null;
  const state = sheetWords.states[markState(answers.get(id))];
  const words = text.replace(/\s+/g, ' ').trim();
  return { number: null, at, kind, points, who: nameOf(author), words, state };
}

function inside(point: FractionPoint): boolean {
  return point.every((share) => share >= 0 && share <= 1);
}
