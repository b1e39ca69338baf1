/** Which plane a pixel belongs to. */
import { describe, expect, it } from 'vitest';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { countLabels, drawLabelMap, NO_PLANE } from '#server/core/planes/label-map.ts';

const whole: FractionPoint[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

describe('the label map', () => {
  it('fills by pixel centre', () => {
    // The right side runs at x = 2.5 of 5 pixels, through the centre of pixel 2: left of it is inside.
    const labels = drawLabelMap(5, 2, [
      [
        [0, 0],
        [0.5, 0],
        [0.5, 1],
        [0, 1],
      ],
    ]);
    expect([...labels]).toEqual([0, 0, NO_PLANE, NO_PLANE, NO_PLANE, 0, 0, NO_PLANE, NO_PLANE, NO_PLANE]);
  });

  it('lets a nearer plane cover a farther one', () => {
    const lower: FractionPoint[] = [
      [0, 0.5],
      [1, 0.5],
      [1, 1],
      [0, 1],
    ];
    expect([...drawLabelMap(2, 4, [whole, lower])]).toEqual([0, 0, 0, 0, 1, 1, 1, 1]);
    expect([...drawLabelMap(2, 4, [lower, whole])]).toEqual([1, 1, 1, 1, 1, 1, 1, 1]);
  });

  it('leaves a hole where an outline winds around twice (even–odd)', () => {
    const ring: FractionPoint[] = [
      ...whole,
      [0, 0],
      [0.25, 0.25],
      [0.25, 0.75],
      [0.75, 0.75],
      [0.75, 0.25],
      [0.25, 0.25],
    ];
    const labels = drawLabelMap(4, 4, [ring]);
    expect([labels[5], labels[6], labels[9], labels[10]]).toEqual([NO_PLANE, NO_PLANE, NO_PLANE, NO_PLANE]);
    expect(countLabels(labels, 1)).toEqual([12]);
  });

  it('cuts off what lies outside the picture', () => {
    const wide: FractionPoint[] = [
      [-3, 0.5],
      [4, 0.5],
      [4, 9],
      [-3, 9],
    ];
    expect(countLabels(drawLabelMap(3, 4, [wide]), 1)).toEqual([6]);
  });

  it('knows every pixel and counts it once', () => {
    const labels = drawLabelMap(7, 5, [
      whole,
      [
        [0.1, 0.2],
        [0.9, 0.3],
        [0.4, 0.9],
      ],
    ]);
    const counts = countLabels(labels, 256);
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(35);
    expect(labels.every((label) => label <= 1)).toBe(true);
  });
});
