/** Single rules of measuring: what is not measured and why, clipping, detail, edges, picked air, bad outlines. */
import { describe, expect, it } from 'vitest';
import { Setup } from '#server/core/contract/setup.ts';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';
import { riseOf } from '#server/core/measure/edge.ts';
import { hueFamilyOf } from '#server/core/measure/hue.ts';
import { measurePair, measurePrepared } from '#server/core/measure/measure-pair.ts';
import { prepareMeasurable } from '#server/core/measure/prepare.ts';

type Point = [number, number];
const band = (top: number, bottom: number): Point[] => [
  [0, top],
  [1, top],
  [1, bottom],
  [0, bottom],
];

function paint(
  widthPx: number,
  heightPx: number,
  at: (x: number, y: number) => [number, number, number],
): EncodedRaster {
  const samples = new Uint8Array(widthPx * heightPx * 3);
  for (let pixel = 0; pixel < widthPx * heightPx; pixel++) {
    samples.set(at(pixel % widthPx, Math.floor(pixel / widthPx)), pixel * 3);
  }
  return encodedRaster(widthPx, heightPx, samples);
}

const grey = (code: number): [number, number, number] => [code, code, code];

function measureOne(raster: EncodedRaster, planes: object[], extra: object = {}) {
  return measurePair({ reference: null, painting: { raster }, setup: Setup.parse({ planes, ...extra }) });
}

/** L* of an 8-bit grey, ISO/CIE 11664-4 on IEC 61966-2-1. */
const L128 = 53.585;
/** Percentiles of many values are within 1/65,536 of their range. */
const FINE = 0.0016;

describe('a plane', () => {
  it('has the lightness of its paint', () => {
    const { planes } = measureOne(
      paint(300, 200, () => grey(128)),
      [{ name: 'wall', reference: band(0, 1) }],
    );
    expect(planes[0]?.painting.mid).toBeCloseTo(L128, 2);
    expect(planes[0]?.painting.spread ?? Number.NaN).toBeLessThan(FINE);
    expect(planes[0]?.painting.munsellValue).toBeCloseTo(5.2547, 3);
    expect(planes[0]?.painting.hue).toBeNull();
    expect(planes[0]?.painting.notes.join(' ')).toContain('Too grey to have a hue');
    expect(planes[0]?.painting.colours).toEqual({ dark: '#808080', mid: '#808080', light: '#808080' });
  });

  it('is not measured under 1 % of the picture, and says so', () => {
    const { planes } = measureOne(
      paint(300, 200, () => grey(90)),
      [{ name: 'sliver', reference: band(0, 0.005) }],
    );
    expect(planes[0]?.painting.mid).toBeNull();
    expect(planes[0]?.painting.share).toBe(0.005);
    const { planes: thin } = measureOne(
      paint(300, 200, () => grey(90)),
      [
        {
          name: 'dot',
          reference: [
            [0, 0],
            [0.05, 0],
            [0, 0.1],
          ],
        },
      ],
    );
    expect(thin[0]?.painting.notes[0]).toMatch(/covers 0\.2\d % of the picture; at least 1 % is needed/);
  });

  it('is not measured when its rim leaves nothing', () => {
    const { planes } = measureOne(
      paint(1000, 500, () => grey(90)),
      [{ name: 'line', reference: band(0.4, 0.42) }],
    );
    expect(planes[0]?.painting.share).toBeCloseTo(0.02, 3);
    expect(planes[0]?.painting.notes[0]).toContain('nothing is left inside its rim');
  });

  it('has its rim left out of the colour, but not of the share', () => {
    const raster = paint(500, 500, (_x, y) => grey(y < 249 ? 60 : y < 251 ? 255 : 180));
    const { planes } = measureOne(raster, [
      { name: 'upper', reference: band(0, 0.5) },
      { name: 'lower', reference: band(0.5, 1) },
    ]);
    expect(planes.map(({ painting }) => painting.share)).toEqual([0.5, 0.5]);
    expect(
      planes.map(({ painting }) => painting.spread).every((spread) => spread !== null && spread < 0.01),
    ).toBe(true);
  });
});

