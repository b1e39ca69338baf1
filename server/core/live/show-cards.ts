/**
 * Which adjustment cards a board shows: the measured ones, as a teacher changed them and the painter answered them,
 * and the teacher's own.
 *
 * In the flow: measured document + planes + `cards`, `answers`, `meant` of the painting's room -> [show-cards] ->
 * talk. A measured card is named by its place, so that an answer outlives a small change of figures. Pure.
 */

import type { AdjustmentCard } from '../contract/critique.ts';
import type { MeasureDocument, Reading } from '../contract/measures.ts';
import { say } from '../say/say.ts';
import type { LiveAnswer, LiveCard } from './layout.ts';

/** At most this many are open at once. */
export const MOST_OPEN = 3;
/** Place of a card that is about no single plane. */
export const WHOLE_PICTURE = say`the whole picture`;

/** The parts of a card that are words. */
export const CARD_WORDS = ['what', 'how', 'why', 'check'] as const;
export type CardWords = Record<(typeof CARD_WORDS)[number], string>;

export interface ShownCard {
  /** `plane-<live plane id>`, `picture`, `photo` or `own-<id>`. */
  key: string;
  planeId: string | null;
  /** The place in words. */
  where: string;
  /** As shown: measured, or in a teacher's words. A part that nobody wrote is empty. */
  words: CardWords;
  /** As measured; null when nothing measured stands here, only a teacher's words. */
  measured: CardWords | null;
  /** Readings that met on the measured card, the leading one first. */
  readings: string[];
  /** Where the measured `why` comes from; null where the why is a teacher's. */
  source: string | null;
  /** Keys of `meant` that would mute those readings. */
  meantKeys: string[];
  /** True when the words may hint at a mixture: the health line stands beside them. */
  healthLine: boolean;
  /** True when any of the words are a teacher's. */
  changed: boolean;
  /** The painter's answer while it still fits what the card says. */
  answer: LiveAnswer | null;
  /** An answer to something else that stood here before. */
  lapsed: LiveAnswer | null;
  order: string | null;
}

export interface ShownCards {
  /** At most three, the first one first. */
  open: ShownCard[];
  /** The rest that nobody put aside, in their order. */
  waiting: ShownCard[];
  /** What the painter left, with the reason. */
  declined: ShownCard[];
  /** What a teacher left out. */
  dropped: ShownCard[];
}

export interface CardSource {
  document: Pick<MeasureDocument, 'planes' | 'readings' | 'cards'> | null;
  /** Live plane ids by column of `document.planes`; null where a plane was renamed or deleted since. */
  planeIds: readonly (string | null)[];
  /** The planes of the board, far to near. */
  planes: readonly { id: string; name: string }[];
  cards: ReadonlyMap<string, LiveCard>;
  answers: ReadonlyMap<string, LiveAnswer>;
  meant: ReadonlyMap<string, string>;
}

/** A card with what decides about its place. */
interface Placed {
  card: ShownCard;
  id: string | null;
  against: readonly string[];
  dropped: boolean;
  meant: boolean;
}

/** Live plane id by the name that the document knows it by. */
type PlaneIds = ReadonlyMap<string, string | null>;

export function planeIdsByName({ document, planeIds }: Pick<CardSource, 'document' | 'planeIds'>): PlaneIds {
  return new Map((document?.planes ?? []).map(({ name }, at) => [name, planeIds[at] ?? null]));
}

/**
 * The key under which a reading is marked as meant: for its farthest plane alone, or everywhere where it is about
 * no plane. @returns Null when that plane is gone or was renamed since.
 */
export function meantKeyOf(reading: Pick<Reading, 'id' | 'planes'>, ids: PlaneIds): string | null {
  const [plane] = reading.planes;
  if (plane === undefined) return reading.id;
  const id = ids.get(plane);
  return id ? `${reading.id}-${id}` : null;
}

/** The key in `meant` that mutes this reading, on any of its planes or everywhere; null when it was not meant. */
export function meantBy(
  reading: Pick<Reading, 'id' | 'planes'>,
  ids: PlaneIds,
  meant: ReadonlyMap<string, string>,
): string | null {
  const keys = reading.planes.map((plane) => `${reading.id}-${ids.get(plane) ?? ''}`);
  return [...keys, reading.id].find((key) => meant.has(key)) ?? null;
}

const sentence = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

function measuredWords({ actions, why, check, plane }: AdjustmentCard): CardWords {
  // "photo: photograph again" on the card of the photo would say it twice; in German it does not say so.
  const bare = (words: string) => (plane === null ? words.replace(/^photo: /, '') : words);
  return {
    what: actions.map(({ words }) => bare(words)).join('; '),
    how: actions.map(({ how }) => how).join(' '),
    why,
    check,
  };
}

/** Findings that met on a card: of those ids, the ones about its plane where there are any. */
function readingsOn(card: AdjustmentCard, readings: readonly Reading[]): Reading[] {
  return card.readings.flatMap((id) => {
    const named = readings.filter((reading) => reading.id === id && isFinding(reading));
    const here = named.filter(({ planes }) => card.plane !== null && planes.includes(card.plane));
    return here.length > 0 ? here : named;
  });
}

const isFinding = ({ form, muted }: Reading) => muted === null && (form ?? 'finding') === 'finding';

/** Only the parts that a teacher wrote. */
function teachersWords(change: LiveCard | undefined): Partial<CardWords> {
  return Object.fromEntries(
    CARD_WORDS.flatMap((part) => (change?.[part] === undefined ? [] : [[part, change[part]]])),
  );
}

const NO_WORDS: CardWords = { what: '', how: '', why: '', check: '' };

