/**
 * Airs that a painter is likely to plan with, and what a screen can show of them.
 *
 * In the flow: a person's choice -> [likely-airs] -> planned ladder. Pure. That the air's colour is chosen rather than
 * copied, and these five, are common practice, no source. Their figures are our own: pale (C* 11 to 19) because air is
 * lit haze and never a strong colour; lightness near that of a horizon sky, the violets a little deeper, as towards evening.
 */
import { chromaOf, rgbFromLab } from '../../colour/lab.ts';
import type { LikelyAir } from '../../contract/plan-wishes.ts';
import type { LabColour } from '../../contract/setup.ts';
import { say } from '../../say/say.ts';

export const LIKELY_AIRS = {
  /** A clear day: the horizon is a pale blue a little towards green. */
  blue: { L: 82, a: -3, b: -12 },
  /** Clear air against a low or hidden sun; parts from green land without a clash. */
  'blue-violet': { L: 78, a: 5, b: -16 },
  /** The opposite of green: in a green landscape it gives the distance its contrast. */
  'red-violet': { L: 77, a: 10, b: -5 },
  /** Damp air over water and woods, near to the land's own greens. */
  'blue-green': { L: 82, a: -10, b: -6 },
  /** A low sun: everything far turns towards pale orange. */
  warm: { L: 84, a: 5, b: 18 },
} as const satisfies Record<LikelyAir, LabColour>;

/** Fog is grey or white (common practice; Leonardo, Richter 1883, sections 305, 459). */
export const FOG_AIR: LabColour = { L: 84, a: 0, b: -2 };

const SLACK = 1e-3;

function isShown(colour: LabColour): boolean {
  return rgbFromLab(colour).every((channel) => channel >= -SLACK && channel <= 1 + SLACK);
}

/** The strongest colour of the same lightness and hue that a screen shows; the colour itself where it is one. */
export function shownColour({ L, a, b }: LabColour): LabColour {
  const lightness = Math.min(100, Math.max(0, L));
  const at = (part: number): LabColour => ({ L: lightness, a: a * part, b: b * part });
  if (isShown(at(1))) return at(1);
  let [inside, beyond] = [0, 1];
  for (let turn = 0; turn < 30; turn++) {
    const middle = (inside + beyond) / 2;
    if (isShown(at(middle))) inside = middle;
    else beyond = middle;
  }
  return at(inside);
}

/** One sentence where `asked` had to give way to `shown`, else null. */
export function notShown(asked: LabColour, shown: LabColour): string | null {
  const [wanted, given] = [chromaOf(asked.a, asked.b), chromaOf(shown.a, shown.b)];
  if (asked.L !== shown.L) {
    return say`The planned air has L* ${asked.L.toFixed(0)}; a screen shows 0 to 100, so it is planned with ${shown.L.toFixed(0)}.`;
  }
  return wanted - given > 0.05
    ? say`The planned air lies outside what a screen shows: it is planned with C* ${given.toFixed(0)} instead of ${wanted.toFixed(0)}.`
    : null;
}
