/**
 * What a person wishes of a planned ladder: how many planes, which air, how much of it, and what is set by hand.
 *
 * The same shapes serve the headless command (`wishes` of a setup), the live `setup` room and the planning itself.
 * Unknown keys are refused by name. Pure.
 */
import { z } from 'zod/mini';

/** Airs that a painter is likely to plan with; their colours: `plan/air/likely-airs.ts`. */
export const LIKELY_AIR_NAMES = ['blue', 'blue-violet', 'red-violet', 'blue-green', 'warm'] as const;
export type LikelyAir = (typeof LIKELY_AIR_NAMES)[number];

/** Most air that can be added: at 4 a plane keeps two fifths of what the usual air leaves of it, per place. */
export const MOST_STRENGTH = 4;

/** What a person does to one plane by hand, after the air. A part that is missing is as the air leaves it. */
export const PlaneHandle = z.strictObject({
  /** Shift of the whole plane, L*. */
  mid: z.optional(z.number().check(z.minimum(-100), z.maximum(100))),
  /** The darks (5th percentile) wished for, L*; never above the plane's middle. */
  dark: z.optional(z.number().check(z.minimum(0), z.maximum(100))),
  /** The lights (95th percentile) wished for, L*; never under the plane's middle. */
  light: z.optional(z.number().check(z.minimum(0), z.maximum(100))),
  /** Factor on chroma, 0 or more. */
  chroma: z.optional(z.number().check(z.minimum(0), z.maximum(4))),
  /** Shift of `warmCool`, + warmer. */
  warmCool: z.optional(z.number().check(z.minimum(-100), z.maximum(100))),
});
export type PlaneHandle = z.infer<typeof PlaneHandle>;
export const HANDLE_PARTS = ['dark', 'mid', 'light', 'chroma', 'warmCool'] as const;
export type HandlePart = (typeof HANDLE_PARTS)[number];

/** Colour of the planned air: the photograph's own, a likely one by name, or any colour (CIELAB, D65). */
export const WishedAir = z.union([
  z.literal('photograph'),
  z.enum(LIKELY_AIR_NAMES),
  z.strictObject({ L: z.number(), a: z.number(), b: z.number() }),
]);
export type WishedAir = z.infer<typeof WishedAir>;

/** Number of planes, sky included. */
export const WishedCount = z.int().check(z.minimum(1), z.maximum(12));
/** 0 = as the photograph, 1 = usual. */
export const WishedStrength = z.number().check(z.minimum(0), z.maximum(MOST_STRENGTH));

/** Wishes as they stand in a setup: whatever is missing is planned as usual. */
export const PlanWishes = z.strictObject({
  /** Null = as many as there are (fewer in fog and at night). */
  count: z.optional(z.nullable(WishedCount)),
  /** Null = the photograph's own, warm under a low sun. */
  air: z.optional(z.nullable(WishedAir)),
  strength: z.optional(WishedStrength),
  /** By name of the plane. */
  handles: z.optional(z.record(z.string(), PlaneHandle)),
});
export type PlanWishes = z.infer<typeof PlanWishes>;
