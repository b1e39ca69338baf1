/**
 * A colour in a painter's words: how light, how strong, which hue.
 *
 * The main sectors of hue are those of the measuring page, with the neighbours of two of them named after both, as
 * painters do. The bounds of the words are common practice, no source. In the flow: colour of the air -> [colour-words]
 * -> wall. Pure.
 */
import { chromaOf } from '../colour/lab.ts';
import type { LabColour } from '../contract/setup.ts';

/** Up to which L* each word goes. */
const LIGHTNESS: readonly [number, string][] = [
  [20, 'very dark'],
  [40, 'dark'],
  [60, 'middle'],
  [80, 'light'],
  [Number.POSITIVE_INFINITY, 'very light'],
];

/** Up to which hue angle, degrees, each name goes. */
const HUES: readonly [number, string][] = [
  [20, 'red-violet'],
  [42, 'red'],
  [76, 'orange'],
  [100, 'yellow'],
  [130, 'yellow-green'],
  [170, 'green'],
  [225, 'blue-green'],
  [275, 'blue'],
  [309, 'blue-violet'],
  [330, 'violet'],
  [360, 'red-violet'],
];

/** C*ab below which a colour is grey, greyed; above the last, strong. */
const GREY = 4;
const GREYED = 16;
const STRONG = 36;

function upTo(words: readonly [number, string][], amount: number): string {
  return words.find(([bound]) => amount < bound)?.[1] ?? '';
}

/** For example `light, greyed blue-violet`, `dark neutral grey`, `very light, strong yellow`. */
export function colourWords({ L, a, b }: LabColour): string {
  const light = upTo(LIGHTNESS, L);
  const chroma = chromaOf(a, b);
  if (chroma < GREY) return `${light} neutral grey`;
  const hue = upTo(HUES, ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360);
  if (chroma < GREYED) return `${light}, greyed ${hue}`;
  return chroma < STRONG ? `${light} ${hue}` : `${light}, strong ${hue}`;
}
