/**
 * The marks of one document, parsed once and again only where something changed.
 *
 * In the flow: marks document -> [mark-reader] -> views on the screen. A board may hold thousands of marks, and a
 * mark that stayed as it was keeps its identity, so that nothing of it is drawn again. Pure but for its own memory.
 */
import * as Y from 'yjs';
import type { BoardView } from '#server/core/contract/responses.ts';
import { type PictureRemarks, sightOf } from '#server/core/live/mark-sight.ts';
import { type Mark, parseMark, rootsOf } from '#server/core/live/marks.ts';
import { mayChangeMark, type Writer } from '#server/core/live/permission.ts';
import type { MarkView } from './mark-types.ts';
import { marksShownOn } from './marks-shown.ts';

export class MarkReader {
  readonly #map: Y.Map<unknown>;
  readonly #parsed = new Map<string, Mark>();
  readonly #changed = new Set<string>();
  #marks: Mark[] | null = null;
  #views: { marks: Mark[]; from: ShownFrom; views: readonly MarkView[] } | null = null;

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

  /** Marks with their numbers on their picture, their authors' names and what this person may do and see. */
  views(from: ShownFrom): readonly MarkView[] {
    const marks = this.marks();
    const kept = this.#views;
    if (kept?.marks === marks && kept.from.board === from.board && kept.from.remarks === from.remarks) {
      return kept.views;
    }
    const before = new Map(kept?.views.map((view) => [view.id, view]));
    const earlier = new Map(kept?.marks.map((mark) => [mark.id, mark]));
    const views = viewsOf(marks, from).map(({ mark, ...own }) => {
      const last = before.get(mark.id);
      const same = last !== undefined && earlier.get(mark.id) === mark && sameView(last, own);
      return same ? last : { ...mark, ...own };
    });
    const asBefore =
      kept?.views.length === views.length && kept.views.every((view, at) => view === views[at]);
    this.#views = { marks, from, views: asBefore && kept ? kept.views : views };
    return this.#views.views;
  }
}

/** What the views are made from beside the marks. */
export interface ShownFrom {
  board: BoardView;
  writer: Writer;
  /** What is said of the remarks on each picture; null where it is not known yet. */
  remarks: ReadonlyMap<string, PictureRemarks | null>;
}

/** What a view adds to its mark. */
type Own = Pick<MarkView, 'number' | 'authorName' | 'mine' | 'sight'>;

/** Whether two views of one unchanged mark show the same. */
function sameView(one: Own, two: Own): boolean {
  const { number, authorName, mine, sight } = two;
  return one.number === number && one.authorName === authorName && one.mine === mine && one.sight === sight;
}

function namesOn(board: BoardView): Map<string, string> {
  const names = new Map<string, string>();
  for (const { painter } of board.pictures) names.set(painter.id, painter.name);
  for (const person of [...board.members, board.owner, board.me]) names.set(person.id, person.name);
  return names;
}

function viewsOf(marks: Mark[], { board, writer, remarks }: ShownFrom): ({ mark: Mark } & Own)[] {
  const names = namesOn(board);
  const painters = new Map(board.pictures.map(({ id, painter }) => [id, painter.id]));
  const shown = marksShownOn(board);
  const counts = new Map<string, number>();
  return [...rootsOf(marks)].flatMap(([mark, root]) => {
    const numbered = mark === root && mark.kind !== 'reply';
    const number = numbered ? (counts.get(mark.pictureId) ?? 0) + 1 : null;
    if (number !== null) counts.set(mark.pictureId, number);
    if (!shown(mark) || !shown(root)) return [];
    const onlooker = { ...writer, paints: painters.get(mark.pictureId) === writer.personId };
    const sight = sightOf(mark, root, remarks.get(mark.pictureId) ?? null, onlooker);
    if (sight === 'away') return [];
    const authorName = names.get(mark.author) ?? '';
    return [{ mark, number, authorName, mine: mayChangeMark(writer, mark.author), sight }];
  });
}
