/**
 * Every figure of one plane in one picture.
 *
 * In the flow: prepared plate + cells of the plane -> [plane-figures] -> gaps. Pure.
 */
import { MOST_GLARE } from '../capture/plane-capture.ts';
import { difference1976 } from '../colour/difference.ts';
import { luminanceFromLightness } from '../colour/lab.ts';
import { munsellFromLuminancePercent } from '../colour/munsell-value.ts';
import { warmCoolKernel } from '../colour/temperature.ts';
import type { PlaneMeasures } from '../contract/measures.ts';
import type { LabColour, PlaneKind } from '../contract/setup.ts';
import { COLOUR_RANGE, LIGHTNESS_RANGE, median, percentiles, UNIT_RANGE } from '../image/percentiles.ts';
import { say } from '../say/say.ts';
import { clippingOf } from './clipping.ts';
import { hueSharesOf, meanHueDeg } from './hue.ts';
import { valuesOf } from './plane-cells.ts';
import { DETAIL_LIMIT_PX, type Prepared } from './prepare.ts';
import { swatchesOf } from './swatches.ts';

/** Share of the picture under which a plane is not measured. */
export const SMALLEST_SHARE = 0.01;
/** Spread below which detail is compared with this many L* instead. */
const SMALLEST_SPREAD = 10;
/** Share of glare too small to be told. */
const WORTH_SAYING = 0.001;
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
  /** Hardness at points along its edge. */
  readonly edges: readonly number[];
  readonly air: LabColour | null;
  /** Share of air at each cell; null where it is not told. */
  readonly airShares: Float32Array | null;
  /** Share of the plane within its rim that glare covers, 0..1; its cells are left out already. */
  readonly glare: number;
}

/** Whether a share of air can be told for this kind of plane. */
export function tellsAirShare(kind: PlaneKind): boolean {
  return !WITHOUT_AIR_SHARE.includes(kind);
}

/** C*ab of each cell. */
export function chromaOfCells(a: Float32Array, b: Float32Array): Float32Array {
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

function airFigures(input: PlaneInput, middle: LabColour): Pick<PlaneMeasures, 'airDistance' | 'airShare'> {
  const { air, airShares } = input;
  return {
    airDistance: air && difference1976(middle, air),
    airShare: airShares && (percentiles(airShares, [0.5], UNIT_RANGE)[0] as number),
  };
}

function colourFigures(a: Float32Array, b: Float32Array, middle: LabColour) {
  const chromas = chromaOfCells(a, b);
  const [chroma, strong] = percentiles(chromas, [0.5, 0.9], COLOUR_RANGE) as [number, number];
  return {
    chroma,
    strong,
    hue: meanHueDeg(a, b),
    warmCool: warmCoolKernel(middle.a, middle.b),
    hueShares: hueSharesOf(a, b, chromas),
  };
}

const COLOUR_LOST = { chroma: null, strong: null, hue: null, warmCool: null, hueShares: null } as const;

function reasonsFor(input: PlaneInput, figures: { hue: number | null; colourLost: boolean }): string[] {
  const { prepared, air, kind, edges, glare } = input;
  const notes: string[] = [];
  if (glare >= WORTH_SAYING)
    notes.push(say`Glare covers ${(glare * 100).toFixed(1)} % of this plane and is left out.`);
  if (figures.hue === null && !figures.colourLost) notes.push(say`Too grey to have a hue.`);
  if (!prepared.pixelLightness) {
    notes.push(
      say`Detail and edges need ${DETAIL_LIMIT_PX} pixels on the long side; this picture has ${prepared.longSidePx}.`,
    );
  } else if (edges.length === 0 && kind !== 'sky') {
    notes.push(say`No edge: no farther plane lies clearly behind it.`);
  }
  if (!air)
    notes.push(
      say`No colour of the air: too little open sky above the farthest ridge. Pick it in the picture.`,
    );
  else if (kind === 'snow' || kind === 'built') {
    notes.push(say`The share of air is not told for snow or buildings: they are pale by themselves.`);
  }
  return notes;
}

/** Why nothing of a plane can be measured, or null. */
function unmeasurable({ share, cells, glare }: PlaneInput): string | null {
  if (share < SMALLEST_SHARE) {
    return say`Not measured: it covers ${(share * 100).toFixed(2)} % of the picture; at least 1 % is needed.`;
  }
  if (glare > MOST_GLARE) {
    return say`Not measured: glare covers ${(glare * 100).toFixed(0)} % of it; at most 30 % may be lost. Photograph it again without the gleam.`;
  }
  return cells.length === 0
    ? say`Not measured: it is so narrow that nothing is left inside its rim (0.6 % of the long side).`
    : null;
}

/** Measures one plane; below 1 % of the picture, under glare, or with nothing left inside its rim, it says why not. */
export function figuresOfPlane(input: PlaneInput): PlaneMeasures {
  const { prepared, cells, share } = input;
  const reason = unmeasurable(input);
  if (reason) return notMeasured(share, reason);
  const a = valuesOf(prepared.lab.a, cells);
  const b = valuesOf(prepared.lab.b, cells);
  const [dark, mid, light] = percentiles(
    valuesOf(prepared.lab.lightness, cells),
    [0.05, 0.5, 0.95],
    LIGHTNESS_RANGE,
  ) as [number, number, number];
  const middle = {
    L: mid,
    a: percentiles(a, [0.5], COLOUR_RANGE)[0] as number,
    b: percentiles(b, [0.5], COLOUR_RANGE)[0] as number,
  };
  const clipping = clippingOf(prepared.clipped, cells);
  const colour = clipping.colourLost ? COLOUR_LOST : colourFigures(a, b, middle);
  return {
    share,
    dark,
    mid,
    light,
    spread: light - dark,
    munsellValue: munsellFromLuminancePercent(luminanceFromLightness(mid) * 100),
    ...colour,
    a: middle.a,
    b: middle.b,
    detail: detailOf(prepared, cells, light - dark),
    edge: median(input.edges),
    ...airFigures(input, middle),
    doubt: {},
    notes: [...clipping.notes, ...reasonsFor(input, { hue: colour.hue, colourLost: clipping.colourLost })],
    colours: swatchesOf(prepared, cells, { dark, mid, light }),
  };
}
