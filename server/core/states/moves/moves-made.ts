/**
 * For each card of one state: how much of what it advised the next state shows.
 *
 * In the flow: documents of two states -> [moves-made] -> card, queue, time line, path. The cards' own figures of the
 * same planes, each with its doubt and its photograph's grade. Pure.
 */
import type { AdjustmentCard, CardAction } from '../../contract/critique.ts';
import type { GapKey, MeasureDocument, PlaneResult } from '../../contract/measures.ts';
import type { ActionMove } from '../../contract/moves.ts';
import { speaksOfAmounts } from '../../gaps/gap-words.ts';
import { aimOf, isLightness } from './figure-of.ts';
import { type PlaneChange, planeChange } from './plane-change.ts';
import { SIGMAS, verdictOf } from './verdict.ts';

export interface CardMoves {
  /** Id of the card in the earlier document. */
  card: string;
  /** The first piece of advice that figures can tell of leads; empty where none can. */
  moves: ActionMove[];
}

type Documents = Pick<MeasureDocument, 'planes' | 'capture' | 'cards'>;

/** What was advised in the figure's unit: the card's own amount, or the way to the target where that is what it meant. */
function advisedBy(action: CardAction, key: GapKey, sign: 1 | -1, plane: PlaneResult): number | null {
  if (isLightness(key)) return action.amountL ? sign * action.amountL : null;
  // Detail and edges are compared inside one picture alone: photo and brush differ in them.
  if (key === 'detail' || key === 'edge') return null;
  const gap = plane.gap?.[key] ?? null;
  return gap !== null && -gap * sign > 0 ? -gap : null;
}

const told = (words: string, change: PlaneChange, rest: Pick<ActionMove, 'verdict' | 'key' | 'advised'>) => ({
  ...{ words, from: change.from, by: change.by, doubt: SIGMAS * change.sigma },
  ...rest,
});

function planeMove(
  card: AdjustmentCard,
  action: CardAction,
  earlier: Documents,
  later: Documents,
): ActionMove | null {
  const aim = aimOf(action);
  const plane = earlier.planes.find(({ name }) => name === card.plane);
  if (!aim || !plane) return null;
  const change = planeChange(earlier, later, plane.name, aim.key);
  if (!change) return null;
  const advised = advisedBy(action, aim.key, aim.sign, plane);
  const amounts = speaksOfAmounts(earlier.capture.grade) && speaksOfAmounts(later.capture.grade);
  const verdict = verdictOf(change, aim.sign, advised, amounts);
  return told(action.words, change, { verdict, key: aim.key, advised });
}

const GRADES = ['C', 'B', 'A'] as const;

/** `photo: photograph again` is made when the grade rises. */
function photoMove(action: CardAction, earlier: Documents, later: Documents): ActionMove | null {
  const [was, is] = [earlier.capture.grade, later.capture.grade];
  if (was === null || is === null) return null;
  const by = GRADES.indexOf(is) - GRADES.indexOf(was);
  const verdict = by > 0 ? (is === 'A' ? 'all' : 'that-way') : by < 0 ? 'other-way' : 'none';
  return { words: action.words, verdict, key: null, from: GRADES.indexOf(was), by, advised: null, doubt: 0 };
}

function movesOf(card: AdjustmentCard, earlier: Documents, later: Documents): ActionMove[] {
  return card.actions.flatMap((action) => {
    const move =
      action.part === 'photo' ? photoMove(action, earlier, later) : planeMove(card, action, earlier, later);
    return move ? [move] : [];
  });
}

/** In the order of the earlier document's cards. */
export function movesMade(earlier: Documents, later: Documents): CardMoves[] {
  return (earlier.cards ?? []).map((card) => ({ card: card.id, moves: movesOf(card, earlier, later) }));
}
