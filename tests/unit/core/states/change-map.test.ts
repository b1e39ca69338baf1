/** Where a painting became lighter or darker: nothing within the doubt, the right sign beyond it, readable in greys. */
import { describe, expect, test } from 'vitest';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';
import { changeGreys, changeMap } from '#server/core/states/change/change-map.ts';
import { laidOn } from '#server/core/states/change/laid-on.ts';

const [WIDE, HIGH] = [240, 180];

/** Bands of grey with some texture; `code` may change what a pixel shows. */
function picture(
  code: (x: number, y: number, grey: number) => number = (_x, _y, grey) => grey,
): EncodedRaster {
  const samples = new Uint8Array(WIDE * HIGH * 3);
  for (let pixel = 0; pixel < WIDE * HIGH; pixel++) {
    const [x, y] = [pixel % WIDE, Math.floor(pixel / WIDE)];
    const grey = 90 + 60 * Math.sin(y / 23) + 12 * Math.sin(x / 5 + y / 7);
    samples.fill(Math.round(Math.min(255, Math.max(0, code(x, y, grey)))), pixel * 3, pixel * 3 + 3);
  }
  return encodedRaster(WIDE, HIGH, samples);
}

const inBox = (x: number, y: number) => x > 40 && x < 120 && y > 60 && y < 130;
const cell = (map: { columns: number }, x: number, y: number) => y * map.columns + x;

describe('a change map', () => {
  test.each(['A', 'B', 'C'] as const)('shows nothing where nothing changed, at grade %s', (grade) => {
    const map = changeMap(picture(), picture(), [grade, grade]);
    expect(map.change.every((value) => value === 0)).toBe(true);
    expect(new Set(changeGreys(map)).size).toBe(1);
  });

  test('takes another exposure of the whole for no change', () => {
    // A third of a stop in linear light, as codes of about 1.11 times.
    const map = changeMap(
      picture(),
      picture((_x, _y, grey) => grey * 1.11),
      ['B', 'B'],
    );
    expect(map.lighter + map.darker).toBeLessThan(0.01);
  });

  test('takes an edge that lies a pixel aside for no change', () => {
    const step = (at: number) => picture((x) => (x < at ? 60 : 190));
    expect(changeMap(step(120), step(121), ['A', 'A']).lighter).toBe(0);
  });

  test.each([
    [40, 1],
    [-40, -1],
  ])('draws what changed by %i codes on the side it went to', (by, sign) => {
    const map = changeMap(
      picture(),
      picture((x, y, grey) => (inBox(x, y) ? grey + by : grey)),
      ['A', 'A'],
    );
    const middle = cell(map, 80, 95);
    expect(Math.sign(map.change[middle] as number)).toBe(sign);
    expect(map.change[cell(map, 200, 30)]).toBe(0);
    const greys = changeGreys(map);
    // Far enough from the still grey to be told apart in print: a step of the scale is 10 L*.
    expect(sign * ((greys[middle] as number) - (greys[cell(map, 200, 30)] as number))).toBeGreaterThan(8);
    const share = sign > 0 ? map.lighter : map.darker;
    expect(share).toBeGreaterThan(0.09);
    expect(share).toBeLessThan(0.16);
  });
});

describe('a picture laid on another', () => {
  test('is itself where nothing is moved', () => {
    const one = picture();
    const same = laidOn(
      one,
      [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ],
      WIDE,
      HIGH,
    );
    expect(Buffer.compare(Buffer.from(same.samples), Buffer.from(one.samples))).toBe(0);
  });

  test('shows what lies at the place it is sent to', () => {
    const shifted = laidOn(
      picture(),
      [
        [1, 0, 10 / WIDE],
        [0, 1, 0],
        [0, 0, 1],
      ],
      WIDE,
      HIGH,
    );
    expect(shifted.samples[(50 * WIDE + 50) * 3]).toBe(picture().samples[(50 * WIDE + 60) * 3]);
  });
});
