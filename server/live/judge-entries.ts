/**
 * Whether a writer may leave the touched entries as they now are: root key, author, shape, number.
 *
 * In the flow: effect → [judgeEntries] → guard. Pure.
 */
import type * as Y from 'yjs';
import type { ClassState } from '../core/class/state.ts';
import { type RoomKind, TEXT_ROOT } from '../core/live/document.ts';
import type { TouchedEntry } from '../core/live/effect.ts';
import type { RoomName } from '../core/live/layout.ts';
import { mayWrite, type Writer } from '../core/live/permission.ts';
import { SHAPES, textFits } from '../core/live/shapes.ts';
import type { Refusal } from '../core/live/wire.ts';
import { refusedByClass } from './judge-class.ts';
import { type MarksBefore, mayTouchMark, mayTouchNod } from './judge-marks.ts';
import { REFUSALS } from './sentences.ts';

export interface Judgement {
  /** The shadow, after the update. */
  doc: Y.Doc;
  room: RoomName;
  kind: RoomKind;
  /** What the marks, the leave to sketch and the class were before the update. */
  before: MarksBefore & { class: ClassState };
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

function mayTouch({ doc, room, kind, before, writer }: Judgement, entry: TouchedEntry): Refusal | null {
  const { root, key } = entry;
  if (writer === null) return null;
  if (!mayWrite(writer, kind, root)) {
    const serversOwn = root === 'result' || root === 'kept';
    return serversOwn ? REFUSALS.serverOnly() : REFUSALS.mayNotWrite();
  }
  const gone = key !== null && !doc.getMap(root).has(key);
  const late = refusedByClass({ state: before.class, room, writer, entry, gone, nowMs: Date.now() });
  if (late) return late;
  if (kind !== 'marks' || key === null) return null;
  return root === 'nods' ? mayTouchNod(writer, key) : mayTouchMark(doc, before, writer, key);
}

function fits(
  { doc, kind, before }: Judgement,
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
  const count = root === 'marks' ? before.authors.count + touchedCount : map.size;
  return count > shape.most ? REFUSALS.tooManyEntries(root, shape.most) : null;
}
