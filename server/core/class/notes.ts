/**
 * First impressions in a person's own room, and the sentence a painter says back; reading and writing.
 *
 * In the flow: silent look -> [notes] -> room `silent/<personId>`, kept from everybody else until revealed. A text is
 * replaced whole: its one author writes it. Pure apart from the document given.
 */
import type * as Y from 'yjs';
import { putEntry } from '../live/document.ts';
import { IMPRESSION_LIMIT, noteFits, saidFits } from './shapes.ts';

/** What this person saw first in that painting; empty where they wrote nothing. */
export function readNote(doc: Y.Doc, pictureId: string): string {
  const text = doc.getMap('notes').get(pictureId);
  return noteFits(pictureId, text) ? String(text) : '';
}

/** @param text Cut at 400 characters; an empty one takes the note away. */
export function writeNote(doc: Y.Doc, pictureId: string, text: string): void {
  putEntry(doc, 'notes', pictureId, text.slice(0, IMPRESSION_LIMIT) || null);
}

/** What the painter said they will do first; empty where they said nothing. */
export function readSaid(doc: Y.Doc): string {
  const text = doc.getMap('said').get('first');
  return saidFits('first', text) ? String(text) : '';
}

/** @param text Cut at 400 characters; an empty one takes it away. */
export function writeSaid(doc: Y.Doc, text: string): void {
  putEntry(doc, 'said', 'first', text.slice(0, IMPRESSION_LIMIT) || null);
}
