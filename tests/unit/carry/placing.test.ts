/** What a hand does to planes that are carried over: shifts, sizes and corners of everything and of one plane. */
import { describe, expect, it } from 'vitest';
import {
  allChanged,
  boundsOfAll,
  cornerPulled,
  cornersOf,
  type Laid,
  planeChanged,
  shiftedBy,
  sizedBy,
} from '#app/_carry/placing.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { moved, placed, SAME_PART } from '#server/core/planes/carry/placement.ts';

const START: Laid = {
  placement: { scaleX: 1.2, scaleY: 0.9, shiftX: -0.1, shiftY: 0.2 },
  moves: new Map([['a', { about: [0.4, 0.6], scale: 1.1, shiftX: 0.03, shiftY: -0.02 }]]),
};

/** Where a point of plane `id` of the first picture lies. */
function whereIs({ placement, moves }: Laid, id: string, point: FractionPoint): FractionPoint {
  const there = placed(placement, point);
  const move = moves.get(id);
  return move ? moved(move, there) : there;
}

function expectNear(a: FractionPoint, b: FractionPoint): void {
  expect(a[0]).toBeCloseTo(b[0], 9);
  expect(a[1]).toBeCloseTo(b[1], 9);
}

const POINTS: FractionPoint[] = [
  [0, 0],
  [0.3, 0.8],
  [1, 0.5],
];

describe('everything', () => {
  it.each(['a', 'b'])('shifted: every point of plane %s goes along', (id) => {
    const after = allChanged(START, shiftedBy(0.05, -0.1));
    for (const point of POINTS) {
      const [x, y] = whereIs(START, id, point);
      expectNear(whereIs(after, id, point), [x + 0.05, y - 0.1]);
    }
  });

  it.each(['a', 'b'])('sized: every point of plane %s goes from the place that stays', (id) => {
    const after = allChanged(START, sizedBy(1.5, [0.25, 0.75]));
    for (const point of POINTS) {
      const [x, y] = whereIs(START, id, point);
      expectNear(whereIs(after, id, point), [0.25 + (x - 0.25) * 1.5, 0.75 + (y - 0.75) * 1.5]);
    }
  });
});

describe('one plane', () => {
  it.each(['a', 'b'])('%s is shifted and sized, the other stays', (id) => {
    const about: FractionPoint = [0.5, 0.5];
    const after = planeChanged(
      planeChanged(START, id, about, shiftedBy(0.1, 0.02)),
      id,
      about,
      sizedBy(0.8, [0.2, 0.3]),
    );
    for (const point of POINTS) {
      const [x, y] = whereIs(START, id, point);
      expectNear(whereIs(after, id, point), [0.2 + (x + 0.1 - 0.2) * 0.8, 0.3 + (y + 0.02 - 0.3) * 0.8]);
      const other = id === 'a' ? 'b' : 'a';
      expectNear(whereIs(after, other, point), whereIs(START, other, point));
    }
  });
});

describe('corners', () => {
  it('stay where a hand can take them, also when the picture reaches past the painting', () => {
    for (const [x, y] of cornersOf(boundsOfAll({ scaleX: 3, scaleY: 3, shiftX: -1, shiftY: -1 }))) {
      expect(Math.min(x, y, 1 - x, 1 - y)).toBeGreaterThan(0.01);
    }
  });

  it('pulled, leave the opposite one where it was', () => {
    const corners = cornersOf(
      boundsOfAll({ ...SAME_PART, scaleX: 0.5, scaleY: 0.5, shiftX: 0.2, shiftY: 0.2 }),
    );
    const change = cornerPulled(corners, 2, [0.9, 0.6], false);
    if (!change) throw new Error('A corner was pulled.');
    const laid: Laid = {
      placement: { scaleX: 0.5, scaleY: 0.5, shiftX: 0.2, shiftY: 0.2 },
      moves: new Map(),
    };
    const after = allChanged(laid, change);
    expectNear(whereIs(after, 'a', [0, 0]), [0.2, 0.2]);
    expectNear(whereIs(after, 'a', [1, 1]), [0.9, 0.6]);
  });

  it('never turn anything over or let it vanish', () => {
    const corners = cornersOf([0.2, 0.2, 0.7, 0.7]);
    const change = cornerPulled(corners, 2, [0.1, 0.1], true);
    expect(change?.scaleX).toBeGreaterThan(0);
    expect(change?.scaleX).toBe(change?.scaleY);
  });
});
