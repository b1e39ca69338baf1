/**
 * What somebody looks at, so that others can look with them: which pictures, what part, and in which way.
 *
 * Travels in presence. The part of the picture is told in the picture's own coordinates, so that a screen of another
 * size shows the same spot. Pure.
 */
import { z } from 'zod/mini';
import { FractionPoint } from '../contract/setup.ts';

const Id = z.string().check(z.regex(/^[0-9A-Za-z-]{1,64}$/));
const share = z.number().check(z.minimum(0), z.maximum(1));

export const Look = z.object({
  /** The picture that `middle` and `width`, `height` are told in; null = no picture is on the easel. */
  pictureId: z.nullable(Id),
  /** What stands mid-window: 0..1 of the upright original. */
  middle: FractionPoint,
  /** What is seen of the picture as it is shown: shares of its width and height. */
  width: share,
  height: share,
  referenceId: z.nullable(Id),
  paintingId: z.nullable(Id),
  arrange: z.enum(['beside', 'over']),
  /** Which of the two a narrow screen shows. */
  side: z.enum(['reference', 'painting']),
  /** Where the edge stands when one picture lies over the other: share of the width. */
  edge: share,
  squint: z.enum(['off', 'blur', 'grey', 'both']),
  /** How far the eyes are closed, 0 = hardly. */
  closed: z.int().check(z.minimum(0), z.maximum(9)),
  /** Number of values the pictures are cut into, or null. */
  values: z.nullable(z.int().check(z.minimum(2), z.maximum(9))),
  sameCuts: z.boolean(),
  mirrored: z.boolean(),
  half: z.boolean(),
  /** Paintings put right. */
  squared: z.boolean(),
  /** When this person's hand last changed any of it, ms by their own clock: of two windows the later one leads. */
  movedMs: z.number(),
});
export type Look = z.infer<typeof Look>;

/** A wish to speak. The server writes when it was first raised. */
export const Wish = z.object({ id: Id, sinceMs: z.number() });
export type Wish = z.infer<typeof Wish>;

/** Wishes that somebody who runs the class has thanked for; only the last ones count. */
export const Thanks = z.array(Id).check(z.maxLength(30));
