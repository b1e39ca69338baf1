/**
 * What is wished of the planned ladder, in the `setup` room's `plan`: `wish.<field>` and `handle.<planeId>.<part>`.
 *
 * Each wish and each part of a handle has a key of its own, so that two people who set different ones lose nothing.
 * Pure apart from the document given.
 */
import type * as Y from 'yjs';
import { z } from 'zod/mini';
import {
  HANDLE_PARTS,
  type HandlePart,
  PlaneHandle,
  WishedAir,
  WishedCount,
  WishedStrength,
} from '../../contract/plan-wishes.ts';
import { edit, readEntries } from '../document.ts';
import { LiveId } from '../layout.ts';

/** The wishes of a board's plan as they travel. */
export const LiveWishes = z.strictObject({
  /** The photograph that is planned from; null = the first reference of the board. */
  pictureId: z.nullable(LiveId),
  /** The kept frame that is planned from; null = the whole photograph. */
  cropId: z.nullable(LiveId),
  count: z.nullable(WishedCount),
  air: z.nullable(WishedAir),
  strength: WishedStrength,
});
export type LiveWishes = z.infer<typeof LiveWishes>;
export type WishField = keyof LiveWishes;

export const NO_WISHES: LiveWishes = {
  pictureId: null,
  cropId: null,
  count: null,
  air: null,
  strength: 1,
};

/** Handles by plane id. */
export type Handles = ReadonlyMap<string, PlaneHandle>;

const WISH = 'wish.';
const HANDLE = /^handle\.([0-9A-Za-z-]{1,64})\.([a-zA-Z]+)$/;
const AnyKey = z.string();
const AnyValue = z.unknown();

/** Plane and part that a key names, or null where it is no handle's. */
function handleKey(key: string): { planeId: string; part: HandlePart } | null {
  const found = HANDLE.exec(key);
  const part = HANDLE_PARTS.find((each) => each === found?.[2]);
  return found?.[1] && part ? { planeId: found[1], part } : null;
}

/** Whether an entry of `plan` is a well-formed wish. */
export function wishFits(key: string, value: unknown): boolean {
  const field = key.slice(WISH.length);
  if (!key.startsWith(WISH) || !Object.hasOwn(LiveWishes.shape, field)) return false;
  return LiveWishes.shape[field as WishField].safeParse(value).success;
}

/** Whether an entry of `plan` is a well-formed part of a handle. */
export function handleFits(key: string, value: unknown): boolean {
  const named = handleKey(key);
  return (
    named !== null && typeof value === 'number' && PlaneHandle.safeParse({ [named.part]: value }).success
  );
}

/** The wishes as they stand; what is missing or unreadable is as usual. */
export function readWishes(doc: Y.Doc): LiveWishes {
  const entries = readEntries(doc, 'plan', AnyKey, AnyValue);
  const wishes: Record<string, unknown> = { ...NO_WISHES };
  for (const [key, value] of entries) if (wishFits(key, value)) wishes[key.slice(WISH.length)] = value;
  return wishes as LiveWishes; // each field was just checked
}

/** What is set by hand, by plane id. */
export function readHandles(doc: Y.Doc): Map<string, PlaneHandle> {
  const handles = new Map<string, PlaneHandle>();
  for (const [key, value] of readEntries(doc, 'plan', AnyKey, AnyValue)) {
    const named = handleKey(key);
    if (!named || !handleFits(key, value)) continue;
    handles.set(named.planeId, { ...handles.get(named.planeId), [named.part]: value as number });
  }
  return handles;
}

/** Sets some wishes, in one transaction; the others stay. */
export function setWishes(doc: Y.Doc, wishes: Partial<LiveWishes>): void {
  edit(doc, () => {
    for (const [field, value] of Object.entries(wishes)) {
      if (value !== undefined) doc.getMap('plan').set(`${WISH}${field}`, value);
    }
  });
}

/** @param amount Null = as the air leaves it. */
export function setHandle(doc: Y.Doc, planeId: string, part: HandlePart, amount: number | null): void {
  edit(doc, () => {
    const key = `handle.${planeId}.${part}`;
    if (amount === null) doc.getMap('plan').delete(key);
    else doc.getMap('plan').set(key, amount);
  });
}

/** Sets everything by hand anew, in one transaction: parts that are not named go. */
export function replaceHandles(doc: Y.Doc, handles: Handles): void {
  const wanted = new Map<string, number>();
  for (const [planeId, handle] of handles) {
    for (const [part, amount] of Object.entries(handle)) {
      if (amount !== undefined) wanted.set(`handle.${planeId}.${part}`, amount);
    }
  }
  edit(doc, () => {
    const plan = doc.getMap('plan');
    const before = [...plan.keys()].filter((key) => handleKey(key));
    for (const key of before) if (!wanted.has(key)) plan.delete(key);
    for (const [key, amount] of wanted) if (plan.get(key) !== amount) plan.set(key, amount);
  });
}
