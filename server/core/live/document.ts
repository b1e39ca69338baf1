/**
 * The live document of a room: its root types, the origin of local edits, reading by a shape.
 *
 * Browser Y.Doc ↔ room ↔ store; the pipeline and the tests build documents here too. Every writer of
 * `core/live` goes through `edit`. Pure apart from a document given.
 */
import * as Y from 'yjs';
import type { z } from 'zod/mini';
import { ROOT_KEYS, type RoomName } from './layout.ts';

/** Transaction origin of edits made through this folder; undo tracks it and nothing else. */
export const LOCAL_EDIT = Symbol('local edit');

/** One transaction, hence one update: others see all of it or nothing. */
export function edit<T>(doc: Y.Doc, change: () => T): T {
  return doc.transact(change, LOCAL_EDIT);
}

export type RoomKind = keyof typeof ROOT_KEYS;

/** @param room For example `painting/<pictureId>`, whose kind is `painting`. */
export function roomKind(room: RoomName): RoomKind {
  if (room === 'setup' || room === 'marks' || room === 'class') return room;
  return room.startsWith('silent/') ? 'silent' : 'painting';
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
  keyShape: z.ZodMiniType<string>,
  valueShape: z.ZodMiniType<T>,
): Map<string, T> {
  const entries = new Map<string, T>();
  for (const [key, value] of doc.getMap(root)) {
    const parsed = valueShape.safeParse(value);
    if (parsed.success && keyShape.safeParse(key).success) entries.set(key, parsed.data);
  }
  return entries;
}

/** Sets or, when the value is null, removes one entry of a root map. */
export function putEntry(doc: Y.Doc, root: string, key: string, value: unknown): void {
  edit(doc, () => {
    if (value === null) doc.getMap(root).delete(key);
    else doc.getMap(root).set(key, value);
  });
}

/** Changes a text by the shortest single replacement, so that two people typing at once keep both. */
export function replaceText(text: Y.Text, next: string): void {
  const before = text.toString();
  const shorter = Math.min(before.length, next.length);
  let head = 0;
  while (head < shorter && before[head] === next[head]) head++;
  let tail = 0;
  while (tail < shorter - head && before[before.length - 1 - tail] === next[next.length - 1 - tail]) tail++;
  if (before.length > head + tail) text.delete(head, before.length - head - tail);
  if (next.length > head + tail) text.insert(head, next.slice(head, next.length - tail));
}
