/**
 * What one person said of a painting on the last occasion, and what became of each remark and card.
 *
 * In the flow: states of a painting with their marks, cards and answers -> [last-time] -> queue. Pure.
 */
import type { LastTime, SaidThen } from '../contract/own-time.ts';
import type { LiveAnswer } from '../live/layout.ts';
import type { Mark } from '../live/marks.ts';
import { markState } from '../live/remarks.ts';
import type { ShownCard, ShownCards } from '../live/show-cards.ts';

/** One state of the painting with all that was said of it. */
export interface StateSaid {
  id: string;
  /** ISO 8601. */
  postedAt: string;
  /** Marks by the person in question that they may still see, oldest first. */
  marks: readonly Mark[];
  answers: ReadonlyMap<string, LiveAnswer>;
  cards: ShownCards;
}

/** Name of a plane by its live id. */
type PlaneNames = ReadonlyMap<string, string>;

/**
 * @param states Newest first. @param askedAt Milliseconds since 1970: what was said of the newest state since then
 *   belongs to this time, not to the last.
 * @returns Null when nothing was said before. A state of which the person or the painter said something stands before
 *   one that only has measured cards.
 */
export function lastTimeOf(
  states: readonly StateSaid[],
  askedAt: number,
  planes: PlaneNames,
): LastTime | null {
  const occasions = states.map((state, at) => occasion(state, at === 0 ? askedAt : null, planes));
  const said = occasions.find(({ spoken }) => spoken) ?? occasions.find(({ last }) => last.cards.length > 0);
  return said ? said.last : null;
}

function occasion(state: StateSaid, until: number | null, planes: PlaneNames) {
  const earlier = state.marks.filter(({ at, text }) => text.trim() !== '' && (until === null || at < until));
  const touched = (card: ShownCard) => card.changed || answerTo(card) !== null;
  const { open, waiting, declined } = state.cards;
  const all = [...open, ...waiting, ...declined];
  const spokenCards = all.filter(touched);
  // On the newest state the cards that nobody touched are what is to be said now.
  const cards = until === null ? all.filter((card) => open.includes(card) || touched(card)) : spokenCards;
  const times = earlier.map(({ at }) => at);
  const last: LastTime = {
    pictureId: state.id,
    sameState: until !== null,
    at: times.length > 0 ? new Date(Math.max(...times)).toISOString() : state.postedAt,
    cards: cards.map(saidOnCard),
    remarks: earlier.map((mark) => saidInRemark(mark, state.answers.get(mark.id), planes)),
  };
  return { last, spoken: earlier.length > 0 || spokenCards.length > 0 };
}

/** The painter's answer, also one given to what stood on the card before. */
const answerTo = ({ answer, lapsed }: ShownCard): LiveAnswer | null => answer ?? lapsed;

function saidOnCard(card: ShownCard): SaidThen {
  const answer = answerTo(card);
  return {
    key: card.key,
    where: card.where,
    words: card.words.what,
    state: answer?.state ?? 'open',
    answer: answer?.words ?? '',
    went: null,
  };
}

function saidInRemark(mark: Mark, answer: LiveAnswer | undefined, planes: PlaneNames): SaidThen {
  return {
    key: mark.id,
    where: (mark.planeId === null ? undefined : planes.get(mark.planeId)) ?? '',
    words: mark.text.trim(),
    state: markState(answer),
    answer: answer?.words ?? '',
    went: null,
  };
}
