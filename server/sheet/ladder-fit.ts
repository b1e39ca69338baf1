/**
 * What of a ladder's words stands under its columns, and how high that is.
 *
 * In the flow: content -> [ladder-fit] -> drawn-ladder. Narrow columns show their number alone, and the names stand in a
 * line below. Pure apart from the typesetter given.
 */
import type { SheetLadder } from '../core/sheet/content.ts';
import { LADDER_AXIS, LETTERS, LINE_HEIGHT } from './paper.ts';
import type { Typesetter } from './typesetter.ts';

const NAMED_FROM = 50;
const SAID_FROM = 92;
const MOST_NAME_LINES = 2;
const MOST_WORD_LINES = 3;
const MOST_LIST_LINES = 2;
/** Between title, key, plot and feet. */
const PADDING = 14;

export interface SetLadder {
  ladder: SheetLadder;
  column: number;
  /** Of each column: its number, with the name where there is room. */
  feet: { name: string; words: string }[];
  /** The names where the columns have no room for them; empty otherwise. */
  list: string;
  /** Height of everything but the plot, points. */
  around: number;
}

export function setLadder(ladder: SheetLadder, width: number, type: Typesetter): SetLadder {
  const { body, label } = LETTERS;
  const column = (width - LADDER_AXIS) / Math.max(1, ladder.planes.length);
  const inner = column - 4;
  const named = column >= NAMED_FROM;
  const said = column >= SAID_FROM;
  const feet = ladder.planes.map(({ name, words }, at) => ({
    name: named ? type.cut(`${at + 1} ${name}`, label, inner, MOST_NAME_LINES) : String(at + 1),
    words: said ? type.cut(words, body, inner, MOST_WORD_LINES) : '',
  }));
  const names = ladder.planes.map(({ name }, at) => `${at + 1} ${name}`).join(', ');
  const list = named ? '' : type.cut(names, body, width, MOST_LIST_LINES);
  const foot = feet.map(
    (each) => type.height(each.name, label, inner) + type.height(each.words, body, inner),
  );
  const around = 2 * LINE_HEIGHT + PADDING + Math.max(0, ...foot) + type.height(list, body, width);
  return { ladder, column, feet, list, around };
}
