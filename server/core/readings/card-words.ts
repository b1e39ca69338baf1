/**
 * How each piece of advice is put: the part with its verb, the way to try it, the check. Directions only: no brand, no pigment.
 *
 * In the flow: levers -> [words] -> cards. Never a certainty ("try"); nobody is told to heat, thin, spray or sand.
 * Pure. Sources: Harrison 1909 and East 1906 on broken colour and glazing; common practice.
 */
import type { CardDirection, CardPart } from '../contract/critique.ts';
import { say } from '../say/say.ts';

export interface LeverWords {
  /** The part and what to do with it, as an order: `darks: lift`. */
  verb: string;
  /** The same with how much, where a rule may ask for an amount: `darks: lift about half a step`. */
  by?: (amount: string) => string;
  /** How to try it. */
  how: string;
  /** How to see whether it worked. */
  check: string;
  /** True when the hint mixes or layers paint, so that the health line stands beside it. */
  mixes: boolean;
}

const SQUINT_BACK = say`Squint: it should sit behind what is nearer, and not be the first thing you see.`;
const SQUINT_APART = say`Squint: the two shapes should stay apart.`;
const ASIDE = say`Hold a grey strip between this and the foreground and compare the two.`;

const WORDS: Partial<Record<`${CardPart}/${CardDirection}`, LeverWords>> = {
  'whole/lift': {
    verb: say`whole plane: lift`,
    by: (amount) => say`whole plane: lift about ${amount}`,
    how: say`Try a thin scumble of a lighter mixture over the dry layer.`,
    check: SQUINT_APART,
    mixes: true,
  },
  'whole/deepen': {
    verb: say`whole plane: deepen`,
    by: (amount) => say`whole plane: deepen about ${amount}`,
    how: say`Try a glaze of a darker mixture of the same hue over the dry layer, or restate it.`,
    check: SQUINT_APART,
    mixes: true,
  },
  'darks/lift': {
    verb: say`darks: lift`,
    by: (amount) => say`darks: lift about ${amount}`,
    how: say`Try scumbling some air colour over the darks, or restate them with air colour mixed in.`,
    check: SQUINT_BACK,
    mixes: true,
  },
  'lights/deepen': {
    verb: say`lights: bring down`,
    by: (amount) => say`lights: bring down about ${amount}`,
    how: say`Try greying the lights with a little of their complement, or glaze them slightly darker when dry.`,
    check: SQUINT_BACK,
    mixes: true,
  },
  'contrast/narrow': {
    verb: say`light and dark: close up`,
    how: say`Try lifting the darks with air colour and quieting the lights a touch.`,
    check: SQUINT_BACK,
    mixes: true,
  },
  'contrast/widen': {
    verb: say`light and dark: widen`,
    how: say`Try one true dark and one true light where you want the eye, and leave the rest.`,
    check: say`Squint: darkest and lightest should stand at your focus only.`,
    mixes: false,
  },
  'colour/grey': {
    verb: say`colour: grey`,
    how: say`Try a little of the complement, or some air colour, at the same value.`,
    check: ASIDE,
    mixes: true,
  },
  'colour/cool': {
    verb: say`colour: cool`,
    how: say`Try mixing in some of the colour of the sky at the horizon, at the same value.`,
    check: ASIDE,
    mixes: true,
  },
  'colour/warm': {
    verb: say`colour: warm`,
    how: say`Try mixing in a little of a warmer neighbour from the picture, at the same value.`,
    check: ASIDE,
    mixes: true,
  },
  'colour/toward-air': {
    verb: say`colour: bring toward the colour of the air`,
    how: say`Try mixing air colour into it, a little more than you think, or scumble it over when dry.`,
    check: SQUINT_BACK,
    mixes: true,
  },
  'colour/back-from-air': {
    verb: say`colour: ease back toward the horizon colour`,
    how: say`Try greying the blue with a little of its complement, then compare with the sky just above.`,
    check: say`Look along the skyline: the sky just above should be the purer blue.`,
    mixes: true,
  },
  'shadows/cool': {
    verb: say`shadows: cool`,
    how: say`Try a cooler colour of the same value in the shadows, broken into the wet or the dry layer.`,
    check: say`Half close your eyes: light and shade should differ in colour, not only in value.`,
    mixes: true,
  },
  'shadows/warm': {
    verb: say`shadows: warm`,
    how: say`Try a warmer colour of the same value in the shadows, broken into the wet or the dry layer.`,
    check: say`Half close your eyes: light and shade should differ in colour, not only in value.`,
    mixes: true,
  },
  'shadows/strengthen': {
    verb: say`shadows: open with some colour`,
    how: say`Try a deep colour instead of black, a touch lighter, leaning to the colour of the sky.`,
    check: say`Look at the shadow alone through a hole in a card: it should have a colour.`,
    mixes: true,
  },
  'detail/soften': {
    verb: say`detail: simplify`,
    how: say`Try dragging a soft dry brush over the small marks until one mass with a light and a shade is left.`,
    check: say`Step back three paces: you should see a shape there, not marks.`,
    mixes: false,
  },
  'edge/soften': {
    verb: say`edge: soften`,
    how: say`Try losing parts of the edge with a soft dry brush, more away from your focus.`,
    check: say`Let your eye rest on the focus: no edge elsewhere should call.`,
    mixes: false,
  },
  'shapes/join': {
    verb: say`big shapes: join`,
    how: say`Try letting neighbouring patches of nearly one value run together into a bigger shape.`,
    check: say`Squint: you should count three to five big shapes.`,
    mixes: false,
  },
  'accent/quiet': {
    verb: say`the strong spot: echo or quiet`,
    how: say`Try a smaller, weaker touch of the same hue elsewhere, or grey the spot with a little complement.`,
    check: say`Look away and back: your eye should land on the focus first.`,
    mixes: true,
  },
  'photo/again': {
    verb: say`photo: photograph again`,
    how: say`Stand the painting upright in even light, card beside it, lens straight on, no flash.`,
    check: say`Post the new photo: the grade should rise and some readings may go away.`,
    mixes: false,
  },
};

/** @throws Error when a rule pulls a lever that has no words (a bug; a test goes through all of them). */
export function wordsOfLever(part: CardPart, direction: CardDirection): LeverWords {
  const words = WORDS[`${part}/${direction}`];
  if (!words) throw new Error(`No words for ${part}/${direction}.`);
  return words;
}
