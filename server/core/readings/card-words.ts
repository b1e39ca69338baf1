/**
 * How each piece of advice is put: the verb, the way to try it, the check. Directions only: no brand, no pigment.
 *
 * In the flow: levers -> [words] -> cards. Never a certainty ("try"); nobody is told to heat, thin, spray or sand.
 * Pure. Sources: Harrison 1909 and East 1906 on broken colour and glazing; common practice.
 */
import type { CardDirection, CardPart } from '../contract/critique.ts';

export interface LeverWords {
  /** What to do with the part, as an order. */
  verb: string;
  /** How to try it. */
  how: string;
  /** How to see whether it worked. */
  check: string;
  /** True when the hint mixes or layers paint, so that the health line stands beside it. */
  mixes: boolean;
}

const SQUINT_BACK = 'Squint: it should sit behind what is nearer, and not be the first thing you see.';
const SQUINT_APART = 'Squint: the two shapes should stay apart.';
const ASIDE = 'Hold a grey strip between this and the foreground and compare the two.';

const WORDS: Partial<Record<`${CardPart}/${CardDirection}`, LeverWords>> = {
  'whole/lift': {
    verb: 'lift',
    how: 'Try a thin scumble of a lighter mixture over the dry layer.',
    check: SQUINT_APART,
    mixes: true,
  },
  'whole/deepen': {
    verb: 'deepen',
    how: 'Try a glaze of a darker mixture of the same hue over the dry layer, or restate it.',
    check: SQUINT_APART,
    mixes: true,
  },
  'darks/lift': {
    verb: 'lift',
    how: 'Try scumbling some air colour over the darks, or restate them with air colour mixed in.',
    check: SQUINT_BACK,
    mixes: true,
  },
  'lights/deepen': {
    verb: 'bring down',
    how: 'Try greying the lights with a little of their complement, or glaze them slightly darker when dry.',
    check: SQUINT_BACK,
    mixes: true,
  },
  'contrast/narrow': {
    verb: 'close up',
    how: 'Try lifting the darks with air colour and quieting the lights a touch.',
    check: SQUINT_BACK,
    mixes: true,
  },
  'contrast/widen': {
    verb: 'widen',
    how: 'Try one true dark and one true light where you want the eye, and leave the rest.',
    check: 'Squint: darkest and lightest should stand at your focus only.',
    mixes: false,
  },
  'colour/grey': {
    verb: 'grey',
    how: 'Try a little of the complement, or some air colour, at the same value.',
    check: ASIDE,
    mixes: true,
  },
  'colour/cool': {
    verb: 'cool',
    how: 'Try mixing in some of the colour of the sky at the horizon, at the same value.',
    check: ASIDE,
    mixes: true,
  },
  'colour/warm': {
    verb: 'warm',
    how: 'Try mixing in a little of a warmer neighbour from the picture, at the same value.',
    check: ASIDE,
    mixes: true,
  },
  'colour/toward-air': {
    verb: 'bring toward the colour of the air',
    how: 'Try mixing air colour into it, a little more than you think, or scumble it over when dry.',
    check: SQUINT_BACK,
    mixes: true,
  },
  'colour/back-from-air': {
    verb: 'ease back toward the horizon colour',
    how: 'Try greying the blue with a little of its complement, then compare with the sky just above.',
    check: 'Look along the skyline: the sky just above should be the purer blue.',
    mixes: true,
  },
  'shadows/cool': {
    verb: 'cool',
    how: 'Try a cooler colour of the same value in the shadows, broken into the wet or the dry layer.',
    check: 'Half close your eyes: light and shade should differ in colour, not only in value.',
    mixes: true,
  },
  'shadows/warm': {
    verb: 'warm',
    how: 'Try a warmer colour of the same value in the shadows, broken into the wet or the dry layer.',
    check: 'Half close your eyes: light and shade should differ in colour, not only in value.',
    mixes: true,
  },
  'shadows/strengthen': {
    verb: 'open with some colour',
    how: 'Try a deep colour instead of black, a touch lighter, leaning to the colour of the sky.',
    check: 'Look at the shadow alone through a hole in a card: it should have a colour.',
    mixes: true,
  },
  'detail/soften': {
    verb: 'simplify',
    how: 'Try dragging a soft dry brush over the small marks until one mass with a light and a shade is left.',
    check: 'Step back three paces: you should see a shape there, not marks.',
    mixes: false,
  },
  'edge/soften': {
    verb: 'soften',
    how: 'Try losing parts of the edge with a soft dry brush, more away from your focus.',
    check: 'Let your eye rest on the focus: no edge elsewhere should call.',
    mixes: false,
  },
  'shapes/join': {
    verb: 'join',
    how: 'Try letting neighbouring patches of nearly one value run together into a bigger shape.',
    check: 'Squint: you should count three to five big shapes.',
    mixes: false,
  },
  'accent/quiet': {
    verb: 'echo or quiet',
    how: 'Try a smaller, weaker touch of the same hue elsewhere, or grey the spot with a little complement.',
    check: 'Look away and back: your eye should land on the focus first.',
    mixes: true,
  },
  'photo/again': {
    verb: 'photograph again',
    how: 'Stand the painting upright in even light, card beside it, lens straight on, no flash.',
    check: 'Post the new photo: the grade should rise and some readings may go away.',
    mixes: false,
  },
};

/** @throws Error when a rule pulls a lever that has no words (a bug; a test goes through all of them). */
export function wordsOfLever(part: CardPart, direction: CardDirection): LeverWords {
  const words = WORDS[`${part}/${direction}`];
  if (!words) throw new Error(`No words for ${part}/${direction}.`);
  return words;
}
