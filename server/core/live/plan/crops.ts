/**
 * The frames that were kept of the board's photographs: `crop.<id>` of the `setup` room's `plan`.
 *
 * In the flow: plan page -> [crops] -> contact sheet, value plans, measuring inside a frame. Each frame is one entry,
 * replaced whole. Pure apart from the document given.
 */
import type * as Y from 'yjs';
import { z } from 'zod/mini';
import { putEntry, readEntries } from '../document.ts';
import { LiveId } from '../layout.ts';

/** Frames that a board keeps at most, over all photographs. */
export const MOST_CROPS = 60;

const Side = z.number().check(z.minimum(0), z.maximum(1));
/** x0, y0, x1, y1 in 0..1 of the upright photograph. */
const LiveBox = z.tuple([Side, Side, Side, Side]).check(z.refine(([x0, y0, x1, y1]) => x1 > x0 && y1 > y0));

export const LiveCrop = z.strictObject({
  name: z.string().check(z.minLength(1), z.maxLength(80)),
  /** The photograph it is cut from. */
  pictureId: LiveId,
  box: LiveBox,
  /** `3:2`, a canvas as it is sold, or `free`. */
  format: z.string().check(z.minLength(1), z.maxLength(40)),
  /** The canvas it is meant for, as it is sold, or null. */
  canvas: z.nullable(z.string().check(z.maxLength(40))),
  /** When it was kept, milliseconds since 1970 by the clock of who kept it. */
  at: z.number(),
});
export type LiveCrop = z.infer<typeof LiveCrop>;
export type KeptCrop = LiveCrop & { readonly id: string };

const PREFIX = 'crop.';
const CropKey = z.string().check(z.regex(/^crop\.[0-9A-Za-z-]{1,64}$/));

/** Whether an entry of `plan` is a well-formed frame. */
export function cropFits(key: string, value: unknown): boolean {
  return CropKey.safeParse(key).success && LiveCrop.safeParse(value).success;
}

/** All kept frames, in the order in which they were kept. */
export function readCrops(doc: Y.Doc): KeptCrop[] {
  return [...readEntries(doc, 'plan', CropKey, LiveCrop)]
    .map(([key, crop]) => ({ ...crop, id: key.slice(PREFIX.length) }))
    .sort((one, two) => one.at - two.at || (one.id < two.id ? -1 : 1));
}

/** The frame of that id, or null where it is gone. */
export function readCrop(doc: Y.Doc, id: string): KeptCrop | null {
  const crop = readEntries(doc, 'plan', z.literal(`${PREFIX}${id}`), LiveCrop).get(`${PREFIX}${id}`);
  return crop ? { ...crop, id } : null;
}

/** Keeps a frame, or replaces it. Whether it is large enough to paint from is asked before: `crops/check-crop`. */
export function putCrop(doc: Y.Doc, id: string, crop: LiveCrop): void {
  putEntry(doc, 'plan', `${PREFIX}${id}`, crop);
}

/** Changes parts of a kept frame; nothing where it is gone. */
export function changeCrop(doc: Y.Doc, id: string, change: Partial<LiveCrop>): void {
  const kept = readCrop(doc, id);
  if (!kept) return;
  const { id: _, ...crop } = kept;
  putCrop(doc, id, { ...crop, ...change });
}

export function removeCrop(doc: Y.Doc, id: string): void {
  putEntry(doc, 'plan', `${PREFIX}${id}`, null);
}
