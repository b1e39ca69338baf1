/** Measured adjustment cards on five planes, with what a teacher and a painter said to them, for tests. */

import type { AdjustmentCard } from '#server/core/contract/critique.ts';
import type { MeasureDocument, Reading } from '#server/core/contract/measures.ts';
import type { LiveAnswer, LiveCard } from '#server/core/live/layout.ts';
import { type CardSource, showCards } from '#server/core/live/show-cards.ts';
import { plane, result } from '../ladder/a-document.ts';

/** Far to near; each plane's id on the live board is its name with `p-` before it. */
const PLANES = ['sky', 'ridge', 'hill', 'wood', 'field'];

export function card(
  readings: string[],
  name: string | null,
  more: Partial<AdjustmentCard> = {},
): AdjustmentCard {
  const photo = readings[0]?.startsWith('G') ?? false;
  return {
    id: `${readings[0]}-${name ?? (photo ? 'photo' : 'picture')}`,
    readings: readings as AdjustmentCard['readings'], // ids of the rules, as a test names them
    plane: name,
    where: name ?? (photo ? 'the photo of the painting' : 'the whole picture'),
    actions: [
      {
        part: photo ? 'photo' : 'darks',
        direction: photo ? 'again' : 'lift',
        amount: photo ? null : 'half a step',
        words: photo ? 'photo: photograph again' : 'darks: lift about half a step',
        how: 'Try a scumble.',
        mixes: !photo,
      },
    ],
    why: 'Air lifts the darks.',
    check: 'Squint.',
    healthLine: !photo,
    open: true,
    against: [],
    ...more,
  };
}

function readingsOf(cards: readonly AdjustmentCard[]): Reading[] {
  return cards.flatMap(({ readings, plane: name }) =>
    readings.map((id) => ({
      ...{ id, planes: name === null ? [] : [name], severity: 1, muted: null, form: 'finding' as const },
      ...{ sentence: `${id} speaks.`, why: 'Because.', source: `source of ${id}` },
    })),
  );
}

export interface Given {
  measured: AdjustmentCard[];
  cards?: Record<string, LiveCard>;
  answers?: Record<string, LiveAnswer>;
  meant?: Record<string, string>;
  /** Names of planes that were renamed since. */
  gone?: string[];
}

export function sourceOf({ measured, cards = {}, answers = {}, meant = {}, gone = [] }: Given): CardSource {
  const document: Pick<MeasureDocument, 'planes' | 'readings' | 'cards'> = {
    planes: PLANES.map((name) => result(name, null, plane(10, 20, 30))),
    readings: readingsOf(measured),
    cards: measured,
  };
  return {
    document,
    planeIds: PLANES.map((name) => (gone.includes(name) ? null : `p-${name}`)),
    planes: PLANES.filter((name) => !gone.includes(name)).map((name) => ({ id: `p-${name}`, name })),
    cards: new Map(Object.entries(cards)),
    answers: new Map(Object.entries(answers)),
    meant: new Map(Object.entries(meant)),
  };
}

export const shown = (given: Given) => showCards(sourceOf(given));
export const keys = (cards: readonly { key: string }[]) => cards.map(({ key }) => key);
export const answer = (state: LiveAnswer['state'], about: string[], words = ''): LiveAnswer => ({
  state,
  about,
  words,
});

export const FOUR = [
  card(['V1'], 'hill'),
  card(['V4', 'C2'], 'ridge'),
  card(['D1'], 'wood'),
  card(['V8'], null, { open: false }),
];
