import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { orderBeforeAll, ordersToMove } from '#server/core/live/card-order.ts';
import type { LiveAnswer } from '#server/core/live/layout.ts';
import { MOST_OPEN } from '#server/core/live/show-cards.ts';
import { card, FOUR, type Given, keys, shown } from './some-cards.ts';

describe('whatever is changed and answered', () => {
  const states = fc.constantFrom('open', 'accepted', 'adapted', 'declined', 'tried', 'done') as fc.Arbitrary<
    LiveAnswer['state']
  >;
  const givens: fc.Arbitrary<Given> = fc.record({
    measured: fc.subarray([...FOUR, card(['C4'], 'sky'), card(['G1'], null)]),
    cards: fc.dictionary(
      fc.constantFrom('plane-p-hill', 'plane-p-ridge', 'picture', 'photo', 'own-a', 'own-b'),
      fc.record(
        {
          what: fc.constantFrom('this', 'that'),
          order: fc.constantFrom('A', 'M', 'V'),
          dropped: fc.constant(true as const),
        },
        { requiredKeys: [] },
      ),
    ),
    answers: fc.dictionary(
      fc.constantFrom('plane-p-hill', 'plane-p-ridge', 'plane-p-wood', 'own-a'),
      fc.record({ state: states, words: fc.constant(''), about: fc.subarray(['V1', 'V4', 'C2', 'D1']) }),
    ),
    meant: fc.dictionary(fc.constantFrom('V1', 'V4-p-ridge', 'C2', 'V8'), fc.constant('')),
  });

  test('at most three are open, none twice, and no card of a teacher’s is lost', () => {
    fc.assert(
      fc.property(givens, (given) => {
        const { open, waiting, declined, dropped } = shown(given);
        const all = keys([...open, ...waiting, ...declined, ...dropped]);
        expect(open.length).toBeLessThanOrEqual(MOST_OPEN);
        expect(new Set(all).size).toBe(all.length);
        for (const key of ['own-a', 'own-b']) {
          expect(all.includes(key)).toBe(given.cards?.[key]?.what !== undefined);
        }
        expect(open.every((one) => one.answer?.state !== 'declined')).toBe(true);
        if (open.length < MOST_OPEN) expect(waiting).toEqual([]);
      }),
    );
  });

  test('moving a card puts it where it was sent and leaves the others in their order', () => {
    fc.assert(
      fc.property(givens, fc.nat(5), fc.nat(5), (given, from, to) => {
        // Equal orders are the one thing that cannot be moved between.
        const orders = Object.values(given.cards ?? {}).flatMap(({ order }) => order ?? []);
        fc.pre(new Set(orders).size === orders.length);
        const before = shown(given);
        const list = [...before.open, ...before.waiting];
        const moved = list[from];
        fc.pre(moved !== undefined && to < list.length);
        const changes = ordersToMove(list, moved?.key ?? '', to);
        const cards = { ...given.cards };
        for (const [key, order] of changes) cards[key] = { ...cards[key], order };
        const after = shown({ ...given, cards });
        const rest = keys(list).filter((key) => key !== moved?.key);
        expect(keys([...after.open, ...after.waiting])).toEqual(rest.toSpliced(to, 0, moved?.key ?? ''));
      }),
    );
  });

  test('a new card can always stand before all others', () => {
    expect(orderBeforeAll([{ key: 'picture', order: null }])).not.toBeNull();
    const before = orderBeforeAll([
      { key: 'own-a', order: 'B' },
      { key: 'own-b', order: '5' },
    ]);
    expect(before !== null && before < '5').toBe(true);
  });
});
