/**
 * From the open documents to what the screen shows: planes, outlines, marks, corrections.
 *
 * In the flow: board-store -> [read-board] -> useBoardLive. Each part is worked out again only when its
 * document changed, so that nothing redraws that stayed the same. Pure but for its own memory.
 */
import type * as Y from 'yjs';
import type { BoardView } from '#server/core/contract/responses.ts';
import type { Condition, FractionPoint, LabColour, Outline } from '#server/core/contract/setup.ts';
import { readAnswers, readCards } from '#server/core/live/card-answers.ts';
import type { LiveAnswer, LiveCard, LivePhoto } from '#server/core/live/layout.ts';
import type { PictureRemarks } from '#server/core/live/mark-sight.ts';
import { readOutlinesOf, readPaintingOutlines } from '#server/core/live/outlines.ts';
import { readFocus, readIntention, readMeant, readPhoto, readResult } from '#server/core/live/painting.ts';
import type { Writer } from '#server/core/live/permission.ts';
import { readPlanes } from '#server/core/live/planes.ts';
import { readAir, readConditions, readUnreliable } from '#server/core/live/scene.ts';
import type { PlaneView } from './board-live-types.ts';
import { MarkReader } from './mark-reader.ts';
import type { MarkView } from './mark-types.ts';
import { RemarkReader } from './remark-reader.ts';

/** Works `read` out once per state of a document. */
export class PerDocument<T> {
  readonly #read: (doc: Y.Doc, key: string) => T;
  readonly #kept = new WeakMap<Y.Doc, Map<string, T>>();

  constructor(read: (doc: Y.Doc, key: string) => T) {
    this.#read = read;
  }

  of(doc: Y.Doc, key = ''): T {
    let kept = this.#kept.get(doc);
    if (!kept) {
      const fresh = new Map<string, T>();
      this.#kept.set(doc, fresh);
      doc.on('update', () => fresh.clear());
      kept = fresh;
    }
    const known = kept.get(key);
    if (known !== undefined) return known;
    const value = this.#read(doc, key);
    kept.set(key, value);
    return value;
  }
}

const NO_OUTLINES: ReadonlyMap<string, Outline> = new Map();
const NO_PHOTO: LivePhoto = {};
const NO_MARKS: readonly MarkView[] = [];
const NONE: ReadonlyMap<string, never> = new Map<string, never>();
const NO_CONDITIONS: readonly Condition[] = [];

/** The readers of one board's documents; the answers keep their identity while nothing changed. */
export class BoardReaders {
  readonly #planes = new PerDocument(planeViews);
  readonly #referenceOutlines = new PerDocument((doc, pictureId) => readOutlinesOf(doc, pictureId));
  readonly #paintingOutlines = new PerDocument((doc) => readPaintingOutlines(doc));
  readonly #photo = new PerDocument((doc) => readPhoto(doc));
  readonly #conditions = new PerDocument((doc) => readConditions(doc));
  readonly #air = new PerDocument((doc) => readAir(doc));
  readonly #focus = new PerDocument((doc) => readFocus(doc));
  readonly #meant = new PerDocument((doc) => readMeant(doc));
  readonly #answers = new PerDocument((doc) => readAnswers(doc));
  readonly #cards = new PerDocument((doc) => readCards(doc));
  readonly #markReaders = new WeakMap<Y.Doc, MarkReader>();
  /** What is said of marks: hidden, nodded at. */
  readonly said = new RemarkReader();

  planes(setup: Y.Doc | null): readonly PlaneView[] {
    return setup ? this.#planes.of(setup) : [];
  }

  outlines(
    kind: 'reference' | 'painting',
    doc: Y.Doc | null,
    pictureId: string,
  ): ReadonlyMap<string, Outline> {
    if (!doc) return NO_OUTLINES;
    return kind === 'reference' ? this.#referenceOutlines.of(doc, pictureId) : this.#paintingOutlines.of(doc);
  }

  photo(painting: Y.Doc | null): LivePhoto {
    return painting ? this.#photo.of(painting) : NO_PHOTO;
  }

  intention(painting: Y.Doc | null): string {
    return painting ? readIntention(painting) : '';
  }

  conditions(setup: Y.Doc | null): readonly Condition[] {
    return setup ? this.#conditions.of(setup) : NO_CONDITIONS;
  }

  air(setup: Y.Doc | null): ReadonlyMap<string, LabColour> {
    return setup ? this.#air.of(setup) : NONE;
  }

  focus(painting: Y.Doc | null): FractionPoint | null {
    return painting ? this.#focus.of(painting) : null;
  }

  meant(painting: Y.Doc | null): ReadonlyMap<string, string> {
    return painting ? this.#meant.of(painting) : NONE;
  }

  answers(painting: Y.Doc | null): ReadonlyMap<string, LiveAnswer> {
    return painting ? this.#answers.of(painting) : NONE;
  }

  cards(painting: Y.Doc | null): ReadonlyMap<string, LiveCard> {
    return painting ? this.#cards.of(painting) : NONE;
  }

  result(painting: Y.Doc | null): { number: number; pending: string | null } | null {
    return painting ? readResult(painting) : null;
  }

  /** @param remarks As `RemarkReader` gives them. */
  marks(
    doc: Y.Doc | null,
    board: BoardView,
    remarks: ReadonlyMap<string, PictureRemarks | null>,
  ): readonly MarkView[] {
    if (!doc) return NO_MARKS;
    const reader = this.#markReaders.get(doc) ?? new MarkReader(doc);
    this.#markReaders.set(doc, reader);
    return reader.views({ board, writer: writerOf(board, null), remarks });
  }
}

function planeViews(setup: Y.Doc): readonly PlaneView[] {
  const unreliable = readUnreliable(setup);
  return readPlanes(setup).map(({ id, name, kind, tilt }, at) => ({
    ...{ id, name, kind, tilt },
    number: at + 1,
    unreliable: unreliable.get(id) ?? null,
  }));
}

/** Who this person is to the permissions; `painterId` = whose picture the room is about, null elsewhere. */
export function writerOf(board: BoardView, painterId: string | null): Writer {
  return { personId: board.me.id, role: board.role, paints: painterId === board.me.id };
}
