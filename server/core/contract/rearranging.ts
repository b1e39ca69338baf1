/**
 * What is moved in a photograph before it is painted: motifs that were lifted, ridges that were bent. Shapes and types.
 *
 * In the flow: plan page -> live document -> [rearranging] -> core/plan/rearrange, in a worker of the page and of the
 * server. Points are 0..1 of the upright photograph as it was taken, whatever the other steps do, so that steps can be put
 * in any order, put off or taken away. Pure.
 */
import { z } from 'zod/mini';
import { FractionPoint } from './setup.ts';

const Id = z.string().check(z.regex(/^[0-9A-Za-z-]{1,64}$/));
const Order = z.string().check(z.regex(/^[0-9A-Za-z]{0,199}[1-9A-Za-z]$/));

/** Least and largest size of a lifted motif against what it was. */
export const SMALLEST_SCALE = 0.2;
export const LARGEST_SCALE = 4;
/** Farthest that a ridge is bent, share of the picture's height. */
export const MOST_LIFT = 0.35;
/** Steps of one board's photographs together. */
export const MOST_STEPS = 60;

const Named = {
  /** The photograph. */
  pictureId: Id,
  name: z.string().check(z.minLength(1), z.maxLength(80)),
  /** Place among the steps: a later motif stands before an earlier one. */
  order: Order,
  /** True = kept, but not done just now. */
  off: z.boolean(),
};

export const Motif = z.strictObject({
  ...Named,
  outline: z.array(FractionPoint).check(z.minLength(3), z.maxLength(400)),
  /** Only what belongs to this plane is lifted; null = all within the outline. */
  planeId: z.nullable(Id),
  /** How far it was moved, shares of the picture. */
  move: z.tuple([
    z.number().check(z.minimum(-1), z.maximum(1)),
    z.number().check(z.minimum(-1), z.maximum(1)),
  ]),
  scale: z.number().check(z.minimum(SMALLEST_SCALE), z.maximum(LARGEST_SCALE)),
  mirrored: z.boolean(),
});
export type Motif = z.infer<typeof Motif>;

export const Bend = z.strictObject({
  ...Named,
  /** The ridge as it runs in the photograph, from left to right. */
  line: z.array(FractionPoint).check(z.minLength(2), z.maxLength(400)),
  /** Where it is bent most, and how far to each side, shares of the width. */
  at: z.number().check(z.minimum(0), z.maximum(1)),
  reach: z.number().check(z.minimum(0.02), z.maximum(1)),
  /** + up, − down, share of the height. */
  lift: z.number().check(z.minimum(-MOST_LIFT), z.maximum(MOST_LIFT)),
});
export type Bend = z.infer<typeof Bend>;

/** Steps of one photograph, in order. */
export interface Rearranging {
  readonly motifs: readonly Motif[];
  readonly bends: readonly Bend[];
}
