/**
 * What came into a live document after somebody last saw it, told by the document's own counting and not by clocks.
 *
 * A state vector says how many changes of each writer a person had. An entry written later than that is new to them,
 * also when it was made offline long before and only arrived now. In the flow: stored room + what was seen -> [news] ->
 * access/since. Pure.
 */
import * as Y from 'yjs';

/** How far a document was seen: writer -> how many of their changes. */
export type Seen = ReadonlyMap<number, number>;

/** @returns Null when the bytes are no state vector. */
export function seenFrom(bytes: Uint8Array): Seen | null {
  try {
    return Y.decodeStateVector(bytes);
  } catch {
    return null;
  }
}

/** How far a document goes now. */
export function seenWhole(doc: Y.Doc): Seen {
  return Y.decodeStateVector(Y.encodeStateVector(doc));
}

/** Whether somebody who saw this far has seen everything in the document. */
export function sawAll(doc: Y.Doc, seen: Seen): boolean {
  return [...seenWhole(doc)].every(([writer, count]) => count <= (seen.get(writer) ?? 0));
}

/** Keys of a root map whose present value was written after what was seen. */
export function newKeys(doc: Y.Doc, root: string, seen: Seen): string[] {
  // Which change wrote an entry is known to the map's items alone; Yjs has no other way to ask for it.
  return [...doc.getMap(root)._map].flatMap(([key, item]) => {
    const { client, clock } = item.id;
    return !item.deleted && clock + item.length > (seen.get(client) ?? 0) ? [key] : [];
  });
}
