/**
 * The steps of one turn in a live class, in their order, and how long each is planned to last.
 *
 * In the flow: [steps] -> table of what a step allows, clock, screens. The order and the minutes are common practice in
 * live critique classes (no source); whoever runs the class changes the minutes. Pure.
 */

/** One turn: looked at alone and in silence first, the reference only after it was said what works. */
export const STEPS = [
  'silent',
  'intention',
  'strengths',
  'reference',
  'priorities',
  'actions',
  'say-back',
] as const;
export type Step = (typeof STEPS)[number];

/** Seconds of each step. */
export type Lengths = Record<Step, number>;

/** Nine and a half minutes a turn. */
export const USUAL_LENGTHS: Lengths = {
  silent: 60,
  intention: 60,
  strengths: 60,
  reference: 60,
  priorities: 180,
  actions: 90,
  'say-back': 60,
};

/** Shortest and longest planned length of a step, seconds. */
export const SHORTEST_STEP = 10;
export const LONGEST_STEP = 3600;

/** The step after this one, or null after the last. */
export function stepAfter(step: Step): Step | null {
  return STEPS[STEPS.indexOf(step) + 1] ?? null;
}

/** Seconds of a whole turn. */
export function turnLength(lengths: Lengths): number {
  return STEPS.reduce((sum, step) => sum + lengths[step], 0);
}

/** The same things in an order drawn by chance, each order as likely as any other (Fisher and Yates 1938). */
export function drawn<T>(things: readonly T[], random: () => number): T[] {
  const order = [...things];
  for (let last = order.length - 1; last > 0; last--) {
    const at = Math.floor(random() * (last + 1));
    const [one, two] = [order[at], order[last]];
    if (one !== undefined && two !== undefined) [order[at], order[last]] = [two, one];
  }
  return order;
}