type Answered = Pick<ShownCard, 'answer' | 'lapsed'>;

/** @param lead The leading reading; undefined where none is measured, so that nothing else can be said. */
function answered(answer: LiveAnswer | undefined, lead: string | undefined): Answered {
  if (!answer || answer.state === 'open') return { answer: null, lapsed: null };
  const fits = lead === undefined || answer.about.includes(lead);
  return fits ? { answer, lapsed: null } : { answer: null, lapsed: answer };
}

/** Where a measured card stands among the live planes; null when its plane is gone. */
export function cardKeyOf(card: AdjustmentCard, ids: PlaneIds): string | null {
  if (card.plane === null) return card.actions[0]?.part === 'photo' ? 'photo' : 'picture';
  const id = ids.get(card.plane);
  return id ? `plane-${id}` : null;
}

function measuredCard(card: AdjustmentCard, key: string, source: CardSource, ids: PlaneIds): Placed {
  const change = source.cards.get(key);
  const readings = readingsOn(card, source.document?.readings ?? []);
  const measured = measuredWords(card);
  const theirs = teachersWords(change);
  const rewritten = theirs.what !== undefined || theirs.how !== undefined;
  return {
    card: {
      key,
      planeId: card.plane === null ? null : (ids.get(card.plane) ?? null),
      where: sentence(card.where),
      words: { ...measured, ...theirs },
      measured,
      readings: card.readings,
      source: theirs.why === undefined ? (readings[0]?.source ?? null) : null,
      // Nobody means a photograph to be dark or small: what it shows is photographed again.
      meantKeys:
        key === 'photo' ? [] : [...new Set(readings.flatMap((reading) => meantKeyOf(reading, ids) ?? []))],
      healthLine: card.healthLine || rewritten,
      changed: Object.keys(theirs).length > 0,
      ...answered(source.answers.get(key), card.readings[0]),
      order: change?.order ?? null,
    },
    id: card.id,
    against: card.against ?? [],
    dropped: change?.dropped ?? false,
    meant: readings.length > 0 && readings.every((reading) => meantBy(reading, ids, source.meant) !== null),
  };
}

/** A card of a teacher's own, or a teacher's words on one that is measured no longer. */
function writtenCard(key: string, change: LiveCard, source: CardSource): Placed | null {
  if (change.what === undefined) return null;
  const planeId = key.startsWith('plane-') ? key.slice('plane-'.length) : (change.planeId ?? null);
  const plane = source.planes.find(({ id }) => id === planeId);
  if (key.startsWith('plane-') && !plane) return null;
  return {
    card: {
      key,
      planeId: plane?.id ?? null,
      where: sentence(plane?.name ?? (key === 'photo' ? say`the photo of the painting` : WHOLE_PICTURE)),
      words: { ...NO_WORDS, ...teachersWords(change) },
      ...{ measured: null, readings: [], source: null, meantKeys: [] },
      healthLine: true,
      changed: true,
      ...answered(source.answers.get(key), undefined),
      order: change.order ?? null,
    },
    ...{ id: null, against: [], dropped: change.dropped ?? false, meant: false },
  };
}

/** Cards with a teacher's order first, in that order; then a teacher's words; then measured ones by rank. */
function inOrder(placed: Placed[]): Placed[] {
  const byOrder = (one: Placed, two: Placed) => {
    const [a, b] = [one.card.order ?? '', two.card.order ?? ''];
    return a < b ? -1 : a > b ? 1 : one.card.key < two.card.key ? -1 : 1;
  };
  const ordered = placed.filter(({ card }) => card.order !== null).sort(byOrder);
  return [...ordered, ...placed.filter(({ card }) => card.order === null)];
}

/** The first three that do not undo one another; a teacher's order stands above that. */
function opened(placed: readonly Placed[]): Placed[] {
  const open: Placed[] = [];
  for (const one of placed) {
    if (open.length === MOST_OPEN) break;
    const undoes = open.some(
      (other) =>
        (other.id !== null && one.against.includes(other.id)) ||
        (one.id !== null && other.against.includes(one.id)),
    );
    if (!undoes || one.card.order !== null) open.push(one);
  }
  return open;
}

function measuredCards(source: CardSource, ids: PlaneIds): Placed[] {
  const cards = source.document?.cards ?? [];
  // Those that the measuring opened come first; the others move up in their rank.
  const ranked = [...cards.filter(({ open }) => open), ...cards.filter(({ open }) => !open)];
  const taken = new Set<string>();
  return ranked.flatMap((card) => {
    const key = cardKeyOf(card, ids);
    if (key === null || taken.has(key)) return [];
    taken.add(key);
    return [measuredCard(card, key, source, ids)];
  });
}

export function showCards(source: CardSource): ShownCards {
  const ids = planeIdsByName(source);
  const measured = measuredCards(source, ids);
  const known = new Set(measured.map(({ card }) => card.key));
  const written = [...source.cards].flatMap(([key, change]) => {
    const card = known.has(key) ? null : writtenCard(key, change, source);
    return card ? [card] : [];
  });
  const all = inOrder([...written, ...measured]);
  const isDeclined = ({ card }: Placed) => card.answer?.state === 'declined';
  const standing = all.filter((one) => !one.dropped && !one.meant && !isDeclined(one));
  const open = opened(standing);
  const cards = (placed: Placed[]) => placed.map(({ card }) => card);
  return {
    open: cards(open),
    waiting: cards(standing.filter((one) => !open.includes(one))),
    declined: cards(all.filter((one) => isDeclined(one) && !one.dropped && !one.meant)),
    dropped: cards(all.filter(({ dropped }) => dropped)),
  };
}
