/**
 * How a photograph, or a frame of it, is put into a few values: `values.<id>.count` and `values.<id>.<number>` of the
 * `setup` room's `plan`.
 *
 * `<id>` is the photograph's or the frame's. The chosen number and the cuts of each number have keys of their own, so
 * that two people who move different ones lose nothing. Pure apart from the document given.
 */
import type * as Y from 'yjs';
import { z } from 'zod/mini';
import { VALUE_NUMBERS, type ValueNumber } from '../../look/value-numbers.ts';
import { putEntry, readEntries } from '../document.ts';

export interface ValuePlan {
  /** The number of values that was settled on, or null. */
  readonly count: ValueNumber | null;
  /** Cuts that were moved by hand, rising L*, one fewer than there are values; where missing, `startingCuts`. */
  readonly cuts: ReadonlyMap<ValueNumber, readonly number[]>;
}

const NO_PLAN: ValuePlan = { count: null, cuts: new Map() };

const KEY = /^values\.([0-9A-Za-z-]{1,64})\.(count|[2-5])$/;
const Count = z.literal(VALUE_NUMBERS);
const Cuts = z
  .array(z.number().check(z.minimum(0), z.maximum(100)))
  .check(z.refine((cuts) => cuts.every((cut, at) => at === 0 || cut > (cuts[at - 1] as number))));

/** What a key names and its value holds, or null where either is malformed. */
function entryOf(
  key: string,
  value: unknown,
): { id: string; count: ValueNumber; cuts: number[] | null } | null {
  const [, id, part] = KEY.exec(key) ?? [];
  if (!id || !part) return null;
  const count = Count.safeParse(part === 'count' ? value : Number(part)).data;
  if (count === undefined) return null;
  if (part === 'count') return { id, count, cuts: null };
  const cuts = Cuts.safeParse(value).data;
  return cuts?.length === count - 1 ? { id, count, cuts } : null;
}

/** Whether an entry of `plan` is a well-formed part of a value plan. */
export function valuesFit(key: string, value: unknown): boolean {
  return entryOf(key, value) !== null;
}

/** The value plan of a photograph or of a frame, by its id. */
export function readValues(doc: Y.Doc, id: string): ValuePlan {
  let plan = NO_PLAN;
  for (const [key, value] of readEntries(doc, 'plan', z.string(), z.unknown())) {
    const entry = entryOf(key, value);
    if (entry?.id !== id) continue;
    plan = entry.cuts
      ? { ...plan, cuts: new Map([...plan.cuts, [entry.count, entry.cuts]]) }
      : { ...plan, count: entry.count };
  }
  return plan;
}

/** @param count null = not settled. */
export function setValueCount(doc: Y.Doc, id: string, count: ValueNumber | null): void {
  putEntry(doc, 'plan', `values.${id}.count`, count);
}

/** @param cuts one fewer than `count`, rising; null = where they begin by themselves. */
export function setValueCuts(
  doc: Y.Doc,
  id: string,
  count: ValueNumber,
  cuts: readonly number[] | null,
): void {
  putEntry(doc, 'plan', `values.${id}.${count}`, cuts && [...cuts]);
}
