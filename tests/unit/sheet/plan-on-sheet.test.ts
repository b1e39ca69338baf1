/** A planned ladder on a sheet: steps in painters' words, bars in greys as light as planned. */
import Color from 'colorjs.io';
import { describe, expect, test } from 'vitest';
import type { PlannedPlane } from '#server/core/contract/setup.ts';
import { barSlices } from '#server/core/ladder/bar-slices.ts';
import { plannedLadder, plannedSteps } from '#server/core/sheet/plan-on-sheet.ts';

const rung = (name: string, mid: number, chroma = 10, warmCool = 0): PlannedPlane => ({
  ...{ name, dark: mid - 10, mid, light: mid + 10, chroma, strong: chroma * 2, warmCool, airDistance: null },
});

describe('a planned ladder on a sheet', () => {
  test('says each step in the painter’s own measure: a tenth of the way from black to white', () => {
    expect(
      plannedSteps([rung('Sky', 80), rung('Ridge', 65, 10, 6), rung('Wood', 66, 4), rung('Meadow', 71, 12)]),
    ).toEqual([
      '1 to 2: one step and a half darker, warmer',
      '2 to 3: about the same value, greyer, cooler',
      '3 to 4: half a step lighter, stronger',
    ]);
  });

  test('of one plane has no step, of none no column', () => {
    expect(plannedSteps([rung('Sky', 80)])).toEqual([]);
    expect(plannedLadder([], null).geometry.columns).toEqual([]);
  });

  test('without colours of its own a bar is as light as planned, by another colour library', () => {
    const { geometry } = plannedLadder([rung('Ridge', 50)], null);
    const [column] = geometry.columns;
    if (!column?.painting) throw new Error('The plane has no bar.');
    const slices = barSlices(column.painting, 21);
    const lightness = slices.map((hex) => new Color(hex).get('lab-d65.l'));
    // From 60 at the top to 40 at the bottom, in 21 slices; a hex code is within half an L*.
    lightness.forEach((l, at) => {
      expect(l).toBeCloseTo(60 - ((at + 0.5) / 21) * 20, -0.5);
    });
    expect(lightness[10]).toBeGreaterThan(49);
    expect(lightness[10]).toBeLessThan(51);
  });
});