describe('clipping', () => {
  const planes = [{ name: 'sky', kind: 'sky', reference: band(0, 1) }];
  const partly = (share: number, code: number) =>
    paint(400, 300, (_x, y) => (y < 300 * share ? grey(code) : [140, 150, 190]));

  it('counts up to 30 %, and says which figures are bounds', () => {
    const blown = measureOne(partly(0.2, 255), planes).planes[0]?.painting;
    expect(blown?.light).toBeCloseTo(100, 2);
    expect(blown?.chroma).not.toBeNull();
    expect(blown?.notes.join(' ')).toContain(
      '20 % of this plane is blown out: its lights are at least this light',
    );
    const crushed = measureOne(partly(0.2, 0), planes).planes[0]?.painting;
    expect(crushed?.notes.join(' ')).toContain('its darks are at most this light');
  });

  it('takes chroma and hue away above 30 %, and keeps the middle as a bound', () => {
    const { air, planes: found } = measureOne(partly(0.6, 255), planes);
    const blown = found[0]?.painting;
    expect(blown?.mid).toBeCloseTo(100, 2);
    expect([blown?.chroma, blown?.strong, blown?.hue, blown?.warmCool, blown?.hueShares]).toEqual([
      null,
      null,
      null,
      null,
      null,
    ]);
    expect(blown?.notes.join(' ')).toContain('its middle and lights are at least this light');
    expect(air).not.toBeNull();
  });

  it('is told by the clip map of the larger picture where there is one', () => {
    const raster = partly(0, 0);
    const clipped = new Uint8Array(400 * 300).fill(1, 0, 400 * 150);
    const document = measurePair({
      reference: null,
      painting: { raster, clipped },
      setup: Setup.parse({ planes }),
    });
    expect(document.planes[0]?.painting.chroma).toBeNull();
  });
});

describe('detail', () => {
  it('is the fine variation over the spread, and needs 1,200 px', () => {
    // Chequered 1-px greys of L* 50 ± d: the blur sees their mean, so RMS = d.
    const raster = paint(1400, 300, (x, y) => grey((x + y) % 2 === 0 ? 119 : 139));
    const found = measureOne(raster, [{ name: 'field', reference: band(0, 1) }]).planes[0]?.painting;
    const half = (57.86 - 50.034) / 2; // L* of 139 and 119, ISO/CIE 11664-4
    expect(found?.detail).toBeCloseTo(half / 10, 2);
    const small = measureOne(
      paint(1199, 300, () => grey(99)),
      [{ name: 'field', reference: band(0, 1) }],
    );
    expect(small.planes[0]?.painting.detail).toBeNull();
    expect(small.planes[0]?.painting.notes.join(' ')).toContain('this picture has 1199');
  });
});

describe('an edge', () => {
  /** Contrast over the 10–90 % rise of a Gaussian edge: 2 × 1.2816 sigma (tables of the normal distribution). */
  const expectedFor = (contrast: number, sigmaPx: number, widthPx: number) =>
    contrast / (((2 * 1.2816 * sigmaPx) / widthPx) * 100);

  it.each([3, 5, 7])('of sigma %d px has contrast over rise, whatever its direction', (sigmaPx) => {
    const widthPx = 1600;
    // A slanted edge, linear in L* between 40 and 70; L* to code by ISO/CIE 11664-4 and IEC 61966-2-1.
    const code = (L: number): number => {
      const Y = ((L + 16) / 116) ** 3;
      return Math.round(255 * (1.055 * Y ** (1 / 2.4) - 0.055));
    };
    const erf = (x: number): number => {
      // Abramowitz & Stegun (1964), 7.1.26, within 1.5e-7.
      const t = 1 / (1 + 0.3275911 * Math.abs(x));
      const tail =
        t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
      return Math.sign(x) * (1 - tail * Math.exp(-x * x));
    };
    const slope = 0.3;
    const raster = paint(widthPx, 900, (x, y) => {
      const away = (y + 0.5 - (300 + slope * (x + 0.5))) / Math.hypot(1, slope);
      return grey(code(70 - 15 * (1 + erf(away / sigmaPx / Math.SQRT2))));
    });
    const line = (x: number): Point => [x, (300 + slope * x * widthPx) / 900];
    const { planes } = measureOne(raster, [
      { name: 'sky', kind: 'sky', reference: band(0, 1) },
      { name: 'ridge', reference: [line(0), line(1), [1, 1], [0, 1]] },
    ]);
    const edge = planes[1]?.painting.edge ?? Number.NaN;
    expect(planes[0]?.painting.edge).toBeNull();
    expect(Math.abs(edge / expectedFor(30, sigmaPx, widthPx) - 1)).toBeLessThan(0.12);
  });

  it('rises from 10 to 90 % along a straight ramp in 0.8 of its length', () => {
    const ramp = Float64Array.from({ length: 201 }, (_, at) => Math.min(60, Math.max(20, 20 + (at - 80))));
    expect(riseOf(ramp).contrast).toBeCloseTo(40, 9);
    expect(riseOf(ramp).width).toBeCloseTo(32, 9);
    expect(riseOf(new Float64Array(50).fill(3))).toEqual({ contrast: 0, width: null });
  });
});

