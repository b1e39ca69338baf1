/**
 * Two people moved points of one outline in the same moment: both moves stay.
 *
 * An outline is stored whole, so of two writes that crossed on their way one would stand and the other be lost.
 * Whoever's write lost puts their moved points onto the one that stands. A write that had seen ours is an
 * answer to it, not a crossing, and is left alone. In the flow: writers -> [crossed-moves] -> the same document.
 */
import * as Y from 'yjs';
import { reapplied, same } from '#app/_easel/reapplied.ts';
import { Outline } from '#server/core/contract/setup.ts';

/** A write of ours: the entry it made, the outline it began from, and what it wrote. */
interface OwnWrite {
  entry: Y.ID;
  before: Outline;
  mine: Outline;
}

const watched = new WeakMap<Y.Map<unknown>, Map<string, OwnWrite>>();

/**
 * Remembers a write just made, and mends it should another have crossed it.
 * @param put Writes an outline under the same key; called again after a crossing.
 */
export function mendWhenCrossed(
  outlines: Y.Map<unknown>,
  key: string,
  before: Outline,
  put: (outline: Outline) => void,
): void {
  const entry = outlines._map.get(key);
  const mine = Outline.safeParse(outlines.get(key));
  if (!entry || !mine.success) return;
  ownWritesIn(outlines, put).set(key, { entry: entry.lastId, before, mine: mine.data });
}

/** Forgets a write of ours: what is written next is an outline of its own, not a move. */
export function forgetMove(outlines: Y.Map<unknown>, key: string): void {
  watched.get(outlines)?.delete(key);
}

function ownWritesIn(outlines: Y.Map<unknown>, put: (outline: Outline) => void): Map<string, OwnWrite> {
  const known = watched.get(outlines);
  if (known) return known;
  const own = new Map<string, OwnWrite>();
  watched.set(outlines, own);
  outlines.observe((event, transaction) => {
    if (transaction.local) return;
    for (const key of event.keysChanged) {
      const write = own.get(key);
      if (!write || stands(outlines, key, write)) continue;
      const mended = mend(outlines, key, write);
      own.delete(key);
      // After this transaction, so that the mend is an update of its own.
      if (mended) queueMicrotask(() => put(mended));
    }
  });
  return own;
}

function stands(outlines: Y.Map<unknown>, key: string, { entry }: OwnWrite): boolean {
  const standing = outlines._map.get(key);
  return standing !== undefined && Y.compareIDs(standing.lastId, entry);
}

/** The outline with both moves, or null when nothing crossed or nothing was lost. */
function mend(outlines: Y.Map<unknown>, key: string, { entry, before, mine }: OwnWrite): Outline | null {
  const standing = outlines._map.get(key);
  if (!standing || standing.deleted || Y.compareIDs(standing.origin, entry)) return null;
  const now = Outline.safeParse(outlines.get(key));
  if (!now.success) return null;
  const both = reapplied(before, mine, now.data);
  return same(both, now.data) ? null : both;
}
