/**
 * Recognises the sky, clouds and all, among superpixels, so that no ridge is sought within it.
 *
 * In the flow: region graph -> [sky] -> merge. From the top of the picture it spreads over what is smooth and blue
 * or pale, into what is lighter or goes over softly; land begins where it turns darker at an edge. Rules of thumb
 * (common practice, no source). Pure.
 */
import { difference1976 } from '../../colour/difference.ts';
import { chromaOf } from '../../colour/lab.ts';
import type { LabColour } from '../../contract/setup.ts';
import { TEXTURE_WEIGHT } from './cues.ts';
import type { Border, Region } from './region-graph.ts';

/** Texture up to which blue, and pale things like clouds, may be sky, dE. */
const BLUE_TEXTURE = 1.6;
const PALE_TEXTURE = 3;
/** L* by which a pale patch may be darker than the sky beside it, with an edge between. */
const DARKENS = 4;
/** Edge, dE over one pixel, below which a passage is soft. */
const SOFT_EDGE = 0.5;

/** dE from what is seen at the top of the picture within which a patch between clouds is the same sky. */
const SAME_SKY = 8;

interface Look {
  readonly colour: LabColour;
  /** Like a cloud or a bright haze. */
  readonly pale: boolean;
  readonly may: boolean;
}

function lookOf({ sums, pixels }: Region): Look {
  const [L, a, b, fine] = Array.from(sums, (sum) => sum / pixels) as [number, number, number, number];
  const texture = 2 ** (fine / TEXTURE_WEIGHT);
  const pale = L > 70 && chromaOf(a, b) < 18 && texture < PALE_TEXTURE;
  const blue = L > 32 && b < 3 && a > -14 && texture < BLUE_TEXTURE;
  return { colour: { L, a, b }, pale, may: pale || blue };
}

function meanColour(looks: readonly Look[]): LabColour {
  const mean = (of: (colour: LabColour) => number): number =>
    looks.reduce((sum, { colour }) => sum + of(colour), 0) / looks.length;
  return { L: mean(({ L }) => L), a: mean(({ a }) => a), b: mean(({ b }) => b) };
}

/**
 * Numbers of the superpixels that are sky; none where the top of the picture does not look like it.
 *
 * @param top numbers of the superpixels along the top of the picture.
 */
export function skyOf(regions: readonly Region[], top: Iterable<number>): number[] {
  const looks = regions.map(lookOf);
  const found = new Set([...top].filter((at) => looks[at]?.may));
  const queue = [...found];
  const highest = meanColour(queue.map((at) => looks[at] as Look));
  const goesOn = (own: Look, look: Look, border: Border): boolean => {
    if (border.edge / border.length < SOFT_EDGE) return true;
    const lighter = look.colour.L > own.colour.L - DARKENS;
    return (look.pale && lighter) || difference1976(look.colour, highest) < SAME_SKY;
  };
  for (let at = queue.pop(); at !== undefined; at = queue.pop()) {
    for (const [other, border] of (regions[at] as Region).borders) {
      const look = looks[other] as Look;
      if (found.has(other) || !look.may || !goesOn(looks[at] as Look, look, border)) continue;
      found.add(other);
      queue.push(other);
    }
  }
  return [...found];
}
