/**
 * Outlines of planes: on references in the `setup` room, on a painting in its own room.
 *
 * An outline is replaced whole, in 0..1 of the upright original. Pure apart from the document given.
 */
import type * as Y from 'yjs';
import { z } from 'zod/mini';
import { Outline } from '../contract/setup.ts';
import { Problem } from '../problem.ts';
import { say } from '../say/say.ts';
import { putEntry, readEntries } from './document.ts';
import { LiveId, outlineKey } from './layout.ts';

/** Keys of `setup.outlines`: "pictureId/planeId". */
export const ReferenceOutlineKey = z.string().check(z.regex(/^[0-9A-Za-z-]{1,64}\/[0-9A-Za-z-]{1,64}$/));

/** "pictureId/planeId" → outline, for every reference. */
export function readReferenceOutlines(doc: Y.Doc): Map<string, Outline> {
  return readEntries(doc, 'outlines', ReferenceOutlineKey, Outline);
}

/** Plane id → outline, for one reference. */
export function readOutlinesOf(doc: Y.Doc, pictureId: string): Map<string, Outline> {
  const own = new Map<string, Outline>();
  for (const [key, outline] of readReferenceOutlines(doc)) {
    if (key.startsWith(`${pictureId}/`)) own.set(key.slice(pictureId.length + 1), outline);
  }
  return own;
}

/** Plane id → outline, from a painting's room. */
export function readPaintingOutlines(doc: Y.Doc): Map<string, Outline> {
  return readEntries(doc, 'outlines', LiveId, Outline);
}

/** @param outline Null removes it. @throws Problem `outline-invalid` under 3 or over 4000 points. */
export function putReferenceOutline(
  doc: Y.Doc,
  pictureId: string,
  planeId: string,
  outline: Outline | null,
): void {
  putEntry(doc, 'outlines', outlineKey(pictureId, planeId), checked(outline));
}

/** @param outline Null removes it. @throws Problem `outline-invalid` under 3 or over 4000 points. */
export function putPaintingOutline(doc: Y.Doc, planeId: string, outline: Outline | null): void {
  putEntry(doc, 'outlines', planeId, checked(outline));
}

function checked(outline: Outline | null): Outline | null {
  if (outline === null || Outline.safeParse(outline).success) return outline;
  throw new Problem(
    'outline-invalid',
    say`An outline has 3 to 4000 points and this one has ${outline.length}. Draw it around the whole plane.`,
  );
}
