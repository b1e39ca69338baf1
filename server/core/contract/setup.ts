/**
 * The setup of one measurement: planes, photo corrections, conditions.
 *
 * The same shape serves the headless command, the pipeline (which builds it from the live documents) and the
 * tests. Unknown keys are refused by name. Pure.
 */
import { z } from 'zod/mini';
import { PlanWishes } from './plan-wishes.ts';

/** A point in 0..1 of a picture: x from the left, y from the top. */
export const FractionPoint = z.tuple([z.number(), z.number()]);
export type FractionPoint = z.infer<typeof FractionPoint>;

export const PLANE_KINDS = ['sky', 'land', 'wood', 'water', 'snow', 'built'] as const;
export const PlaneKind = z.enum(PLANE_KINDS);
export type PlaneKind = z.infer<typeof PlaneKind>;

export const PLANE_TILTS = ['flat', 'slanted', 'upright'] as const;
export const PlaneTilt = z.enum(PLANE_TILTS);
export type PlaneTilt = z.infer<typeof PlaneTilt>;

export const CONDITIONS = [
  'snow',
  'against-light',
  'low-sun',
  'fog',
  'valley-mist',
  'cloud-shadow',
  'sun-spot',
  'clear-air',
  'smoke',
  'shallow',
  'night',
] as const;
export const Condition = z.enum(CONDITIONS);
export type Condition = z.infer<typeof Condition>;

/** At least three points; self-crossing outlines are refused by `core/planes`. */
export const Outline = z.array(FractionPoint).check(z.minLength(3), z.maxLength(4000));
export type Outline = z.infer<typeof Outline>;

export const SetupPlane = z.strictObject({
  name: z.string().check(z.minLength(1), z.maxLength(80)),
  kind: z._default(PlaneKind, 'land'),
  tilt: z._default(z.nullable(PlaneTilt), null),
  unreliable: z._default(z.boolean(), false),
  /** Outline on the reference, 0..1 of the reference. */
  reference: Outline,
  /** Outline on the painting, 0..1 of the squared painting. Defaults to `reference`. */
  painting: z.optional(Outline),
});
export type SetupPlane = z.infer<typeof SetupPlane>;

/** A neutral card of known luminance factor; box x0, y0, x1, y1 in 0..1 of the upright photo before squaring. */
export const Card = z.strictObject({
  box: z.tuple([z.number(), z.number(), z.number(), z.number()]),
  /** Luminance factor, above 0 up to 1. */
  Y: z.number().check(z.positive(), z.maximum(1)),
});
export type Card = z.infer<typeof Card>;

export const PhotoCorrection = z.strictObject({
  /** Clockwise from the painting's top left, 0..1 of the upright photo. */
  corners: z.optional(z.tuple([FractionPoint, FractionPoint, FractionPoint, FractionPoint])),
  cards: z.optional(z.array(Card).check(z.maxLength(12))),
  /** Width and height of the canvas in one unit; only their ratio counts. */
  size: z.optional(z.tuple([z.number().check(z.positive()), z.number().check(z.positive())])),
});
export type PhotoCorrection = z.infer<typeof PhotoCorrection>;

/** CIELAB colour, D65. */
export const LabColour = z.strictObject({ L: z.number(), a: z.number(), b: z.number() });
export type LabColour = z.infer<typeof LabColour>;

const Hex = z.string().check(z.regex(/^#[0-9a-f]{6}$/));

/** One rung of a planned ladder, as printed by the plan command. */
export const PlannedPlane = z.strictObject({
  name: z.string(),
  dark: z.number(),
  mid: z.number(),
  light: z.number(),
  chroma: z.number(),
  strong: z.number(),
  warmCool: z.number(),
  airDistance: z.nullable(z.number()),
  /** sRGB hex colours of its darks, middle and lights, for drawing only; not printed. */
  colours: z.optional(z.strictObject({ dark: Hex, mid: Hex, light: Hex })),
});
export type PlannedPlane = z.infer<typeof PlannedPlane>;

export const Setup = z.strictObject({
  /** Far to near: index 0 is the farthest, the sky first. */
  planes: z.array(SetupPlane).check(z.minLength(1), z.maxLength(12)),
  photo: z.optional(PhotoCorrection),
  conditions: z._default(z.array(Condition), []),
  /** Air colour picked by a person for the reference and/or the painting; null = measured. */
  air: z._default(
    z.nullable(
      z.strictObject({
        reference: z.optional(z.nullable(LabColour)),
        painting: z.optional(z.nullable(LabColour)),
      }),
    ),
    null,
  ),
  focus: z._default(z.nullable(FractionPoint), null),
  /** Readings the painter meant: `V4` on every plane, `V4/massif` on one. */
  meant: z._default(z.array(z.string().check(z.maxLength(100))), []),
  plan: z._default(z.nullable(z.array(PlannedPlane)), null),
  /** What the plan command plans its ladder by; measuring leaves it alone. */
  wishes: z.optional(PlanWishes),
});
export type Setup = z.infer<typeof Setup>;
/** What a person writes before the defaults are filled in. */
export type SetupInput = z.input<typeof Setup>;
