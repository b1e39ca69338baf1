/** A valley in haze for tests of the planned ladder, and how its rungs and notes are found. */
import type { planLadder } from '#server/core/plan/ladder/plan-ladder.ts';
import { hazed, madeUp } from './made-up.ts';

export const AIR = { L: 80, a: -2, b: -9 };
export const WOOD = [
  { L: 14, a: -4, b: 8 },
  { L: 30, a: -12, b: 20 },
  { L: 46, a: -14, b: 30 },
];
export const SKY = { name: 'sky', kind: 'sky' as const, colours: [AIR] };
export const wood = (name: string, through: number, colours = WOOD) => ({
  name,
  colours: colours.map((colour) => hazed(colour, AIR, through)),
});
export const valley = () =>
  madeUp([SKY, wood('far ridge', 0.35), wood('middle hill', 0.65), wood('meadow', 1)], AIR);

export const rungOf = (ladder: { name: string }[], name: string) => {
  const found = ladder.find((rung) => rung.name === name);
  if (!found) throw new Error(`No rung '${name}'.`);
  return found as ReturnType<typeof planLadder>['ladder'][number];
};
export const says = (notes: string[], part: RegExp) => notes.filter((note) => part.test(note));
