/** What is offered to choose from, where it may be taken, and what is said once others took something too. */
import { describe, expect, test } from 'vitest';
import { findTargets, firstTarget } from '#app/_propose/find-target.ts';
import { groupingsOf, whyNoMore } from '#app/_propose/groupings.ts';
import { standing } from '#app/_propose/taken.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import type { PlaneProposals, Proposal } from '#server/core/planes/propose/propose.ts';

const proposal = (asked: number, found: number): Proposal => ({
  asked,
  planes: Array.from({ length: found }, (_, at) => ({
    name: `plane ${at + 1}`,
    kind: at === 0 ? 'sky' : 'land',
    outline: [
      [0, at / found],
      [1, at / found],
      [1, 1],
      [0, 1],
    ],
  })),
  note: found < asked ? `${asked} asked, ${found} found.` : null,
});

function proposals(most: number, chosen: number): PlaneProposals {
  const alternatives = [2, 3, 4, 5, 6, 7].map((asked) => proposal(asked, Math.min(asked, most)));
  return { widthPx: 3, heightPx: 2, alternatives, chosen: proposal(chosen, chosen), reason: 'For a reason.' };
}

const asItIs = (point: FractionPoint) => point;

describe('groupings', () => {
  test('that hold the same planes are shown once, and the first sentence says why there are no more', () => {
    const found = groupingsOf(proposals(4, 3), asItIs);
    expect(found.all.map((grouping) => grouping.length)).toEqual([2, 3, 4]);
    expect(found.all[found.chosenAt]).toHaveLength(3);
    expect(whyNoMore(found)).toBe('5 asked, 4 found.');
  });

  test('of every number leave nothing to explain', () => {
    const found = groupingsOf(proposals(7, 5), asItIs);
    expect(found.all).toHaveLength(6);
    expect(whyNoMore(found)).toBeNull();
  });

  test('of a picture that parts nothing are none, with the sentence why', () => {
    const found = groupingsOf(proposals(1, 1), asItIs);
    expect(found.all).toEqual([]);
    expect(whyNoMore(found)).toBe('2 asked, 1 found.');
  });

  test('come back in the frame of the original, numbers inside their planes', () => {
    const found = groupingsOf(proposals(2, 2), ([x, y]) => [0.1 + 0.8 * x, 0.2 + 0.5 * y]);
    expect(found.all[0]?.[1]?.outline[0]).toEqual([0.1, 0.2 + 0.5 * 0.5]);
    const [, y = 0] = found.all[0]?.[1]?.numberAt ?? [];
    expect(y).toBeGreaterThan(0.45);
    expect(y).toBeLessThan(0.7);
  });
});

const picture = (id: string, kind: 'reference' | 'painting') => ({ id, kind }) as PictureView; // no more is read
const reference = picture('r', 'reference');
const painting = picture('p', 'painting');
const may = (setup: boolean, paints: boolean) => ({ setup, painting: () => paints });

describe('planes may be looked for', () => {
  test('in the reference by whoever sets the board up, and then in the painting for its outlines', () => {
    const bare = { reference, painting, planes: 0, may: may(true, true) };
    expect(findTargets(bare)).toEqual([{ picture: reference, way: 'set' }]);
    expect(findTargets({ ...bare, planes: 4 })).toEqual([
      { picture: reference, way: 'set' },
      { picture: painting, way: 'match' },
    ]);
  });

  test('by a painter only for the planes that are there, by an onlooker nowhere', () => {
    const painter = { reference, painting, planes: 4, may: may(false, true) };
    expect(findTargets(painter)).toEqual([{ picture: painting, way: 'match' }]);
    expect(findTargets({ ...painter, planes: 0 })).toEqual([]);
    expect(findTargets({ ...painter, may: may(false, false) })).toEqual([]);
  });

  test('in a painting from life as a set, if both the board and the painting are theirs to set up', () => {
    const life = { reference: null, painting, planes: 0, may: may(true, true) };
    expect(findTargets(life)).toEqual([{ picture: painting, way: 'set' }]);
    expect(findTargets({ ...life, may: may(true, false) })).toEqual([]);
  });

  test('first where there are no outlines yet', () => {
    const targets = findTargets({ reference, painting, planes: 3, may: may(true, true) });
    expect(firstTarget(targets, (id) => (id === 'r' ? 3 : 0))?.picture).toBe(painting);
    expect(firstTarget(targets, () => 3)?.picture).toBe(reference);
    expect(firstTarget([], () => 0)).toBeNull();
  });
});

describe('what was taken', () => {
  const planes = (...ids: string[]) => ids.map((id) => ({ id }));
  const taken = { side: 'reference' as const, ids: ['n1', 'n2'], before: ['o1'] };

  test('stands while one of its planes does', () => {
    expect(standing(taken, planes('n2', 'x'))).toBe('stands');
    expect(standing({ ...taken, ids: null }, planes('o1'))).toBe('stands');
  });

  test('is undone when the planes of before are back or none are there', () => {
    expect(standing(taken, planes('o1'))).toBe('undone');
    expect(standing(taken, [])).toBe('undone');
  });

  test('is overtaken by planes that were never seen before', () => {
    expect(standing(taken, planes('other'))).toBe('overtaken');
  });
});
