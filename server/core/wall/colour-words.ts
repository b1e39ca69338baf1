/**
 * A colour in a painter's words: how light, how strong, which hue.
 *
 * The main sectors of hue are those of the measuring page, with the neighbours of two of them named after both, as
 * painters do. The bounds of the words are common practice, no source. In the flow: colour of the air -> [colour-words]
 * -> wall. Pure.
 */
import { chromaOf } from '../colour/lab.ts';
import type { LabColour } from '../contract/setup.ts';
import { say } from '../say/say.ts';

type Coloured = (colour: string) => string;

/** Up to which L* each word goes: before a plain colour, and before one that has its own word for how strong it is. */
const LIGHTNESS: readonly [number, { plain: Coloured; apart: Coloured }][] = [
  [20, { plain: (colour) => say`very dark ${colour}`, apart: (colour) => say`very dark, ${colour}` }],
  [40, { plain: (colour) => say`dark ${colour}`, apart: (colour) => say`dark, ${colour}` }],
  [60, { plain: (colour) => say`middle ${colour}`, apart: (colour) => say`middle, ${colour}` }],
  [80, { plain: (colour) => say`light ${colour}`, apart: (colour) => say`light, ${colour}` }],
  [
    Number.POSITIVE_INFINITY,
    { plain: (colour) => say`very light ${colour}`, apart: (colour) => say`very light, ${colour}` },
  ],
];

/** Up to which hue angle, degrees, each name goes. */
const HUES: readonly [number, string][] = [
  [20, say`red-violet`],
  [42, say`red`],
  [76, say`orange`],
  [100, say`yellow`],
  [130, say`yellow-green`],
  [170, say`green`],
  [225, say`blue-green`],
  [275, say`blue`],
  [309, say`blue-violet`],
  [330, say`violet`],
  [360, say`red-violet`],
];

/** C*ab below which a colour is grey, greyed; above the last, strong. */
const GREY = 4;
const GREYED = 16;
const STRONG = 36;

/** The last where none goes up to it, for an amount that is no number. */
function upTo<Word>(words: readonly [number, Word][], amount: number): Word {
  return (words.find(([bound]) => amount < bound) ?? (words.at(-1) as [number, Word]))[1];
}

/** For example `light, greyed blue-violet`, `dark neutral grey`, `very light, strong yellow`. */
export function colourWords({ L, a, b }: LabColour): string {
  const { plain, apart } = upTo(LIGHTNESS, L);
  const chroma = chromaOf(a, b);
  if (chroma < GREY) return plain(say`neutral grey`);
  const hue = upTo(HUES, ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360);
  if (chroma < GREYED) return apart(say`greyed ${hue}`);
  return chroma < STRONG ? plain(hue) : apart(say`strong ${hue}`);
}
