/**
 * What clipped pixels do to the figures of a plane, in words and bounds. Pure.
 *
 * Up to 30 % of a plane they count and the figures they touch say "at least" or "at most"; above that the
 * middle is a bound, and chroma and hue (and what is made of them: strong colour, temperature, hue shares)
 * are not given. L*, a* and b* stay, as bounds.
 */
import { CLIP } from '../image/raster.ts';
import { say } from '../say/say.ts';

const MOST_CLIPPED = 0.3;
/** Percentiles beyond which clipped pixels reach the lights and darks (5th and 95th). */
const TAIL = 0.05;
/** Clipped share too small to move a figure. */
const WORTH_SAYING = 0.005;

export interface Clipping {
  /** Shares of the plane's cells, 0..1. */
  readonly blown: number;
  readonly crushed: number;
  /** True when colour can no longer be told. */
  readonly colourLost: boolean;
  readonly notes: string[];
}

/** In percent, its sign left out. */
function percent(share: number): string {
  return (share * 100).toFixed(share < 0.1 ? 1 : 0);
}

function blownNote(blown: number): string | null {
  if (blown < WORTH_SAYING) return null;
  if (blown > MOST_CLIPPED) {
    return say`${percent(blown)} % of this plane is blown out: its middle and lights are at least this light, and its colour can't be told.`;
  }
  if (blown >= TAIL)
    return say`${percent(blown)} % of this plane is blown out: its lights are at least this light.`;
  return say`${percent(blown)} % of this plane is blown out and counts as at least this light.`;
}

function crushedNote(crushed: number): string | null {
  if (crushed < WORTH_SAYING) return null;
  if (crushed > MOST_CLIPPED) {
    return say`${percent(crushed)} % of this plane is lost in black: its middle and darks are at most this light, and its colour can't be told.`;
  }
  if (crushed >= TAIL)
    return say`${percent(crushed)} % of this plane is lost in black: its darks are at most this light.`;
  return say`${percent(crushed)} % of this plane is lost in black and counts as at most this light.`;
}

/** @param cells at least one. */
export function clippingOf(clipped: Uint8Array, cells: Int32Array): Clipping {
  let blownCells = 0;
  let crushedCells = 0;
  for (let at = 0; at < cells.length; at++) {
    const clip = clipped[cells[at] as number] as number;
    if (clip === CLIP.blown) blownCells++;
    else if (clip === CLIP.crushed) crushedCells++;
  }
  const [blown, crushed] = [blownCells / cells.length, crushedCells / cells.length];
  const colourLost = blown + crushed > MOST_CLIPPED;
  const notes = [blownNote(blown), crushedNote(crushed)].filter((note) => note !== null);
  if (colourLost && blown <= MOST_CLIPPED && crushed <= MOST_CLIPPED) {
    notes.push(
      say`Together ${percent(blown + crushed)} % of this plane is clipped, so its colour can't be told.`,
    );
  }
  return { blown, crushed, colourLost, notes };
}
