import { converter, formatHex } from 'culori';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { AXIS_GREYS, heightOfLightness, ladderGeometry } from '#server/core/ladder/geometry.ts';
import { gap, plane, result } from './a-document.ts';

describe('the value axis', () => {
  test('runs from white at the top to black at the bottom, a tenth of the height a step', () => {
    expect(heightOfLightness(100)).toBe(0);
    expect(heightOfLightness(50)).toBe(0.5);
    expect(heightOfLightness(0)).toBe(1);
    expect(heightOfLightness(104)).toBe(0);
  });

  test('has the greys that culori (lab65, CIE 15 and IEC 61966-2-1) gives for L* 5, 15 … 95', () => {
    const expected = AXIS_GREYS.map((_, step) => formatHex({ mode: 'lab65', l: 5 + 10 * step, a: 0, b: 0 }));
    expect([...AXIS_GREYS]).toEqual(expected);
  });

  test('lets one step vanish into the surround of L* 55', () => {
    const lightness = converter('lab65')('#848484')?.l ?? 0;
    expect(AXIS_GREYS[5]).toBe('#848484');
    expect(Math.abs(lightness - 55)).toBeLessThan(0.3);
  });
});

describe('the bars', () => {
  const ladder = ladderGeometry([
    result('sky', plane(80, 90, 95), plane(70, 85, 95)),
    result('field', plane(20, 40, 60), plane(10, 30, 60)),
  ]);

  test('stand far at the left and near at the right, target before painting in each column', () => {
    const places = ladder.columns.flatMap(({ target, painting }) => [target?.x ?? 0, painting?.x ?? 0]);
    expect(places).toEqual([...places].sort((one, two) => one - two));
    expect(ladder.columns.map(({ name, number }) => [name, number])).toEqual([
      ['sky', 1],
      ['field', 2],
    ]);
  });

  test('run from the lights down to the darks, with the middle at its own value', () => {
    const painting = ladder.columns[1]?.painting;
    expect(painting?.top).toBeCloseTo(0.4, 12);
    expect(painting?.height).toBeCloseTo(0.5, 12);
    expect(painting?.middle).toBeCloseTo(0.7, 12);
    expect(painting?.middleWithin).toBeCloseTo(0.6, 12);
  });

  test('stand in the middle of their columns where there is no target', () => {
    const alone = ladderGeometry([result('sky', null, plane(1, 2, 3)), result('sea', null, plane(1, 2, 3))]);
    expect(alone.columns.map(({ painting }) => painting?.x)).toEqual([0.25, 0.75]);
    expect(alone.targetLines).toEqual([]);
  });

  test('of the target are the planned ones where a plan is the target, whatever the reference shows', () => {
    const colours = { dark: '#111111', mid: '#848484', light: '#f1f1f1' };
    const planned = { ...gap({ dark: 50, mid: 60, light: 80 }), colours };
    const held = ladderGeometry([
      { ...result('sky', plane(80, 90, 95), plane(70, 85, 95)), planned: null },
      { ...result('field', plane(20, 40, 60), plane(10, 30, 60)), planned },
    ]);
    expect(held.columns[0]?.target).toBeNull();
    expect(held.columns[1]?.target).toMatchObject({ middle: 0.4, colours });
    expect(held.columns[1]?.target?.top).toBeCloseTo(0.2, 12);
    expect(held.columns[1]?.target?.height).toBeCloseTo(0.3, 12);
  });

  test('keep a column without a bar for a plane whose darks were not taken', () => {
    const blown = ladderGeometry([result('sky', null, plane(null, null, 100))]);
    expect(blown.columns[0]).toMatchObject({ name: 'sky', painting: null });
  });

  test('stay inside the plot, however light, dark or flat a plane is', () => {
    const lightness = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(lightness, lightness, lightness, (one, two, three) => {
        const [dark = 0, mid = 0, light = 0] = [one, two, three].sort((a, b) => a - b);
        const bar = ladderGeometry([result('plane', null, plane(dark, mid, light))]).columns[0]?.painting;
        if (!bar) throw new Error('The plane has no bar.');
        expect(bar.top).toBeGreaterThanOrEqual(0);
        expect(bar.top + bar.height).toBeLessThanOrEqual(1 + 1e-12);
        expect(bar.height).toBeGreaterThan(0.01);
        expect(bar.middleWithin).toBeGreaterThanOrEqual(0);
        expect(bar.middleWithin).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe('doubt on the bars', () => {
  const doubt: Record<string, [number, number]> = { dark: [16, 24], mid: [34, 46], light: [56, 64] };

  test('reaches beyond lights and darks, and stands about the middle', () => {
    const bar = ladderGeometry([result('wood', null, { ...plane(20, 40, 60), doubt })]).columns[0]?.painting;
    expect(bar?.above).toEqual({ top: expect.closeTo(0.36, 12), height: expect.closeTo(0.04, 12) });
    expect(bar?.below).toEqual({ top: expect.closeTo(0.8, 12), height: expect.closeTo(0.04, 12) });
    expect(bar?.around).toEqual({ top: expect.closeTo(0.54, 12), height: expect.closeTo(0.12, 12) });
  });

  test('is not drawn where it is unknown, too small to see, or beyond white', () => {
    const bars = [{}, { mid: [39.7, 40.3], light: [100, 130] } as const].map(
      (known) =>
        ladderGeometry([
          result('snow', null, { ...plane(20, 40, 100), doubt: known as Record<string, [number, number]> }),
        ]).columns[0]?.painting,
    );
    for (const bar of bars) expect(bar).toMatchObject({ above: null, below: null, around: null });
  });
});

test('a target that is not to be trusted is kept, quieter, and the line leaves it out', () => {
  const planes = [90, 60, 40, 30].map((mid) => result('plane', plane(10, mid, 95), plane(10, mid, 95)));
  const ladder = ladderGeometry(planes, [false, true, false, false]);
  expect(ladder.columns.map(({ quietTarget }) => quietTarget)).toEqual([false, true, false, false]);
  expect(ladder.columns[1]?.target).not.toBeNull();
  expect(ladder.targetLines.map((run) => run.length)).toEqual([2]);
  expect(ladder.paintingLines.map((run) => run.length)).toEqual([4]);
});

describe('the lines through the middles', () => {
  test('join every plane of one picture', () => {
    const planes = [90, 60, 40].map((mid) => result('plane', null, plane(mid - 5, mid, mid + 5)));
    expect(ladderGeometry(planes).paintingLines.map((run) => run.map(({ y }) => y))).toEqual([
      [0.1, 0.4, 0.6].map((y) => expect.closeTo(y, 12)),
    ]);
  });

  test('break where a middle was not taken, and leave out a point that stands alone', () => {
    const planes = [90, null, 40, 30].map((mid) => result('plane', null, plane(10, mid, 95)));
    const lines = ladderGeometry(planes).paintingLines;
    expect(lines).toHaveLength(1);
    expect(lines[0]).toHaveLength(2);
  });

  test('are none on an empty ladder', () => {
    expect(ladderGeometry([])).toEqual({ columns: [], targetLines: [], paintingLines: [] });
  });
});
