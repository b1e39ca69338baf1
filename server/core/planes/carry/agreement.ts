/**
 * How well two pictures agree under one placement, whatever colours the painter gave to the planes.
 *
 * In the flow: sights, placement -> [agreement] -> find-placement. Two signs: light and colour that rise and fall
 * together (correlation), and planes of the first picture that tell the painting's colours apart (correlation ratio;
 * Roche, Malandain, Pennec & Ayache 1998, for pictures of different kinds). Pure.
 */
import { type Placement, shareShown } from './placement.ts';
import type { Sight } from './sight.ts';

/** The first picture at one coarseness, with the plane of each cell. */
export interface Known extends Sight {
  readonly labels: Uint8Array;
}

/** Weight of L* against a* and b*: painters keep values before hues. */
const WEIGHTS = [1, 0.35, 0.35] as const;
/** What the planes count against the correlation. */
const BY_PLANES = 1;
/** Fewer cells than this share of the painting in common say nothing. */
const LEAST_COMMON = 0.25;
const LEAST_CELLS = 12;
/** How much a painting that shows more than the picture loses: chance agrees sooner on little. */
const COMMON_POWER = 0.12;
/** Deviation below which a channel says nothing, in CIELAB units. */
const NOISE = 1.5;

/** Room for the sums, kept between placements. */
export class Agreement {
  readonly #known: Known;
  readonly #painting: Sight;
  readonly #columnOf: Int32Array;
  readonly #counts: Float64Array;
  readonly #sums: Float64Array;
  readonly #cells: Int32Array;
  readonly #from: Int32Array;

  constructor(known: Known, painting: Sight) {
    this.#known = known;
    this.#painting = painting;
    this.#columnOf = new Int32Array(painting.columns);
    this.#cells = new Int32Array(painting.columns * painting.rows);
    this.#from = new Int32Array(painting.columns * painting.rows);
    const labels = known.labels.reduce((most, label) => Math.max(most, label), 0) + 1;
    this.#counts = new Float64Array(labels);
    this.#sums = new Float64Array(labels);
  }

  /** @returns about 0 for chance, up to 2; −1 when too little is common. */
  at(placement: Placement): number {
    if (shareShown(placement) < LEAST_COMMON) return -1;
    const count = this.#pairs(placement);
    const share = count / this.#cells.length;
    if (count < LEAST_CELLS) return -1;
    let [agreed, weights] = [0, 0];
    for (let channel = 0; channel < 3; channel++) {
      const weight = WEIGHTS[channel] as number;
      agreed += weight * this.#channel(channel, count);
      weights += weight;
    }
    return (agreed / weights) * share ** COMMON_POWER;
  }

  /** Cells of both pictures that fall together. @returns how many. */
  #pairs({ scaleX, scaleY, shiftX, shiftY }: Placement): number {
    const { columns, rows } = this.#known;
    const { columns: across, rows: down } = this.#painting;
    for (let x = 0; x < across; x++) {
      const column = Math.floor((((x + 0.5) / across - shiftX) / scaleX) * columns);
      this.#columnOf[x] = column >= 0 && column < columns ? column : -1;
    }
    let count = 0;
    for (let y = 0; y < down; y++) {
      const row = Math.floor((((y + 0.5) / down - shiftY) / scaleY) * rows);
      if (row < 0 || row >= rows) continue;
      for (let x = 0; x < across; x++) {
        const column = this.#columnOf[x] as number;
        if (column < 0) continue;
        this.#cells[count] = y * across + x;
        this.#from[count++] = row * columns + column;
      }
    }
    return count;
  }

  /** Correlation and correlation ratio of one channel, as far as the painting varies in it at all. */
  #channel(channel: number, count: number): number {
    const mine = this.#known.channels[channel] as Float32Array;
    const theirs = this.#painting.channels[channel] as Float32Array;
    const { labels } = this.#known;
    const [cells, from, counts, sums] = [this.#cells, this.#from, this.#counts, this.#sums];
    counts.fill(0);
    sums.fill(0);
    let [p, q, pp, qq, pq] = [0, 0, 0, 0, 0];
    for (let at = 0; at < count; at++) {
      const there = from[at] as number;
      const a = mine[there] as number;
      const b = theirs[cells[at] as number] as number;
      p += a;
      q += b;
      pp += a * a;
      qq += b * b;
      pq += a * b;
      const label = labels[there] as number;
      counts[label] = (counts[label] as number) + 1;
      sums[label] = (sums[label] as number) + b;
    }
    const [ofMine, ofTheirs] = [pp - (p * p) / count, qq - (q * q) / count];
    if (ofMine <= 0 || ofTheirs <= 0) return 0;
    let between = -(q * q) / count;
    for (let label = 0; label < counts.length; label++) {
      const members = counts[label] as number;
      if (members > 0) between += (sums[label] as number) ** 2 / members;
    }
    const correlation = (pq - (p * q) / count) / Math.sqrt(ofMine * ofTheirs);
    const certain = ofTheirs / (ofTheirs + count * NOISE ** 2);
    return certain * (correlation + (BY_PLANES * between) / ofTheirs);
  }
}