describe('hue families', () => {
  it.each([
    [341, 'red'],
    [0, 'red'],
    [41.9, 'red'],
    [42.1, 'orange'],
    [75.9, 'orange'],
    [76.1, 'yellow'],
    [104.9, 'yellow'],
    [105.1, 'green'],
    [180, 'green'],
    [214.9, 'green'],
    [215.1, 'blue'],
    [294.9, 'blue'],
    [295.1, 'violet'],
    [339.9, 'violet'],
    [340.1, 'red'],
  ] as const)('put %d degrees into %s', (hueDeg, family) => {
    const angle = (hueDeg * Math.PI) / 180;
    expect(hueFamilyOf(20 * Math.cos(angle), 20 * Math.sin(angle))).toBe(family);
  });
});

describe('the air', () => {
  const raster = paint(400, 300, (_x, y) => (y < 150 ? [170, 190, 215] : [80, 90, 60]));
  const planes = [
    { name: 'sky', kind: 'sky', reference: band(0, 0.5) },
    { name: 'field', reference: band(0.5, 1) },
  ];

  it('is the sky above the ridge, or what a person picked', () => {
    const measured = measureOne(raster, planes);
    expect(measured.planes[0]?.painting.airDistance).toBeCloseTo(0, 2);
    const picked = measureOne(raster, planes, { air: { painting: { L: 50, a: 0, b: 0 } } });
    expect(picked.air.painting).toEqual({ L: 50, a: 0, b: 0 });
    const { mid, a, b, airDistance } = picked.planes[1]?.painting ?? {};
    expect(airDistance).toBeCloseTo(Math.hypot((mid ?? 0) - 50, a ?? 0, b ?? 0), 9);
  });

  it('is unknown without a sky, and then nothing is said of distance to it', () => {
    const { air, planes: found } = measureOne(raster, [{ name: 'field', reference: band(0, 1) }]);
    expect(air.painting).toBeNull();
    expect([found[0]?.painting.airDistance, found[0]?.painting.airShare]).toEqual([null, null]);
    expect(found[0]?.painting.notes.join(' ')).toContain('No colour of the air');
  });

  it('has no share over sky, snow and buildings', () => {
    const { planes: found } = measureOne(raster, [
      planes[0] as object,
      { ...(planes[1] as object), kind: 'snow' },
    ]);
    expect(found.map(({ painting }) => painting.airShare)).toEqual([null, null]);
  });
});

describe('measuring again', () => {
  it('from the same prepared plates gives the same document', () => {
    const raster = paint(320, 200, (x, y) => [(x * 7 + y) % 200, (x + y * 3) % 220, (x * y) % 180]);
    const setup = Setup.parse({
      planes: [
        { name: 'sky', kind: 'sky', reference: band(0, 0.4) },
        { name: 'field', reference: band(0.4, 1) },
      ],
    });
    const prepared = prepareMeasurable({ raster });
    expect(measurePrepared(prepared, prepared, setup)).toEqual(
      measurePair({ reference: { raster }, painting: { raster }, setup }),
    );
  });

  it('refuses a crossing outline by its plane', () => {
    const bow: Point[] = [
      [0, 0],
      [1, 1],
      [1, 0],
      [0, 1],
    ];
    expect(() =>
      measureOne(
        paint(40, 30, () => grey(9)),
        [{ name: 'far ridge', reference: bow }],
      ),
    ).toThrow("The outline of 'far ridge' crosses itself between points 1 and 3. Move one of them.");
  });

  it.each([
    [1, 1],
    [1, 50],
    [2000, 1],
  ])('survives a picture of %d by %d pixels', (widthPx, heightPx) => {
    const { planes } = measureOne(
      paint(widthPx, heightPx, () => grey(77)),
      [{ name: 'all', reference: band(0, 1) }],
    );
    expect(planes[0]?.painting.mid).toBeCloseTo(32.75, 0);
  });
});
