/** Several ladders in one chart: where lines run and break, letters that never cover each other, lines without hue. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chosenLetters, shownState, USUAL_CHOICE } from '#app/_wall/hung.ts';
import { laddersOf, lineStyle } from '#app/_wall/ladder-lines.ts';
import { USUAL_LOOKING, withRow } from '#app/_wall/rows.ts';
import type { MeasureDocument, PlaneMeasures, PlaneResult } from '#server/core/contract/measures.ts';
import { MOST_HUNG, type WallPainting } from '#server/core/contract/wall.ts';

const NAMES = ['Sky', 'Ridge', 'Wood', 'Meadow'];

const figures = (mid: number | null): PlaneMeasures => ({
  ...{ share: 0.25, dark: mid, mid, light: mid, spread: 0, munsellValue: 5, chroma: 10, strong: 20 },
  ...{ hue: 100, a: 1, b: 8, warmCool: 3, detail: null, edge: null, hueShares: null, airDistance: null },
  ...{ airShare: null, doubt: {}, notes: [], colours: null },
});

/** Lightness of each plane; NaN = not measured. */
function painted(mids: readonly (number | null)[], reference: number | null = null): MeasureDocument {
  const planes = mids.map((mid, at): PlaneResult => {
    const there = reference === null ? null : figures(reference);
    return { name: NAMES[at] ?? '', reference: there, gap: null, painting: figures(mid), recession: null };
  });
  return {
    ...{ version: 1, target: reference === null ? 'none' : 'reference', planes, steps: [] },
    ...{ units: { lightness: 'CIE L*, D65', chroma: 'C*ab', hue: 'degrees' } },
    ...{ capture: { grade: 'A', reasons: [] }, air: { reference: null, painting: null } },
    ...{ fit: { key: null, span: null }, readings: [], priorities: [], works: null },
  } as MeasureDocument;
}

describe('ladders in one chart', () => {
  test('run from far to near at the height of each lightness, and break where nothing was measured', () => {
    const { planes, lines } = laddersOf([{ letter: 'A', document: painted([90, 60, null, 40]) }], 'mid');
    expect(planes).toEqual(NAMES);
    const heights = lines[0]?.runs.map((run) => run.map(({ y }) => Number(y.toFixed(6))));
    expect(heights).toEqual([[0.1, 0.4], [0.6]]);
    const places = lines[0]?.runs.flat().map(({ x }) => x);
    expect(places).toEqual([0.125, 0.375, 0.875]);
  });

  test('keep the order of the wall, whatever their figures', () => {
    const order = ['D', 'A', 'C'];
    const measured = order.map((letter, at) => ({ letter, document: painted([90, 20 + at * 30]) }));
    expect(laddersOf(measured, 'mid').lines.map(({ letter }) => letter)).toEqual(order);
  });

  test('what all are held against is one line; painted from life there is none', () => {
    expect(laddersOf([{ letter: 'A', document: painted([90, 60], 70) }], 'mid').target[0]).toHaveLength(2);
    expect(laddersOf([{ letter: 'A', document: painted([90, 60]) }], 'mid').target).toEqual([]);
  });

  test('letters of up to twelve lines never cover each other and stay in the chart', () => {
    const ends = fc.array(fc.double({ min: 0, max: 100, noNaN: true }), {
      minLength: 2,
      maxLength: MOST_HUNG,
    });
    fc.assert(
      fc.property(ends, (mids) => {
        const measured = mids.map((mid, at) => ({
          letter: String.fromCharCode(65 + at),
          document: painted([90, mid]),
        }));
        const heights = laddersOf(measured, 'mid').lines.map(({ letterY }) => letterY ?? Number.NaN);
        const sorted = heights.toSorted((one, other) => one - other);
        sorted.slice(1).forEach((height, at) => {
          expect(height - (sorted[at] ?? 0)).toBeGreaterThan(0.0749);
        });
        expect(sorted.at(-1)).toBeLessThanOrEqual(1);
        expect(sorted[0]).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('twelve lines are twelve different ones without any hue', () => {
    const styles = Array.from({ length: MOST_HUNG }, (_, at) => JSON.stringify(lineStyle(at)));
    expect(new Set(styles).size).toBe(MOST_HUNG);
  });
});

describe('what hangs on one screen', () => {
  const paintings = Array.from(
    { length: 15 },
    (_, at): WallPainting => ({
      ...{ letter: String.fromCharCode(65 + at), mine: false, painter: null },
      states: [1, 2].map((state) => ({ id: `${at}-${state}`, width: 3, height: 2 })),
    }),
  );
  const [first] = paintings as [WallPainting];

  test('is at most twelve, and the newest state of each, until somebody chooses', () => {
    expect(chosenLetters(paintings, USUAL_CHOICE).join('')).toBe('ABCDEFGHIJKL');
    expect(shownState(first, USUAL_CHOICE)?.id).toBe('0-2');
  });

  test('is what was chosen, in the order of the wall, while it is there', () => {
    expect(chosenLetters(paintings, { ...USUAL_CHOICE, letters: ['O', 'B', 'gone'] })).toEqual(['B', 'O']);
    expect(shownState(first, { letters: null, states: new Map([['A', '0-1']]) })?.id).toBe('0-1');
    expect(shownState(first, { letters: null, states: new Map([['A', 'gone']]) })?.id).toBe('0-2');
  });

  test('at least one way of looking stays on', () => {
    const one = { ...USUAL_LOOKING, rows: ['picture' as const] };
    expect(withRow(one, 'picture')).toEqual(one);
    expect(withRow(one, 'ladder').rows).toEqual(['picture', 'ladder']);
    expect(withRow(withRow(one, 'squint'), 'picture').rows).toEqual(['squint']);
  });
});
