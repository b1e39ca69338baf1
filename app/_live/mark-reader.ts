/**
 * The marks of one document, parsed once and again only where something changed.
 *
 * In the flow: marks document -> [mark-reader] -> views on the screen. A board may hold thousands of marks, and a
 * mark that stayed as it was keeps its identity, so that nothing of it is drawn again. Pure but for its own memory.
 */
import * as Y from 'yjs';
import type { BoardView } from '#server/core/contract/responses.ts';
import { type Mark, parseMark } from '#server/core/live/marks.ts';
import { mayChangeMark, type Writer } from '#server/core/live/permission.ts';
import type { MarkView } from './board-live-types.ts';
import { marksShownOn } from './marks-shown.ts';

export class MarkReader {
  readonly #map: Y.Map<unknown>;
  readonly #parsed = new Map<string, Mark>();
  readonly #changed = new Set<string>();
  #marks: Mark[] | null = null;
  #views: { marks: Mark[]; board: BoardView; views: MarkView[] } | null = null;

  constructor(doc: Y.Doc) {
    this.#map = doc.getMap('marks');
    for (const id of this.#map.keys()) this.#changed.add(id);
    this.#map.observeDeep((events) => {
      for (const event of events) {
        const [id] = event.path;
        if (typeof id === 'string') this.#changed.add(id);
        else if (event instanceof Y.YMapEvent) for (const key of event.keysChanged) this.#changed.add(key);
      }
      this.#marks = null;
    });
  }

  /** Every well-formed mark by time, then id: as `readMarks` of core. */
  marks(): Mark[] {
    if (this.#marks) return this.#marks;
    for (const id of this.#changed) {
      const mark = parseMark(id, this.#map.get(id));
      if (mark) this.#parsed.set(id, mark);
      else this.#parsed.delete(id);
    }
    this.#changed.clear();
    this.#marks = [...this.#parsed.values()].sort(
      (one, two) => one.at - two.at || (one.id < two.id ? -1 : 1),
    );
    return this.#marks;
  }

  /** Marks with their numbers on their picture, their authors' names and whether this person may change them. */
  views(board: BoardView, writer: Writer): readonly MarkView[] {
    const marks = this.marks();
    const kept = this.#views;
    if (kept?.marks === marks && kept.board === board) return kept.views;
    const before = new Map(kept?.views.map((view) => [view.id, view]));
    const earlier = new Map(kept?.marks.map((mark) => [mark.id, mark]));
    const now = new Map(marks.map((mark) => [mark.id, mark]));
    const views = viewsOf(marks, board, writer)
      .filter(marksShownOn(board))
      .map((view) => {
        const last = before.get(view.id);
        return last && earlier.get(view.id) === now.get(view.id) && sameView(last, view) ? last : view;
      });
    this.#views = { marks, board, views };
    return views;
  }
}

/** Whether two views of one unchanged mark show the same. */
function sameView(one: MarkView, two: MarkView): boolean {
  return one.number === two.number && one.authorName === two.authorName && one.mine === two.mine;
}

function viewsOf(marks: Mark[], board: BoardView, writer: Writer): MarkView[] {
  const names = new Map<string, string>();
  for (const { painter } of board.pictures) names.set(painter.id, painter.name);
  for (const person of [...board.members, board.owner, board.me]) names.set(person.id, person.name);
  const counts = new Map<string, number>();
  return marks.map((mark) => {
    const number = mark.kind === 'reply' ? null : (counts.get(mark.pictureId) ?? 0) + 1;
    if (number !== null) counts.set(mark.pictureId, number);
    const authorName = names.get(mark.author) ?? '';
    return { ...mark, number, authorName, mine: mayChangeMark(writer, mark.author) };
  });
}
