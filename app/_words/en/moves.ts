/**
 * How much of an advised move was made, and what changed from one state to the next, in a painter's words.
 *
 * Amounts are said only where both photographs carry them (grades A and B), and never finer than the poorer of them. Pure.
 */

import type { ActionMove, MoveVerdict, StateChange } from '#server/core/contract/moves.ts';
import { aboutAmount } from '#server/core/readings/words.ts';
import { figure } from '../figures.ts';
import { type PhotoGrade, worthSaying } from '../worth-saying.ts';

export const VERDICTS: Record<MoveVerdict, string> = {
  all: 'all of it',
  half: 'about half of it',
  little: 'a little of it',
  past: 'went past it',
  'that-way': 'went that way',
  'other-way': 'went the other way',
  none: 'no change beyond the doubt',
  small: 'no change beyond the doubt',
};

const IN_L = ['dark', 'mid', 'light', 'spread'];

/** The figure behind a verdict: "4 of 7 L*, give or take 3"; empty where none may be said. */
function behind({ key, by, advised, doubt, verdict }: ActionMove): string {
  if (key === null || !IN_L.includes(key)) return '';
  const or = `give or take ${figure(doubt, 0)}`;
  if (verdict === 'small' && advised !== null) {
    return `asked were ${figure(Math.abs(advised), 0)} L*, and these photos tell ${figure(doubt, 0)} at the least`;
  }
  if (verdict === 'none') return `within ${figure(doubt, 0)} L*`;
  if (advised === null || verdict === 'that-way' || verdict === 'other-way') return '';
  return `${figure(Math.abs(by), 0)} of ${figure(Math.abs(advised), 0)} L*, ${or}`;
}

const GRADE: Partial<Record<MoveVerdict, string>> = {
  all: 'its grade rose',
  'that-way': 'its grade rose',
  'other-way': 'its grade fell',
  none: 'its grade is as it was',
};

/** "about half of it (4 of 7 L*, give or take 3)"; of a photo taken again, what its grade did. */
export function moveWords(move: ActionMove): string {
  if (move.key === null) return GRADE[move.verdict] ?? VERDICTS[move.verdict];
  const figures = behind(move);
  return figures ? `${VERDICTS[move.verdict]} (${figures})` : VERDICTS[move.verdict];
}

const CHANGED: Record<StateChange['key'], readonly [more: string, less: string]> = {
  mid: ['lighter', 'darker'],
  dark: ['darks lighter', 'darks darker'],
  light: ['lights lighter', 'lights darker'],
  strong: ['stronger in colour', 'greyer'],
  warmCool: ['warmer', 'cooler'],
  airDistance: ['farther from the colour of the air', 'nearer to the colour of the air'],
  detail: ['with more detail', 'with less detail'],
};

function changeWords({ key, by }: StateChange, grade: PhotoGrade): string {
  const [more, less] = CHANGED[key];
  const lightness = key === 'mid' || key === 'dark' || key === 'light';
  const amount = lightness && (grade === 'A' || grade === 'B') ? aboutAmount(by, grade).trim() : '';
  return [amount, by > 0 ? more : less].filter(Boolean).join(' ');
}

/** One sentence a plane: "Massif: about half a step lighter, greyer." @param grade the poorer of both photos. */
export function changesInWords(changes: readonly StateChange[], grade: PhotoGrade): string[] {
  const planes = [...new Set(changes.map(({ plane }) => plane))];
  return planes.map((plane) => {
    const said = worthSaying(changes.filter((change) => change.plane === plane));
    return `${plane}: ${said.map((change) => changeWords(change, grade)).join(', ')}.`;
  });
}
