/**
 * Shapes of the rooms `class` and `silent/<personId>`: running order, turn and step, the server's clock, first
 * impressions.
 *
 * `class` is written by who runs the class, as flat keys that are each replaced whole; `kept` by the server alone. Pure.
 */
import { z } from 'zod/mini';
import { LiveId } from '../live/layout.ts';
import { LONGEST_STEP, SHORTEST_STEP, STEPS } from './steps.ts';

/** Most turns of one class. */
export const MOST_TURNS = 60;
/** Longest first impression and longest sentence said back, in characters. */
export const IMPRESSION_LIMIT = 400;

/** `class.order`: ids of paintings, first turn first. Those that had their turn stay in it. */
export const LiveOrderOfTurns = z.array(LiveId).check(z.maxLength(MOST_TURNS));

/** `class.lengths`: planned seconds of each step. */
export const LiveLengths = z.record(
  z.enum(STEPS),
  z.int().check(z.minimum(SHORTEST_STEP), z.maximum(LONGEST_STEP)),
);

/** `class.now`: the turn that is running; missing = none is. */
export const LiveNow = z.strictObject({
  /** Rises with every new turn and step; the server's clock names the one it counts. */
  number: z.int().check(z.minimum(1)),
  pictureId: LiveId,
  painterId: LiveId,
  step: z.enum(STEPS),
  paused: z.boolean(),
  /** Whether the others may mark after the teacher where the step lets the teacher begin. */
  opened: z.boolean(),
});
export type LiveNow = z.infer<typeof LiveNow>;

/** `class.look`: whose view everybody looks with, and since when by that person's clock. */
export const LiveLook = z.strictObject({ personId: LiveId, since: z.number() });
export type LiveLook = z.infer<typeof LiveLook>;

const Milliseconds = z.number().check(z.minimum(0));

/** `kept.clock`, by the server's clock, milliseconds since 1970: when step and turn began, and how long they were held. */
export const LiveClock = z.strictObject({
  number: z.int(),
  /** The step that the server knows of; null = it knows that no turn runs. */
  step: z.nullable(z.enum(STEPS)),
  pictureId: LiveId,
  stepBeganMs: Milliseconds,
  turnBeganMs: Milliseconds,
  /** Time of pauses that are over. */
  stepHeldMs: Milliseconds,
  turnHeldMs: Milliseconds,
  /** Since when it is paused now, or null. */
  heldSinceMs: z.nullable(Milliseconds),
});
export type LiveClock = z.infer<typeof LiveClock>;

/** `had-<pictureId>` in `class`: true = that painting had its turn. */
export const HAD = 'had-';
/** `shown-<pictureId>` in `kept`: when the first impressions of that painting were revealed, by the server's clock. */
export const SHOWN = 'shown-';

/** Whether an entry of `class` is well formed. */
export function classEntryFits(key: string, value: unknown): boolean {
  if (key === 'order') {
    const order = LiveOrderOfTurns.safeParse(value);
    return order.success && new Set(order.data).size === order.data.length;
  }
  if (key === 'lengths') return LiveLengths.safeParse(value).success;
  if (key === 'now') return LiveNow.safeParse(value).success;
  if (key === 'look') return LiveLook.safeParse(value).success;
  if (key === 'closed' || key === 'quiet') return value === true;
  return isOf(HAD, key) && value === true;
}

/** Whether an entry of `kept` is well formed. */
export function keptEntryFits(key: string, value: unknown): boolean {
  if (key === 'clock') return LiveClock.safeParse(value).success;
  return isOf(SHOWN, key) && Milliseconds.safeParse(value).success;
}

/** `silent.notes`: id of a painting → what its author saw first, never empty. */
export function noteFits(key: string, value: unknown): boolean {
  return LiveId.safeParse(key).success && wordsFit(value);
}

/** `painting.said`: 'first' → what its painter will do first, in their own words. */
export function saidFits(key: string, value: unknown): boolean {
  return key === 'first' && wordsFit(value);
}

function wordsFit(value: unknown): boolean {
  return typeof value === 'string' && value.length > 0 && value.length <= IMPRESSION_LIMIT;
}

function isOf(prefix: string, key: string): boolean {
  return key.startsWith(prefix) && LiveId.safeParse(key.slice(prefix.length)).success;
}
