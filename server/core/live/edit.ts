/**
 * Writing to a live document: one named origin, one transaction per act.
 *
 * Every writer of `core/live` goes through `edit`. Pure apart from the document given.
 */
import type * as Y from 'yjs';

/** Transaction origin of edits made through this folder; undo tracks it and nothing else. */
export const LOCAL_EDIT = Symbol('local edit');

/** One transaction, hence one update: others see all of it or nothing. */
export function edit<T>(doc: Y.Doc, change: () => T): T {
  return doc.transact(change, LOCAL_EDIT);
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
