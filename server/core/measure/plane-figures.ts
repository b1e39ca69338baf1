/**
 * Every figure of one plane in one picture.
 *
 * In the flow: prepared plate + cells of the plane -> [plane-figures] -> gaps. Pure.
 */
import { difference1976 } from '../colour/difference.ts';
import { luminanceFromLightness } from '../colour/lab.ts';
import { munsellFromLuminancePercent } from '../colour/munsell-value.ts';
import { warmCoolKernel } from '../colour/temperature.ts';
import type { PlaneMeasures } from '../contract/measures.ts';
import type { LabColour, PlaneKind } from '../contract/setup.ts';
import { COLOUR_RANGE, LIGHTNESS_RANGE, percentiles } from '../image/percentiles.ts';
import { airShareOf } from './air.ts';
import { clippingOf } from './clipping.ts';
import { hueSharesOf, meanHueDeg } from './hue.ts';
import { valuesOf } from './plane-cells.ts';
import { DETAIL_LIMIT_PX, type Prepared } from './prepare.ts';
import { swatchesOf } from './swatches.ts';

/** Share of the picture under which a plane is not measured. */
export const SMALLEST_SHARE = 0.01;
/** Spread below which detail is compared with this many L* instead. */
const SMALLEST_SPREAD = 10;
const WITHOUT_AIR_SHARE: readonly PlaneKind[] = ['sky', 'snow', 'built'];

const NOTHING_MEASURED = {
  dark: null,
  mid: null,
  light: null,
  spread: null,
  munsellValue: null,
  chroma: null,
  strong: null,
  hue: null,
  a: null,
  b: null,
  warmCool: null,
  detail: null,
  edge: null,
  hueShares: null,
  airDistance: null,
  airShare: null,
  colours: null,
} as const;

/** A plane that can't be measured, with the reason. @param share of the picture, 0..1. */
export function notMeasured(share: number, reason: string): PlaneMeasures {
  return { share, ...NOTHING_MEASURED, doubt: {}, notes: [reason] };
}

export interface PlaneInput {
  readonly prepared: Prepared;
  readonly kind: PlaneKind;
  /** Of the picture, before the rim is taken off, 0..1. */
  readonly share: number;
  /** Cells left after the rim is taken off, in row order. */
  readonly cells: Int32Array;
  readonly edge: number | null;
  readonly air: LabColour | null;
}

function chromaOfCells(a: Float32Array, b: Float32Array): Float32Array {
  const result = new Float32Array(a.length);
  for (let at = 0; at < a.length; at++) {
    const [p, q] = [a[at] as number, b[at] as number];
    result[at] = Math.sqrt(p * p + q * q);
  }
  return result;
}

function detailOf(prepared: Prepared, cells: Int32Array, spread: number): number | null {
  const { squaredDeviation } = prepared;
  if (!squaredDeviation) return null;
  let sum = 0;
  for (let at = 0; at < cells.length; at++) sum += squaredDeviation[cells[at] as number] as number;
  return Math.sqrt(sum / cells.length) / Math.max(spread, SMALLEST_SPREAD);
}

function airFigures(input: PlaneInput, median: LabColour): Pick<PlaneMeasures, 'airDistance' | 'airShare'> {
  const { air, kind, prepared, cells } = input;
  if (!air) return { airDistance: null, airShare: null };
  return {
    airDistance: difference1976(median, air),
    airShare: WITHOUT_AIR_SHARE.includes(kind) ? null : airShareOf(prepared, cells, air),
  };
}

function colourFigures(a: Float32Array, b: Float32Array, median: LabColour) {
  const chromas = chromaOfCells(a, b);
  const [chroma, strong] = percentiles(chromas, [0.5, 0.9], COLOUR_RANGE) as [number, number];
  return {
    chroma,
    strong,
    hue: meanHueDeg(a, b),
    warmCool: warmCoolKernel(median.a, median.b),
    hueShares: hueSharesOf(a, b, chromas),
  };
}

const COLOUR_LOST = { chroma: null, strong: null, hue: null, warmCool: null, hueShares: null } as const;

function reasonsFor(input: PlaneInput, figures: { hue: number | null; colourLost: boolean }): string[] {
  const { prepared, air, kind, edge } = input;
  const notes: string[] = [];
  if (figures.hue === null && !figures.colourLost) notes.push('Too grey to have a hue.');
  if (!prepared.pixelLightness) {
    notes.push(
      `Detail and edges need ${DETAIL_LIMIT_PX} pixels on the long side; this picture has ${prepared.longSidePx}.`,
    );
  } else if (edge === null && kind !== 'sky') {
    notes.push('No edge: no farther plane lies clearly behind it.');
  }
  if (!air)
    notes.push('No colour of the air: too little open sky above the farthest ridge. Pick it in the picture.');
  else if (kind === 'snow' || kind === 'built') {
    notes.push('The share of air is not told for snow or buildings: they are pale by themselves.');
  }
  return notes;
}

/** Measures one plane; below 1 % of the picture, or when nothing is left inside its rim, it says why not. */
export function figuresOfPlane(input: PlaneInput): PlaneMeasures {
  const { prepared, cells, share, edge } = input;
  if (share < SMALLEST_SHARE) {
    return notMeasured(
      share,
      `Not measured: it covers ${(share * 100).toFixed(2)} % of the picture; at least 1 % is needed.`,
    );
  }
  if (cells.length === 0) {
    return notMeasured(
      share,
      'Not measured: it is so narrow that nothing is left inside its rim (0.6 % of the long side).',
    );
  }
  const a = valuesOf(prepared.lab.a, cells);
  const b = valuesOf(prepared.lab.b, cells);
  const [dark, mid, light] = percentiles(
    valuesOf(prepared.lab.lightness, cells),
    [0.05, 0.5, 0.95],
    LIGHTNESS_RANGE,
  ) as [number, number, number];
  const median = {
    L: mid,
    a: percentiles(a, [0.5], COLOUR_RANGE)[0] as number,
    b: percentiles(b, [0.5], COLOUR_RANGE)[0] as number,
  };
  const clipping = clippingOf(prepared.clipped, cells);
  const colour = clipping.colourLost ? COLOUR_LOST : colourFigures(a, b, median);
  return {
    share,
    dark,
    mid,
    light,
    spread: light - dark,
    munsellValue: munsellFromLuminancePercent(luminanceFromLightness(mid) * 100),
    ...colour,
    a: median.a,
    b: median.b,
    detail: detailOf(prepared, cells, light - dark),
    edge,
    ...airFigures(input, median),
    doubt: {},
    notes: [...clipping.notes, ...reasonsFor(input, { hue: colour.hue, colourLost: clipping.colourLost })],
    colours: swatchesOf(prepared, cells, { dark, mid, light }),
  };
}
