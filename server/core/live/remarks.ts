/**
 * What is said of the remarks on one picture: which are hidden, whether others may sketch over it, what became of each.
 *
 * In the flow: a painting's room, for references the setup room -> [remarks] -> mark-sight, screens, the guard of
 * sketches. Readers leave out what does not parse. Pure apart from the document given.
 */
import type * as Y from 'yjs';
import { putEntry, readEntries } from './document.ts';
import { type LiveAnswer, LiveHidden, LiveId, type MarkState } from './layout.ts';

/** Ids of the marks that are hidden. */
export function readHidden(doc: Y.Doc): Set<string> {
  return new Set(readEntries(doc, 'hidden', LiveId, LiveHidden).keys());
}

export function setHidden(doc: Y.Doc, markId: string, hidden: boolean): void {
  putEntry(doc, 'hidden', markId, hidden ? true : null);
}

/** Whether the painter lets others sketch over this painting. */
export function allowsSketch(painting: Y.Doc): boolean {
  return painting.getMap('allows').get('sketch') === true;
}

export function setAllowsSketch(painting: Y.Doc, allowed: boolean): void {
  putEntry(painting, 'allows', 'sketch', allowed ? true : null);
}

/** What became of a mark. What only a card can be answered with counts as open. */
export function markState(answer: LiveAnswer | undefined): MarkState {
  const state = answer?.state;
  return state === 'tried' || state === 'done' || state === 'declined' ? state : 'open';
}
