/**
 * How a hand moves and sizes what is carried: all planes at once, or one of them.
 *
 * In the flow: carry hand, keys -> [placing] -> placement and moves of core. All in 0..1 of the squared painting. Pure.
 */
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { type Placement, type PlaneMove, SCALES } from '#server/core/planes/carry/placement.ts';

/** Where everything lies. */
export interface Laid {
  readonly placement: Placement;
  /** By plane id. */
  readonly moves: ReadonlyMap<string, PlaneMove>;
}

/** A change of everything or of one plane: sized about a place, then shifted. */
export interface Change {
  readonly about: FractionPoint;
  readonly scaleX: number;
  readonly scaleY: number;
  readonly shiftX: number;
  readonly shiftY: number;
}

const NO_CHANGE: Change = { about: [0, 0], scaleX: 1, scaleY: 1, shiftX: 0, shiftY: 0 };

export const shiftedBy = (shiftX: number, shiftY: number): Change => ({ ...NO_CHANGE, shiftX, shiftY });

export const sizedBy = (scale: number, about: FractionPoint): Change => ({
  ...NO_CHANGE,
  ...{ about, scaleX: scale, scaleY: scale },
});

const through = ({ about, scaleX, scaleY, shiftX, shiftY }: Change, [x, y]: FractionPoint): FractionPoint => [
  about[0] + (x - about[0]) * scaleX + shiftX,
  about[1] + (y - about[1]) * scaleY + shiftY,
];

const held = (scale: number): number => Math.min(SCALES.most, Math.max(SCALES.least, scale));

/** Everything changed; what single planes were moved by goes along. */
export function allChanged({ placement, moves }: Laid, change: Change): Laid {
  const { scaleX, scaleY, shiftX, shiftY } = placement;
  const [left, top] = through(change, [shiftX, shiftY]);
  return {
    placement: {
      scaleX: held(scaleX * change.scaleX),
      scaleY: held(scaleY * change.scaleY),
      shiftX: left,
      shiftY: top,
    },
    moves: new Map(
      [...moves].map(([id, move]) => [
        id,
        {
          about: through(change, move.about),
          scale: move.scale,
          shiftX: move.shiftX * change.scaleX,
          shiftY: move.shiftY * change.scaleY,
        },
      ]),
    ),
  };
}

/** One plane changed, by the same amount both ways. @param about Where it is moved about when it was not yet. */
export function planeChanged(laid: Laid, planeId: string, about: FractionPoint, change: Change): Laid {
  const { scaleX: scale } = change;
  const before = laid.moves.get(planeId) ?? { about, scale: 1, shiftX: 0, shiftY: 0 };
  const [x, y] = through({ ...change, scaleY: scale }, [
    before.about[0] + before.shiftX,
    before.about[1] + before.shiftY,
  ]);
  const move: PlaneMove = {
    about: before.about,
    scale: held(before.scale * scale),
    shiftX: x - before.about[0],
    shiftY: y - before.about[1],
  };
  return { placement: laid.placement, moves: new Map([...laid.moves, [planeId, move]]) };
}

/** Left, top, right, bottom. */
export type Bounds = readonly [number, number, number, number];

/** Handles stay this far inside the painting, or a hand could not take them. */
const INSIDE = 0.015;

/** The corners that a hand can take, clockwise from the top left. @param bounds What is carried. */
export function cornersOf([left, top, right, bottom]: Bounds): FractionPoint[] {
  const inside = (value: number) => Math.min(1 - INSIDE, Math.max(INSIDE, value));
  const [x0, y0, x1, y1] = [inside(left), inside(top), inside(right), inside(bottom)];
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

/** Where the first picture lies on the painting. */
export const boundsOfAll = ({ scaleX, scaleY, shiftX, shiftY }: Placement): Bounds => [
  shiftX,
  shiftY,
  shiftX + scaleX,
  shiftY + scaleY,
];

export function boundsOf(outline: readonly FractionPoint[]): Bounds | null {
  if (outline.length === 0) return null;
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** A corner pulled: the opposite one stays. @param even The same amount both ways. */
export function cornerPulled(
  corners: readonly FractionPoint[],
  at: number,
  to: FractionPoint,
  even: boolean,
): Change | null {
  const [from, about] = [corners[at], corners[(at + 2) % 4]];
  if (!from || !about) return null;
  const along = (axis: 0 | 1): number => {
    const side = from[axis] - about[axis];
    return Math.abs(side) < 1e-3 ? 1 : held((to[axis] - about[axis]) / side);
  };
  const [x, y] = [along(0), along(1)];
  const both = Math.sqrt(x * y);
  return { ...NO_CHANGE, about, scaleX: even ? both : x, scaleY: even ? both : y };
}
