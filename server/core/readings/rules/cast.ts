/**
 * G10: one cast over everything: likely the lamp, not the paint.
 *
 * In the flow: scene -> [rule] -> findings. It speaks at every grade, because it is about the photograph. Pure.
 * Source: common practice; limits from the trade notes.
 */
import { median } from '../../image/percentiles.ts';
import { say } from '../../say/say.ts';
import { shows } from '../gate.ts';
import { NO_SOURCE } from '../no-source.ts';
import type { Rule } from '../rule.ts';
import type { Scene } from '../scene.ts';

const MOVED = 6;
const EQUAL_WITHIN = 3;
const FEWEST_PLANES = 3;

/** How all planes moved in a*, b* and how far the one most apart stands from that; null under three planes. */
function commonShift(scene: Scene): { a: number; b: number; apart: number } | null {
  const moves = scene.planes.flatMap(({ target, painting }) =>
    target && target.a !== null && target.b !== null && painting.a !== null && painting.b !== null
      ? [{ a: painting.a - target.a, b: painting.b - target.b }]
      : [],
  );
  const [a, b] = [median(moves.map((move) => move.a)), median(moves.map((move) => move.b))];
  if (moves.length < FEWEST_PLANES || a === null || b === null) return null;
  return { a, b, apart: Math.max(...moves.map((move) => Math.hypot(move.a - a, move.b - b))) };
}

function castInWords(a: number, b: number): string {
  if (Math.abs(b) >= Math.abs(a)) return b > 0 ? say`yellower` : say`bluer`;
  return a > 0 ? say`redder` : say`greener`;
}

export const G10: Rule = {
  id: 'G10',
  name: say`One cast over everything`,
  group: 1,
  family: null,
  inputs: 'a, b of every plane, both pictures',
  threshold: 'all planes and the sky moved by 6 or more in one direction, equal within 3',
  noise: 'none: the cast is itself the error of the photograph',
  mutedBy: {},
  colour: false,
  why: say`Paint seldom shifts every plane alike; a lamp does.`,
  source: NO_SOURCE,
  find(scene) {
    const shift = commonShift(scene);
    if (!shift || shift.apart > EQUAL_WITHIN || !shows(Math.hypot(shift.a, shift.b), MOVED, 0)) return [];
    return [
      {
        planes: [],
        difference: Math.hypot(shift.a, shift.b),
        threshold: MOVED,
        form: 'finding',
        sentence: say`Every plane is ${castInWords(shift.a, shift.b)} by the same amount: likely the lamp, not your paint.`,
        restsOn: [],
        levers: [{ plane: null, part: 'photo', direction: 'again', amountL: null }],
      },
    ];
  },
};
