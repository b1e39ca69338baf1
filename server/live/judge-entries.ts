/**
 * Whether a writer may leave the touched entries as they now are: root key, author, shape, number.
 *
 * In the flow: effect → [judgeEntries] → guard. Pure.
 */
import * as Y from 'yjs';
import { type RoomKind, TEXT_ROOT } from '../core/live/document.ts';
import { mayChangeMark, mayWrite, type Writer } from '../core/live/permission.ts';
import { SHAPES, textFits } from '../core/live/shapes.ts';
import type { Refusal } from '../core/live/wire.ts';
import type { TouchedEntry } from './effect.ts';
import type { MarkAuthors } from './mark-authors.ts';
import { REFUSALS } from './sentences.ts';

export interface Judgement {
  /** The shadow, after the update. */
  doc: Y.Doc;
  kind: RoomKind;
  /** As they were before the update. */
  authors: MarkAuthors;
  /** Null = the server itself, which may write everything that fits. */
  writer: Writer | null;
}

/** The first thing wrong, or null. */
export function judgeEntries(judgement: Judgement, touched: TouchedEntry[]): Refusal | null {
  for (const entry of touched) {
    const refused = mayTouch(judgement, entry) ?? fits(judgement, entry, touched.length);
    if (refused) return refused;
  }
  return null;
}

function mayTouch({ doc, kind, authors, writer }: Judgement, { root, key }: TouchedEntry): Refusal | null {
  if (writer === null) return null;
  if (!mayWrite(writer, kind, root)) {
    return root === 'result' ? REFUSALS.serverOnly() : REFUSALS.mayNotWrite('this');
  }
  if (root !== 'marks' || key === null) return null;
  const before = authors.of(key);
  if (before !== undefined && !mayChangeMark(writer, before)) return REFUSALS.foreignMark();
  const after = authorOf(doc.getMap('marks').get(key));
  if (after === undefined) return null;
  if (before !== undefined) return after === before ? null : REFUSALS.forgedAuthor();
  const putBack = authors.ofRemoved(key) === after && mayChangeMark(writer, String(after));
  return after === writer.personId || putBack ? null : REFUSALS.forgedAuthor();
}

function authorOf(entry: unknown): unknown {
  if (entry === undefined) return undefined;
  return entry instanceof Y.Map ? (entry.get('author') ?? null) : null;
}

function fits(
  { doc, kind, authors }: Judgement,
  { root, key }: TouchedEntry,
  touchedCount: number,
): Refusal | null {
  if (key === null) {
    return root === TEXT_ROOT && textFits(doc.getText(root)) ? null : REFUSALS.badShape(root);
  }
  const shape = SHAPES[kind][root];
  if (!shape) return REFUSALS.badShape(root);
  const map = doc.getMap(root);
  if (!map.has(key)) return null;
  if (!shape.fits(key, map.get(key))) return REFUSALS.badShape(root);
  // Counting a Y.Map walks it, so the many marks are counted by their authors, and every touched one as new.
  const count = root === 'marks' ? authors.count + touchedCount : map.size;
  return count > shape.most ? REFUSALS.tooManyEntries(root, shape.most) : null;
}
