/**
 * Marks on pictures: pins, strokes and replies in the `marks` room.
 *
 * A mark is a Y.Map with a Y.Text, so that its author's moving and a teacher's wording at once both stay. A
 * reply is a mark of its own. Peers are not trusted: what does not parse is left out, not thrown on. Ids and
 * times come in as arguments. Pure apart from the document given.
 */
import * as Y from 'yjs';
import { Problem } from '../problem.ts';
import { edit, replaceText } from './document.ts';
import { LiveId, LiveMark, TEXT_LIMIT } from './layout.ts';
import { mayChangeMark, type Writer } from './permission.ts';

export interface Mark extends LiveMark {
  id: string;
}

/** A mark with what was answered to it, oldest first. */
export interface Thread {
  mark: Mark;
  replies: Mark[];
}

/** One entry of `marks`, or null when it does not parse. */
export function parseMark(id: string, entry: unknown): Mark | null {
  if (!(entry instanceof Y.Map) || !LiveId.safeParse(id).success) return null;
  if (!(entry.get('text') instanceof Y.Text)) return null;
  const parsed = LiveMark.safeParse(entry.toJSON());
  return parsed.success && pointsFit(parsed.data) ? { id, ...parsed.data } : null;
}

function pointsFit(mark: LiveMark): boolean {
  if (mark.kind === 'pin') return mark.points.length === 1;
  return mark.kind === 'stroke' ? mark.points.length >= 2 : mark.points.length === 0 && mark.parent !== null;
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
 * Marks with their replies. A reply to a reply joins the same thread; a reply whose mark was removed stands
 * alone, so that nobody's words vanish with somebody else's mark.
 */
export function threadsOf(marks: Mark[]): Thread[] {
  const byId = new Map(marks.map((mark) => [mark.id, mark]));
  const threads = new Map<string, Thread>();
  const rootOf = (mark: Mark): Mark => {
    const seen = new Set<string>();
    let root = mark;
    for (let parent = above(root); parent && !seen.has(parent.id); parent = above(root)) {
      seen.add(parent.id);
      root = parent;
    }
    return seen.has(mark.id) ? mark : root;
  };
  const above = (mark: Mark) => (mark.parent === null ? undefined : byId.get(mark.parent));
  for (const mark of marks) {
    if (rootOf(mark) === mark) threads.set(mark.id, { mark, replies: [] });
  }
  for (const mark of marks) {
    const root = rootOf(mark);
    if (root !== mark) threads.get(root.id)?.replies.push(mark);
  }
  return [...threads.values()];
}

/** Adds a mark as a single update. @throws Problem `live-malformed` when it is not a well-formed mark. */
export function putMark(doc: Y.Doc, mark: Mark): void {
  const { id, ...fields } = mark;
  const parsed = LiveMark.safeParse(fields);
  if (!parsed.success || !LiveId.safeParse(id).success || !pointsFit(parsed.data)) {
    throw new Problem(
      'live-malformed',
      `This mark cannot be kept: a pin has one point, a stroke 2 to 4000, and a text at most ${TEXT_LIMIT} characters.`,
    );
  }
  edit(doc, () => {
    const entry = new Y.Map<unknown>();
    for (const [key, value] of Object.entries(parsed.data)) {
      entry.set(key, key === 'text' ? new Y.Text(parsed.data.text) : value);
    }
    doc.getMap('marks').set(id, entry);
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

/**
 * Removes a mark and those of its replies that the writer may remove; others' replies stay and stand alone.
 *
 * @param writer Who removes it. Nothing happens when they may not.
 */
export function removeMark(doc: Y.Doc, id: string, writer: Writer): void {
  const marks = readMarks(doc);
  const thread = threadsOf(marks).find((each) => each.mark.id === id);
  const own = marks.find((mark) => mark.id === id);
  if (!own || !mayChangeMark(writer, own.author)) return;
  edit(doc, () => {
    for (const mark of [own, ...(thread?.replies ?? [])]) {
      if (mayChangeMark(writer, mark.author)) doc.getMap('marks').delete(mark.id);
    }
  });
}

function entryOf(doc: Y.Doc, id: string): Y.Map<unknown> | null {
  const entry = doc.getMap('marks').get(id);
  return entry instanceof Y.Map ? entry : null;
}
