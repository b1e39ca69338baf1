/**
 * How far a plane's figures would move if other patches of it had been painted: a seeded block bootstrap.
 *
 * In the flow: cells of a plane -> [bootstrap] -> intervals. Pure.
 * Source: Künsch (1989), "The jackknife and the bootstrap for general stationary observations", Annals of
 * Statistics 17(3): blocks in place of single, dependent observations.
 */
import { difference1976 } from '../colour/difference.ts';
import { chromaOf, hueDegOf } from '../colour/lab.ts';
import { warmCoolKernel } from '../colour/temperature.ts';
import type { GapKey } from '../contract/measures.ts';
import type { LabColour } from '../contract/setup.ts';
import { COLOUR_RANGE, LIGHTNESS_RANGE, median, UNIT_RANGE } from '../image/percentiles.ts';
import type { Prepared } from '../measure/prepare.ts';
import { type Blocks, blocksOf } from './blocks.ts';
import { type Histograms, histogramsOf, mixedPercentiles } from './histograms.ts';
import { randomBelow } from './random.ts';

const REPLICATES = 100;
/** Neighbouring points of an edge drawn together. */
const EDGE_BLOCK = 8;
/** Spread below which detail is compared with this many L* instead, as in the figures. */
const SMALLEST_SPREAD = 10;
const SEED = 0x5eed1e55;

/** Standard deviation of each figure that the bootstrap moves. */
export type Sampling = Partial<Record<GapKey, number>>;

export interface SampledPlane {
  readonly prepared: Prepared;
  /** In row order, at least one. */
  readonly cells: Int32Array;
  /** Hardness at points along the plane's edge, in their order. */
  readonly edges: readonly number[];
  readonly air: LabColour | null;
  /** Share of air at each cell; null where it is not told. */
  readonly airShares: Float32Array | null;
  /** Place of the plane, 0 = the farthest: part of the seed, since names must change nothing. */
  readonly place: number;
}

/** Running mean and variance (Welford 1962). */
class Spread {
  #count = 0;
  #mean = 0;
  #squares = 0;

  add(value: number): void {
    this.#count++;
    const away = value - this.#mean;
    this.#mean += away / this.#count;
    this.#squares += away * (value - this.#mean);
  }

  get deviation(): number {
    return this.#count < 2 ? 0 : Math.sqrt(this.#squares / (this.#count - 1));
  }
}

/** Sum over each block of something at a place. */
function sumsByBlock({ places, blockOf, count }: Blocks, valueAt: (place: number) => number): Float64Array {
  const sums = new Float64Array(count);
  places.forEach((place, at) => {
    const block = blockOf[at] as number;
    sums[block] = (sums[block] as number) + valueAt(place);
  });
  return sums;
}

function weighted(weights: Uint16Array, sums: Float64Array): number {
  let total = 0;
  for (let block = 0; block < weights.length; block++) {
    total += (weights[block] as number) * (sums[block] as number);
  }
  return total;
}

interface Parts {
  readonly lightness: Histograms;
  readonly a: Histograms;
  readonly b: Histograms;
  readonly chroma: Histograms;
  readonly airShare: Histograms | null;
  readonly sumA: Float64Array;
  readonly sumB: Float64Array;
  readonly cells: Float64Array;
  readonly detail: Float64Array | null;
}

function partsOf({ prepared, cells, airShares }: SampledPlane, blocks: Blocks): Parts {
  const { lightness, a, b } = prepared.lab;
  const { squaredDeviation } = prepared;
  const at = (values: Float32Array) => (place: number) => values[cells[place] as number] as number;
  const [aAt, bAt] = [at(a), at(b)];
  return {
    lightness: histogramsOf(blocks, at(lightness), LIGHTNESS_RANGE),
    a: histogramsOf(blocks, aAt, COLOUR_RANGE),
    b: histogramsOf(blocks, bAt, COLOUR_RANGE),
    chroma: histogramsOf(blocks, (place) => chromaOf(aAt(place), bAt(place)), COLOUR_RANGE),
    airShare: airShares && histogramsOf(blocks, (place) => airShares[place] as number, UNIT_RANGE),
    sumA: sumsByBlock(blocks, aAt),
    sumB: sumsByBlock(blocks, bAt),
    cells: sumsByBlock(blocks, () => 1),
    detail: squaredDeviation && sumsByBlock(blocks, at(squaredDeviation)),
  };
}

