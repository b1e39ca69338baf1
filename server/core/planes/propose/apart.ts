/**
 * How likely two neighbours belong to two planes: a handful of weights, learned on traced landscapes.
 *
 * In the flow: region graph, tiers -> [apart] -> merge, tier tree. Logistic regression on pairs of neighbouring regions
 * met while merging, labelled by the tuning half of the hand-traced landscapes (`tests/fixtures/traced`), every
 * picture, stage and label counting alike. Chosen by leaving one picture out at a time. Pure.
 */
import type { Border, Patch } from './region-graph.ts';

const BIAS = -2;
/** Logarithm of the edge (dE over one pixel) along the boundary, and of edges inside. */
const EDGE = 0.632;
const INNER_EDGE = -0.145;
/** The same edge, once more for the share of the boundary that lies level. */
const LEVEL_EDGE = 0.134;
/** Logarithm of the squared distance of the means, in units of 2 dE: a* b*, texture, dark channel. */
const COLOUR = 0.102;
const TEXTURE = 0.089;
const AIR = 0.235;
/** Logarithm of the squared distance of the means over the variance inside: L*, a* b*, texture. */
const LIGHTNESS_OVER_SPREAD = 0.117;
const COLOUR_OVER_SPREAD = 0.4;
const TEXTURE_OVER_SPREAD = 0.107;
/** Logarithm of the share of the picture, of the smaller and of the larger. */
const SMALLER = 0.182;
const LARGER = 0.047;
/** Length of the boundary over the square root of the smaller one's area. */
const CONTACT = -0.154;
/** Distance of the centres upright, as a share of the picture's height. */
const UPRIGHT = 3.07;

/** Variance that noise and rounding make up, in each cue. */
const NOISE = 4;

interface Distance {
  /** Squared distance of the means. */
  readonly plain: number;
  /** The same over the variance inside. */
  readonly overSpread: number;
}

/** Distance over the cues from `first` to before `end`. */
function distance(p: Patch, q: Patch, first: number, end: number): Distance {
  let [plain, overSpread] = [0, 0];
  for (let cue = first; cue < end; cue++) {
    const ofP = (p.sums[cue] as number) / p.pixels;
    const ofQ = (q.sums[cue] as number) / q.pixels;
    const spreadP = Math.max(0, (p.squares[cue] as number) / p.pixels - ofP * ofP);
    const spreadQ = Math.max(0, (q.squares[cue] as number) / q.pixels - ofQ * ofQ);
    const squared = (ofP - ofQ) ** 2;
    plain += squared;
    overSpread += squared / ((spreadP + spreadQ) / 2 + NOISE);
  }
  return { plain, overSpread };
}

/**
 * Log odds that two neighbours lie in different planes.
 *
 * @param total pixels of the picture. @param rows of the picture.
 */
export function apartness(p: Patch, q: Patch, border: Border, total: number, rows: number): number {
  const inner = p.innerLength + q.innerLength;
  const edge = Math.log1p(border.edge / border.length);
  const lightness = distance(p, q, 0, 1);
  const colour = distance(p, q, 1, 3);
  const texture = distance(p, q, 3, 5);
  const dark = distance(p, q, 5, 6);
  const [smaller, larger] = [Math.min(p.pixels, q.pixels), Math.max(p.pixels, q.pixels)];
  return (
    BIAS +
    (EDGE + (LEVEL_EDGE * Math.abs(border.above)) / border.length) * edge +
    INNER_EDGE * Math.log1p(inner > 0 ? (p.innerEdge + q.innerEdge) / inner : 0) +
    COLOUR * Math.log1p(colour.plain / 4) +
    TEXTURE * Math.log1p(texture.plain / 4) +
    AIR * Math.log1p(dark.plain / 4) +
    LIGHTNESS_OVER_SPREAD * Math.log1p(lightness.overSpread) +
    COLOUR_OVER_SPREAD * Math.log1p(colour.overSpread) +
    TEXTURE_OVER_SPREAD * Math.log1p(texture.overSpread) +
    SMALLER * Math.log(smaller / total) +
    LARGER * Math.log(larger / total) +
    (CONTACT * border.length) / Math.sqrt(smaller) +
    (UPRIGHT * Math.abs(p.sumY / p.pixels - q.sumY / q.pixels)) / rows
  );
}
