/**
 * Whether a writer may leave the touched marks and nods as they now are: author, name, leave to sketch.
 *
 * In the flow: effect → judge-entries → [judge-marks]. Pure.
 */
import * as Y from 'yjs';
import { nodParts } from '../core/live/nods.ts';
import { mayChangeMark, mayNod, type Writer } from '../core/live/permission.ts';
import type { Refusal } from '../core/live/wire.ts';
import type { MarkAuthors } from './mark-authors.ts';
import { REFUSALS } from './sentences.ts';

export interface MarksBefore {
  /** As they were before the update. */
  authors: MarkAuthors;
  /** Whether the painter lets others sketch over that painting. */
  allowsSketch(pictureId: string): boolean;
}

/** @param doc The shadow, after the update. @param key Id of the touched mark. */
export function mayTouchMark(
  doc: Y.Doc,
  { authors, allowsSketch }: MarksBefore,
  writer: Writer,
  key: string,
): Refusal | null {
  const entry = doc.getMap('marks').get(key);
  return mayTouchAs(entry, authors, writer, key) ?? mayLeaveSketch(entry, allowsSketch);
}

/** @param key Of the touched nod. */
export function mayTouchNod(writer: Writer, key: string): Refusal | null {
  return mayNod(writer, nodParts(key).personId) ? null : REFUSALS.foreignNod();
}

function mayTouchAs(entry: unknown, authors: MarkAuthors, writer: Writer, key: string): Refusal | null {
  const before = authors.of(key);
  if (before !== undefined && !mayChangeMark(writer, before)) return REFUSALS.foreignMark();
  const after = authorOf(entry);
  if (after === undefined) return null;
  if (before !== undefined) return after === before ? null : REFUSALS.forgedAuthor();
  const putBack = authors.ofRemoved(key) === after && mayChangeMark(writer, String(after));
  return after === writer.personId || putBack ? null : REFUSALS.forgedAuthor();
}

function authorOf(entry: unknown): unknown {
  if (entry === undefined) return undefined;
  return entry instanceof Y.Map ? (entry.get('author') ?? null) : null;
}

/** A sketch may be made and changed only where it is allowed; it may always be removed. */
function mayLeaveSketch(entry: unknown, allowsSketch: MarksBefore['allowsSketch']): Refusal | null {
  if (!(entry instanceof Y.Map) || entry.get('kind') !== 'sketch') return null;
  return allowsSketch(String(entry.get('pictureId'))) ? null : REFUSALS.noSketch();
}
