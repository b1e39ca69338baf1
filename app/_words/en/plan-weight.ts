/** Every word of weight and shapes: the beam, the published heaviness, what is worth a look. Pure. */
import type { HeavierSide } from '#server/core/plan/weight/balance.ts';

export const planWeightWords = {
  title: 'Weight',
  about:
    'What stands out of its ground pulls, the more the farther it lies from the upright middle, as on a steelyard.',
  beam: 'The beam: which side weighs more',
  side: {
    left: 'The left side weighs more.',
    right: 'The right side weighs more.',
    even: 'The sides are in balance.',
  } satisfies Record<HeavierSide, string>,
  lever: (lever: string) => `Lever ${lever}, from −1 (all at the left edge) to +1 (all at the right).`,
  heaviness: (left: string, right: string) => `Heaviness of the halves: left ${left}, right ${right}.`,
  heavinessAbout:
    'A figure of its own, from what people said of colours on a scale of heavy (+) and light (−): Ou, Luo, Woodcock and Wright 2004. It takes no part in the lever.',
  ofFrame: (name: string) => `Inside the frame ‘${name}’.`,
  ofRearranged: 'Of the picture as you rearranged it.',
  suggestions: 'Worth a look',
  suggestionsAbout: 'Suggestions, never faults: choose one to see it on the picture.',
  none: 'Nothing in the shapes asks for a second look.',
  noPlanes: 'Ridges are looked at once planes are outlined on the board; weight is told all the same.',
  whyWith: (why: string, source: string) => `${why} (${source})`,
  working: 'Weighing …',
  failed: 'The small copy of the photograph could not be fetched. Try again later.',
} as const;
