/**
 * The live document of a room: its root types, and reading by a shape.
 *
 * Browser Y.Doc ↔ room ↔ store; the pipeline and the tests build documents here too. Pure: values in, values
 * out; only a document given is changed.
 */
import * as Y from 'yjs';
import type { z } from 'zod';
import { ROOT_KEYS, type RoomName } from './layout.ts';

export type RoomKind = keyof typeof ROOT_KEYS;

/** @param room For example `painting/<pictureId>`, whose kind is `painting`. */
export function roomKind(room: RoomName): RoomKind {
  return room === 'setup' || room === 'marks' ? room : 'painting';
}

/** The one root key that is a text; all others are maps. */
export const TEXT_ROOT = 'intention';

/** Names the root types, so that what arrives finds the right kind waiting for it. */
export function declareRoots(doc: Y.Doc, room: RoomName): Y.Doc {
  for (const key of ROOT_KEYS[roomKind(room)]) {
    if (key === TEXT_ROOT) doc.getText(key);
    else doc.getMap(key);
  }
  return doc;
}

/**
 * A document from stored updates, in any order. Deleted content is forgotten on the way.
 *
 * @throws Error when an update is not one: the store was damaged.
 */
export function documentFrom(room: RoomName, updates: Iterable<Uint8Array>): Y.Doc {
  const doc = declareRoots(new Y.Doc({ gc: true }), room);
  doc.transact(() => {
    for (const update of updates) Y.applyUpdate(doc, update);
  });
  return doc;
}

/** The entries of a root map whose key and value parse; the rest is left out. */
export function readEntries<T>(
  doc: Y.Doc,
  root: string,
  keyShape: z.ZodType<string>,
  valueShape: z.ZodType<T>,
): Map<string, T> {
  const entries = new Map<string, T>();
  for (const [key, value] of doc.getMap(root)) {
    const parsed = valueShape.safeParse(value);
    if (parsed.success && keyShape.safeParse(key).success) entries.set(key, parsed.data);
  }
  return entries;
}
