/** Which cards the next state is asked about, and what may be said of them. */
import { describe, expect, test } from 'vitest';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import type { LiveAnswer, LiveCard } from '#server/core/live/layout.ts';
import { planeIdsByName, showCards } from '#server/core/live/show-cards.ts';
import { cardResults, type StateCards } from '#server/core/states/card-results.ts';
import { carriedOutlines } from '#server/core/states/carried-outlines.ts';
import { recurringReadings } from '#server/core/states/recurring.ts';

const answer = (state: LiveAnswer['state'], words = ''): LiveAnswer => ({ state, words, about: ['V4'] });

/** A far ridge whose darks have this L*, and a near one; a card that asks to lift the far darks by 10 L*. */
function documentOf(dark: number): MeasureDocument {
  const plane = (name: string, darks: number) => ({
    name,
    gap: null,
    painting: { mid: 60, dark: darks, light: 75, doubt: { dark: [darks - 1, darks + 1] } },
  });
  const card = {
    ...{ id: 'V4-plane-1', readings: ['V4'], plane: 'Ridge', where: 'Ridge', why: '', check: '' },
    ...{ healthLine: false, open: true },
    actions: [
      {
        ...{ part: 'darks', direction: 'lift', amount: 'about one step', amountL: 10, mixes: false },
        ...{ words: 'darks: lift about one step', how: '' },
      },
    ],
  };
  // Only what is looked at here.
  return {
    ...{ capture: { grade: 'A', reasons: [] }, readings: [], cards: [card] },
    planes: [plane('Ridge', dark), plane('Meadow', 20)],
  } as unknown as MeasureDocument;
}

function state(
  pictureId: string,
  dark: number,
  given: { answers?: [string, LiveAnswer][]; cards?: [string, LiveCard][] } = {},
): StateCards {
  const document = documentOf(dark);
  const planes = [
    { id: 'ridge', name: 'Ridge' },
    { id: 'meadow', name: 'Meadow' },
  ];
  const planeIds = ['ridge', 'meadow'];
  const cards = showCards({
    ...{ document, planeIds, planes, meant: new Map() },
    cards: new Map(given.cards),
    answers: new Map(given.answers),
  });
  return { pictureId, document, cards, planeIds: planeIdsByName({ document, planeIds }) };
}

const always = () => true;

describe('the cards of the last state', () => {
  test('are told with how far each went, by the card’s own figures', () => {
    const results = cardResults([state('one', 30), state('two', 35)], 1, always);
    expect(results).toMatchObject([
      {
        pictureId: 'one',
        key: 'plane-ridge',
        state: 'open',
        moves: [{ verdict: 'half', from: 30, advised: 10 }],
      },
    ]);
    expect(results[0]?.moves[0]?.by).toBeCloseTo(5, 1);
  });

  test('are told without figures where the photos do not belong together', () => {
    const [card] = cardResults([state('one', 30), state('two', 35)], 1, () => false);
    expect(card?.moves).toEqual([]);
  });

  test('in other words of a teacher are not judged by the figures of the measured one', () => {
    const rewritten = state('one', 30, {
      cards: [['plane-ridge', { what: 'leave it and look at the sky' }]],
    });
    expect(cardResults([rewritten, state('two', 40)], 1, always)).toMatchObject([
      { what: 'leave it and look at the sky', moves: [] },
    ]);
  });

  test('that the painter left are not asked about', () => {
    const left = state('one', 30, { answers: [['plane-ridge', answer('declined')]] });
    expect(cardResults([left, state('two', 40)], 1, always)).toEqual([]);
  });
});

describe('an older card', () => {
  const [third, second] = [state('three', 41), state('two', 35)];

  test('that was taken along is held against the state it was given on', () => {
    const first = state('one', 30, { answers: [['plane-ridge', answer('carried', 'slowly')]] });
    const [older] = cardResults([first, second, third], 2, always);
    expect(older).toMatchObject({
      pictureId: 'one',
      answer: 'slowly',
      moves: [{ verdict: 'all', from: 30 }],
    });
  });

  test.each(['accepted', 'done'] as const)('that is %s and was not taken along is not', (given) => {
    const first = state('one', 30, { answers: [['plane-ridge', answer(given)]] });
    expect(cardResults([first, second, third], 2, always).map(({ pictureId }) => pictureId)).toEqual(['two']);
  });
});

describe('outlines of the last state', () => {
  const square = [
    [0.1, 0.1],
    [0.9, 0.1],
    [0.9, 0.9],
    [0.1, 0.9],
  ] as [number, number][];

  test('lie where the next photo shows the same places', () => {
    const corners = square.map(([x, y]) => [x, y]) as unknown as NonNullable<
      Parameters<typeof carriedOutlines>[1]['corners']
    >;
    // The last photo shows the painting alone; the next one shows it with a margin of a tenth.
    const whole = new Map([
      [
        'ridge',
        [
          [0, 0.5],
          [1, 0.5],
          [1, 1],
          [0, 1],
        ] as [number, number][],
      ],
    ]);
    const identity = [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ] as const;
    const [carried] = carriedOutlines(whole, {}, { corners }, identity).values();
    const wanted = [
      [0.1, 0.5],
      [0.9, 0.5],
      [0.9, 0.9],
      [0.1, 0.9],
    ];
    carried?.forEach(([x, y], at) => {
      expect(x).toBeCloseTo(wanted[at]?.[0] ?? 0, 6);
      expect(y).toBeCloseTo(wanted[at]?.[1] ?? 0, 6);
    });
  });
});

describe('what comes back', () => {
  const reading = (id: string, muted: string | null = null) => ({
    ...{ id, planes: [], severity: 1, sentence: '', why: '', source: '', muted },
  });
  const read = (...ids: string[]) => ({ readings: ids.map((id) => reading(id)) });

  test('stands on two paintings or more, in the order of the trade’s list, and says where it is gone', () => {
    const found = recurringReadings([
      { painting: 'fjord', states: [read('V4', 'C1'), read('C1')] },
      { painting: 'marsh', states: [read('V4')] },
      { painting: 'wood', states: [null, read('V2')] },
    ]);
    expect(found.map(({ id, on }) => ({ id, on }))).toEqual([
      {
        id: 'V4',
        on: [
          { painting: 'fjord', stands: false },
          { painting: 'marsh', stands: true },
        ],
      },
    ]);
  });

  test('leaves out what was muted', () => {
    const muted = { readings: [reading('V4', 'Snow')] };
    expect(recurringReadings(['a', 'b'].map((painting) => ({ painting, states: [muted] })))).toEqual([]);
  });
});