/** All figures of one mixture of blocks; hue as an angle. */
function figuresOf(parts: Parts, weights: Uint16Array, air: LabColour | null): Map<GapKey, number> {
  const [dark, mid, light] = mixedPercentiles(parts.lightness, weights, [0.05, 0.5, 0.95]) as [
    number,
    number,
    number,
  ];
  const [a] = mixedPercentiles(parts.a, weights, [0.5]) as [number];
  const [b] = mixedPercentiles(parts.b, weights, [0.5]) as [number];
  const [chroma, strong] = mixedPercentiles(parts.chroma, weights, [0.5, 0.9]) as [number, number];
  const figures = new Map<GapKey, number>([
    ['dark', dark],
    ['mid', mid],
    ['light', light],
    ['spread', light - dark],
    ['a', a],
    ['b', b],
    ['chroma', chroma],
    ['strong', strong],
    ['hue', hueDegOf(weighted(weights, parts.sumA), weighted(weights, parts.sumB))],
    ['warmCool', warmCoolKernel(a, b)],
  ]);
  if (air) figures.set('airDistance', difference1976({ L: mid, a, b }, air));
  if (parts.airShare) {
    figures.set('airShare', mixedPercentiles(parts.airShare, weights, [0.5])[0] as number);
  }
  if (parts.detail) {
    const mean = weighted(weights, parts.detail) / weighted(weights, parts.cells);
    figures.set('detail', Math.sqrt(mean) / Math.max(light - dark, SMALLEST_SPREAD));
  }
  return figures;
}

/** Deviation of the median of points drawn in runs. */
function edgeDeviation(edges: readonly number[], below: (bound: number) => number): number {
  const runs = Array.from({ length: Math.ceil(edges.length / EDGE_BLOCK) }, (_, run) =>
    edges.slice(run * EDGE_BLOCK, (run + 1) * EDGE_BLOCK),
  );
  const spread = new Spread();
  for (let replicate = 0; replicate < REPLICATES; replicate++) {
    const drawn = runs.flatMap(() => runs[below(runs.length)] as number[]);
    spread.add(median(drawn) ?? 0);
  }
  return spread.deviation;
}

/** Standard deviation of every figure of one plane; the same input, the same numbers. */
export function samplingOf(plane: SampledPlane): Sampling {
  const { prepared, cells, air, edges, place } = plane;
  const blocks = blocksOf(cells, prepared.columns, Math.max(prepared.columns, prepared.rows));
  const parts = partsOf(plane, blocks);
  const below = randomBelow(SEED ^ Math.imul(place + 1, 0x9e3779b1));
  const weights = new Uint16Array(blocks.count).fill(1);
  const straightHue = figuresOf(parts, weights, null).get('hue') ?? 0;
  const spreads = new Map<GapKey, Spread>();
  for (let replicate = 0; replicate < REPLICATES; replicate++) {
    weights.fill(0);
    for (let draw = 0; draw < blocks.count; draw++) {
      const block = below(blocks.count);
      weights[block] = (weights[block] as number) + 1;
    }
    for (const [key, value] of figuresOf(parts, weights, air)) {
      const spread = spreads.get(key) ?? new Spread();
      spreads.set(key, spread);
      // Angles are taken around the plane's own hue, so that 359° and 1° are neighbours.
      spread.add(key === 'hue' ? ((value - straightHue + 540) % 360) - 180 : value);
    }
  }
  const found: Sampling = {};
  for (const [key, spread] of spreads) found[key] = spread.deviation;
  if (edges.length > 0) found.edge = edgeDeviation(edges, below);
  return found;
}
