/**
 * Nods: somebody agrees with a remark. They are names, never a number, and nothing is ordered by them.
 *
 * In the flow: `nods` of the marks room -> [nods] -> talk. A nod whose mark is gone is passed over. Pure apart from the
 * document given.
 */
import type * as Y from 'yjs';
import { z } from 'zod/mini';
import { putEntry, readEntries } from './document.ts';
import { LiveNodKey } from './layout.ts';

/** Key of one person's nod at one mark. */
export function nodKey(markId: string, personId: string): string {
  return `${markId}/${personId}`;
}

/** The two ids in a well-formed key. */
export function nodParts(key: string): { markId: string; personId: string } {
  const cut = key.indexOf('/');
  return { markId: key.slice(0, cut), personId: key.slice(cut + 1) };
}

/** Mark id → the ids of those who nod at it, in order of id. */
export function readNods(doc: Y.Doc): Map<string, string[]> {
  const nods = new Map<string, string[]>();
  for (const key of [...readEntries(doc, 'nods', LiveNodKey, z.literal(true)).keys()].sort()) {
    const { markId, personId } = nodParts(key);
    nods.set(markId, [...(nods.get(markId) ?? []), personId]);
  }
  return nods;
}

/** @param nods Whether the person nods at the mark from now on. */
export function setNod(doc: Y.Doc, markId: string, personId: string, nods: boolean): void {
  putEntry(doc, 'nods', nodKey(markId, personId), nods ? true : null);
}
