/**
 * Which stretches of a carried ridge can be seen in the painting, what lies behind them, and how the first picture
 * looks across them.
 *
 * In the flow: stretches, label map, both sights -> [ridge-seen] -> find-moves, ridge-costs. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import { NO_PLANE } from '../label-map.ts';
import type { Stretch } from './ridge-samples.ts';
import type { Sight } from './sight.ts';

export const HIDDEN = 0;
export const SEEN = 1;
/** Outside the painting. */
export const ASTRAY = 2;

/** How far to each side of a ridge it is asked which plane lies there, cells. */
const ASIDE = 3;
/** The first picture is read this far to both sides of a ridge, cells of the painting. */
export const HALF_PROFILE = 10;
export const PROFILE = 2 * HALF_PROFILE + 1;
/** Within this much of a ridge the step is taken that it has. */
const STEP_TO = 6;

export interface RidgeSeen {
  /** `HIDDEN`, `SEEN` or `ASTRAY` by sample. */
  readonly state: Uint8Array;
  /** The plane behind each sample, `NO_PLANE` where there is none. */
  readonly behind: Uint8Array;
  /** L*, a*, b* of the first picture from inside outwards, `PROFILE` each, by sample; their means taken off. */
  readonly profiles: Float32Array;
  /** 1 where the first picture shows the sample. */
  readonly known: Uint8Array;
  /** Step outwards in the first picture, L*, a*, b* by sample; 0, 0, 0 where it is not known. */
  readonly expected: Float32Array;
}

const cellAt = ({ columns, rows }: Pick<Sight, 'columns' | 'rows'>, x: number, y: number): number => {
  const [column, row] = [Math.floor(x), Math.floor(y)];
  return column < 0 || row < 0 || column >= columns || row >= rows ? -1 : row * columns + column;
};

/** Reads one profile; false where the ridge itself lies outside the first picture. */
function readProfile(
  first: Sight,
  [x, y]: FractionPoint,
  [dx, dy]: FractionPoint,
  profiles: Float32Array,
  start: number,
): boolean {
  const { columns, rows, channels } = first;
  if (cellAt(first, x, y) < 0) return false;
  channels.forEach((channel, at) => {
    let sum = 0;
    const to = start + at * PROFILE;
    for (let far = -HALF_PROFILE; far <= HALF_PROFILE; far++) {
      const column = Math.min(columns - 1, Math.max(0, Math.floor(x + dx * far)));
      const row = Math.min(rows - 1, Math.max(0, Math.floor(y + dy * far)));
      const value = channel[row * columns + column] as number;
      profiles[to + far + HALF_PROFILE] = value;
      sum += value;
    }
    for (let place = 0; place < PROFILE; place++) {
      profiles[to + place] = (profiles[to + place] as number) - sum / PROFILE;
    }
  });
  return true;
}

/** The step of a profile. */
function stepOf(profiles: Float32Array, start: number): number {
  let [inner, outer] = [0, 0];
  for (let far = 1; far <= STEP_TO; far++) {
    inner += profiles[start + HALF_PROFILE - far] as number;
    outer += profiles[start + HALF_PROFILE + far] as number;
  }
  return (outer - inner) / STEP_TO;
}

export interface Seeing {
  readonly painting: Pick<Sight, 'columns' | 'rows'>;
  /** The carried planes on the painting's grid. */
  readonly labels: Uint8Array;
  readonly first: Sight;
  /** From a cell of the painting to a cell of the first picture. */
  readonly back: (cell: FractionPoint) => FractionPoint;
}

/** @param plane its number, far to near. */
export function ridgeSeen(stretch: Stretch, plane: number, seeing: Seeing): RidgeSeen {
  const { painting, labels, first, back } = seeing;
  const { at, out, length } = stretch;
  const seen = {
    state: new Uint8Array(length),
    behind: new Uint8Array(length).fill(NO_PLANE),
    profiles: new Float32Array(length * 3 * PROFILE),
    known: new Uint8Array(length),
    expected: new Float32Array(length * 3),
  };
  for (let sample = 0; sample < length; sample++) {
    const [x, y] = [at[sample * 2] as number, at[sample * 2 + 1] as number];
    const [dx, dy] = [out[sample * 2] as number, out[sample * 2 + 1] as number];
    const own = cellAt(painting, x - dx * ASIDE, y - dy * ASIDE);
    const other = cellAt(painting, x + dx * ASIDE, y + dy * ASIDE);
    if (own < 0 || other < 0) seen.state[sample] = ASTRAY;
    else {
      const there = labels[other] as number;
      const nearer = there !== NO_PLANE && there >= plane;
      seen.state[sample] = labels[own] !== plane || nearer ? HIDDEN : SEEN;
      seen.behind[sample] = there;
    }
    if (seen.state[sample] === HIDDEN) continue;
    const from = back([x, y]);
    const aside = back([x + dx, y + dy]);
    const way: FractionPoint = [aside[0] - from[0], aside[1] - from[1]];
    const start = sample * 3 * PROFILE;
    if (!readProfile(first, from, way, seen.profiles, start)) continue;
    seen.known[sample] = 1;
    for (let channel = 0; channel < 3; channel++) {
      seen.expected[sample * 3 + channel] = stepOf(seen.profiles, start + channel * PROFILE);
    }
  }
  return seen;
}
