/**
 * What an update did to a document: which entries of which root types.
 *
 * In the flow: shadow transaction → [effect] → guard; in a browser, an edit → [effect] → what waits to be sent.
 * Pure. Works from what the transaction touched, so its cost follows the update and not the document.
 */
import * as Y from 'yjs';

export interface TouchedEntry {
  root: string;
  /** Key in the root map; null when the root itself is a text that changed. */
  key: string | null;
}

/**
 * The entries a transaction changed, each once.
 *
 * @returns Null when something changed that no entry can hold: an unknown root, or a list where a map belongs.
 */
export function touchedEntries(doc: Y.Doc, transaction: Y.Transaction): TouchedEntry[] | null {
  const names = new Map<unknown, string>([...doc.share].map(([name, type]) => [type, name]));
  const touched = new Map<string, TouchedEntry>();
  for (const [type, keys] of transaction.changed) {
    const place = placeOf(type);
    const root = place === null ? undefined : names.get(place.root);
    if (place === null || root === undefined) return null;
    const found = place.key === undefined ? [...keys] : [place.key];
    for (const key of found) {
      // A text has no keys, a map has nothing else.
      if ((key === null) !== place.root instanceof Y.Text) return null;
      touched.set(`${root}\n${key ?? ''}`, { root, key });
    }
  }
  return [...touched.values()];
}

/** A type as Yjs lists it among the changed ones. */
type Changed = Parameters<Y.Transaction['changed']['get']>[0];

/** The root type above a type and the key of the root's entry it lies in; no key when it is the root. */
function placeOf(type: Changed): { root: Changed; key?: string } | null {
  let root = type;
  let item = type._item;
  if (item === null) return { root };
  let key: string | null = null;
  while (item !== null) {
    key = item.parentSub;
    if (!(item.parent instanceof Y.AbstractType)) return null;
    root = item.parent as Changed; // just checked; the event type is all that differs
    item = root._item;
  }
  return key === null ? null : { root, key };
}
