/**
 * Marks on pictures, and the replies to them, in the `marks` room.
 *
 * A mark is a Y.Map with a Y.Text, so that its author's moving and a teacher's wording at once both stay. A
 * reply is a mark of its own, and so is every stroke of a sketch. Peers are not trusted: what does not parse is left out, not thrown on. Ids and
 * times come in as arguments. Pure apart from the document given.
 */
import * as Y from 'yjs';
import { Problem } from '../problem.ts';
import { say } from '../say/say.ts';
import { edit, replaceText } from './document.ts';
import { LiveId, LiveMark, TEXT_LIMIT } from './layout.ts';
import { fitsKind } from './mark-kinds.ts';
import { mayChangeMark, type Writer } from './permission.ts';

export interface Mark extends LiveMark {
  id: string;
}

/** A mark with what was answered to it, oldest first. */
export interface Thread {
  mark: Mark;
  replies: Mark[];
  /** Of a sketch: the strokes after its first one. */
  strokes: Mark[];
}

/** One entry of `marks`, or null when it does not parse. */
export function parseMark(id: string, entry: unknown): Mark | null {
  if (!(entry instanceof Y.Map) || !LiveId.safeParse(id).success) return null;
  if (!(entry.get('text') instanceof Y.Text)) return null;
  const parsed = LiveMark.safeParse(entry.toJSON());
  return parsed.success && fitsKind(parsed.data) ? { id, ...parsed.data } : null;
}

/** Every well-formed mark by time, then id, so that all screens list them alike. */
export function readMarks(doc: Y.Doc): Mark[] {
  const marks: Mark[] = [];
  for (const [id, entry] of doc.getMap('marks')) {
    const mark = parseMark(id, entry);
    if (mark) marks.push(mark);
  }
  return marks.sort((one, two) => one.at - two.at || (one.id < two.id ? -1 : 1));
}

/**
 * The mark that each mark belongs to: itself, or the first one of its thread or sketch.
 *
 * A reply to a reply joins the same thread. A stroke of a sketch joins the layer it names when that is a sketch by the
 * same person on the same picture, and else is a layer of its own. What names a mark that is gone stands alone.
 */
export function rootsOf(marks: readonly Mark[]): Map<Mark, Mark> {
  const byId = new Map(marks.map((mark) => [mark.id, mark]));
  const above = (mark: Mark): Mark | undefined => {
    const parent = mark.parent === null ? undefined : byId.get(mark.parent);
    if (mark.kind !== 'sketch' || parent === undefined) return parent;
    const joins = parent.kind === 'sketch' && parent.author === mark.author;
    return joins && parent.pictureId === mark.pictureId ? parent : undefined;
  };
  const rootOf = (mark: Mark): Mark => {
    const seen = new Set<string>();
    let root = mark;
    for (let parent = above(root); parent && !seen.has(parent.id); parent = above(root)) {
      seen.add(parent.id);
      root = parent;
    }
    return seen.has(mark.id) ? mark : root;
  };
  return new Map(marks.map((mark) => [mark, rootOf(mark)]));
}

/**
 * Marks with their replies and strokes. A reply whose mark was removed stands alone, so that nobody's words vanish with
 * somebody else's mark.
 */
export function threadsOf(marks: readonly Mark[]): Thread[] {
  const threads = new Map<Mark, Thread>();
  const roots = rootsOf(marks);
  for (const [mark, root] of roots) if (root === mark) threads.set(mark, { mark, replies: [], strokes: [] });
  for (const [mark, root] of roots) {
    if (root !== mark) threads.get(root)?.[mark.kind === 'sketch' ? 'strokes' : 'replies'].push(mark);
  }
  return [...threads.values()];
}

/** Adds a mark as a single update. @throws Problem `live-malformed` when it is not a well-formed mark. */
export function putMark(doc: Y.Doc, mark: Mark): void {
  const { id, ...fields } = mark;
  const parsed = LiveMark.safeParse(fields);
  if (!parsed.success || !LiveId.safeParse(id).success || !fitsKind(parsed.data)) {
    throw new Problem(
      'live-malformed',
      say`This mark cannot be kept: a pin has one point, an arrow two, a line 2 to 4000, and a text at most ${TEXT_LIMIT} characters.`,
    );
  }
  edit(doc, () => {
    const entry = new Y.Map<unknown>();
    for (const [key, value] of Object.entries(parsed.data)) {
      if (value !== undefined) entry.set(key, key === 'text' ? new Y.Text(parsed.data.text) : value);
    }
    doc.getMap('marks').set(id, entry);
  });
}

/** Adds several as a single update. @throws Problem `live-malformed` when one of them is not a well-formed mark. */
export function putMarks(doc: Y.Doc, marks: readonly Mark[]): void {
  edit(doc, () => {
    for (const mark of marks) putMark(doc, mark);
  });
}

/** @param text Cut at 4000 characters. An unknown id changes nothing. */
export function editMarkText(doc: Y.Doc, id: string, text: string): void {
  edit(doc, () => {
    const current = entryOf(doc, id)?.get('text');
    if (current instanceof Y.Text) replaceText(current, text.slice(0, TEXT_LIMIT));
  });
}

/** @param points Replace the old ones whole. An unknown id changes nothing. */
export function moveMark(doc: Y.Doc, id: string, points: LiveMark['points']): void {
  edit(doc, () => {
    entryOf(doc, id)?.set('points', points);
  });
}

/** @param planeId The plane it is about from now on; null = none. An unknown id changes nothing. */
export function setMarkPlane(doc: Y.Doc, id: string, planeId: string | null): void {
  edit(doc, () => {
    entryOf(doc, id)?.set('planeId', planeId);
  });
}

/**
 * Removes a mark and those of its replies and strokes that the writer may remove; others' replies stay and stand alone.
 *
 * @param writer Who removes it. Nothing happens when they may not.
 */
export function removeMark(doc: Y.Doc, id: string, writer: Writer): void {
  const marks = readMarks(doc);
  const thread = threadsOf(marks).find((each) => each.mark.id === id);
  const own = marks.find((mark) => mark.id === id);
  if (!own || !mayChangeMark(writer, own.author)) return;
  edit(doc, () => {
    for (const mark of [own, ...(thread?.replies ?? []), ...(thread?.strokes ?? [])]) {
      if (mayChangeMark(writer, mark.author)) doc.getMap('marks').delete(mark.id);
    }
  });
}

function entryOf(doc: Y.Doc, id: string): Y.Map<unknown> | null {
  const entry = doc.getMap('marks').get(id);
  return entry instanceof Y.Map ? entry : null;
}
