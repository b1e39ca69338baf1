/**
 * German. How much of an advised move was made, and what changed from one state to the next, in a painter's words.
 *
 * Amounts are said only where both photographs carry them (grades A and B), and never finer than the poorer of them. Pure.
 */
import type { ActionMove, MoveVerdict, StateChange } from '#server/core/contract/moves.ts';
import { aboutAmount } from '#server/core/readings/words.ts';
import type * as en from '../en/moves.ts';
import { figure } from '../figures.ts';
import { type PhotoGrade, worthSaying } from '../worth-saying.ts';

export const VERDICTS: typeof en.VERDICTS = {
  all: 'ganz umgesetzt',
  half: 'etwa zur Hälfte umgesetzt',
  little: 'ein wenig umgesetzt',
  past: 'über den Rat hinaus',
  'that-way': 'in diese Richtung',
  'other-way': 'in die andere Richtung',
  none: 'keine Änderung über die Unsicherheit hinaus',
  small: 'keine Änderung über die Unsicherheit hinaus',
};

const IN_L = ['dark', 'mid', 'light', 'spread'];

/** The figure behind a verdict: "4 von 7 L*, ± 3 L*"; empty where none may be said. */
function behind({ key, by, advised, doubt, verdict }: ActionMove): string {
  if (key === null || !IN_L.includes(key)) return '';
  const off = `${figure(doubt, 0)} L*`;
  if (verdict === 'small' && advised !== null) {
    return `geraten waren ${figure(Math.abs(advised), 0)} L*, und diese Fotos lassen erst ab ${off} etwas erkennen`;
  }
  if (verdict === 'none') return `innerhalb von ${off}`;
  if (advised === null || verdict === 'that-way' || verdict === 'other-way') return '';
  const of = verdict === 'past' ? 'statt' : 'von';
  return `${figure(Math.abs(by), 0)} ${of} ${figure(Math.abs(advised), 0)} L*, ± ${off}`;
}

const GRADE: Partial<Record<MoveVerdict, string>> = {
  all: 'seine Güte ist gestiegen',
  'that-way': 'seine Güte ist gestiegen',
  'other-way': 'seine Güte ist gesunken',
  none: 'seine Güte ist, wie sie war',
};

/** "etwa zur Hälfte umgesetzt (4 von 7 L*, ± 3 L*)"; of a photo taken again, what its grade did. */
export const moveWords: typeof en.moveWords = (move) => {
  if (move.key === null) return GRADE[move.verdict] ?? VERDICTS[move.verdict];
  const figures = behind(move);
  return figures ? `${VERDICTS[move.verdict]} (${figures})` : VERDICTS[move.verdict];
};

/** The part of the plane that changed stands before the amount, the way it went after it. */
const CHANGED: Record<StateChange['key'], readonly [part: string, more: string, less: string]> = {
  mid: ['', 'heller', 'dunkler'],
  dark: ['im Dunkel', 'heller', 'dunkler'],
  light: ['in den Lichtern', 'heller', 'dunkler'],
  strong: ['', 'kräftiger in der Farbe', 'grauer'],
  warmCool: ['', 'wärmer', 'kühler'],
  airDistance: ['', 'weiter weg von der Luftfarbe', 'näher an der Luftfarbe'],
  detail: ['', 'reicher an Details', 'ärmer an Details'],
};

function changeWords({ key, by }: StateChange, grade: PhotoGrade): string {
  const [part, more, less] = CHANGED[key];
  const lightness = key === 'mid' || key === 'dark' || key === 'light';
  const amount = lightness && (grade === 'A' || grade === 'B') ? aboutAmount(by, grade).trim() : '';
  return [part, amount, by > 0 ? more : less].filter(Boolean).join(' ');
}

/** One sentence a plane: "„Massiv“: etwa eine halbe Stufe heller, grauer." @param grade the poorer of both photos. */
export const changesInWords: typeof en.changesInWords = (changes, grade) => {
  const planes = [...new Set(changes.map(({ plane }) => plane))];
  return planes.map((plane) => {
    const said = worthSaying(changes.filter((change) => change.plane === plane));
    return `„${plane}“: ${said.map((change) => changeWords(change, grade)).join(', ')}.`;
  });
};
