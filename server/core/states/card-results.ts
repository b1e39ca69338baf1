/**
 * What the next state shows of the cards of the ones before: those of the last state, and older ones that were taken along.
 *
 * In the flow: states with their cards and documents -> [card-results] -> board, time line, queue, path. A card that a
 * teacher put into other words is not judged by figures: they say nothing of what it says now. Pure.
 */
import type { MeasureDocument } from '../contract/measures.ts';
import type { ActionMove } from '../contract/moves.ts';
import type { CardResult } from '../contract/states.ts';
import { cardKeyOf, type planeIdsByName, type ShownCard, type ShownCards } from '../live/show-cards.ts';
import { movesMade } from './moves/moves-made.ts';

/** One state with all that was said on its cards. */
export interface StateCards {
  readonly pictureId: string;
  readonly document: MeasureDocument | null;
  readonly cards: ShownCards;
  /** Live plane id by the name that the document knows it by. */
  readonly planeIds: ReturnType<typeof planeIdsByName>;
}

/** Key of a card -> what was made of it. */
function movesByKey(earlier: StateCards, later: MeasureDocument | null): Map<string, ActionMove[]> {
  const { document, planeIds } = earlier;
  if (!document || !later) return new Map();
  const made = new Map(movesMade(document, later).map(({ card, moves }) => [card, moves]));
  const found = new Map<string, ActionMove[]>();
  for (const card of document.cards ?? []) {
    const key = cardKeyOf(card, planeIds);
    // Two cards of one place: the first is the one that is shown.
    if (key !== null && !found.has(key)) found.set(key, made.get(card.id) ?? []);
  }
  return found;
}

const asMeasured = ({ measured, words }: ShownCard) => measured !== null && measured.what === words.what;

function askedOf({ cards }: StateCards, isLast: boolean): ShownCard[] {
  const all = [...cards.open, ...cards.waiting];
  if (!isLast) return all.filter(({ answer }) => answer?.state === 'carried');
  return all.filter((card) => cards.open.includes(card) || card.answer !== null);
}

/**
 * @param states oldest first. @param to place of the state that is looked at. @param comparable whether the state at a
 *   place belongs to one painting with that one, as far as the pictures tell.
 */
export function cardResults(
  states: readonly StateCards[],
  to: number,
  comparable: (from: number) => boolean,
): CardResult[] {
  const later = states[to]?.document ?? null;
  return states.slice(0, to).flatMap((state, from): CardResult[] => {
    const moves = comparable(from) ? movesByKey(state, later) : new Map<string, ActionMove[]>();
    return askedOf(state, from === to - 1).map((card) => ({
      ...{ pictureId: state.pictureId, key: card.key, where: card.where, what: card.words.what },
      state: card.answer?.state ?? 'open',
      answer: card.answer?.words ?? '',
      moves: asMeasured(card) ? (moves.get(card.key) ?? []) : [],
    }));
  });
}
