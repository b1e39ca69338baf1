/**
 * What was said on a board, read from the store as one person may see it: marks that are theirs to see, and for each
 * picture its answers and its cards.
 *
 * In the flow: queue, since -> [said-on-board] -> live-documents. Rooms are read once each. IO: the database.
 */
import type * as Y from 'yjs';
import type { MeasureDocument } from '../core/contract/measures.ts';
import type { BoardView, PictureView } from '../core/contract/responses.ts';
import { readAnswers, readCards } from '../core/live/card-answers.ts';
import type { LiveAnswer, RoomName } from '../core/live/layout.ts';
import { type PictureRemarks, sightOf } from '../core/live/mark-sight.ts';
import { type Mark, readMarks, rootsOf } from '../core/live/marks.ts';
import { readIntention, readMeant } from '../core/live/painting.ts';
import { planeIdOfColumn } from '../core/live/plane-id-of-column.ts';
import { type Plane, readPlanes } from '../core/live/planes.ts';
import { allowsSketch, readHidden } from '../core/live/remarks.ts';
import { type ShownCards, showCards } from '../core/live/show-cards.ts';
import { readDocument } from '../store/live-documents.ts';

export class SaidOnBoard {
  /** As the person sees it: its pictures are those that are for them. */
  readonly #board: BoardView;
  readonly #documents = new Map<RoomName, Promise<Y.Doc>>();
  readonly #pictures: ReadonlyMap<string, PictureView>;

  constructor(board: BoardView) {
    this.#board = board;
    this.#pictures = new Map(board.pictures.map((picture) => [picture.id, picture]));
  }

  document(room: RoomName): Promise<Y.Doc> {
    const read = this.#documents.get(room) ?? readDocument(this.#board.id, room);
    this.#documents.set(room, read);
    return read;
  }

  /** References that are theirs to see, in the order they were posted. */
  referenceIds(): string[] {
    return [...this.#pictures.values()].filter(({ kind }) => kind === 'reference').map(({ id }) => id);
  }

  async planes(): Promise<Plane[]> {
    return readPlanes(await this.document('setup'));
  }

  async intention(pictureId: string): Promise<string> {
    return readIntention(await this.document(`painting/${pictureId}`));
  }

  async answers(pictureId: string): Promise<ReadonlyMap<string, LiveAnswer>> {
    return readAnswers(await this.#roomOf(pictureId));
  }

  /** @param measured Null leaves only what a teacher wrote. */
  async cards(pictureId: string, measured: MeasureDocument | null): Promise<ShownCards> {
    const doc = await this.document(`painting/${pictureId}`);
    const planes = await this.planes();
    return showCards({
      document: measured,
      planeIds: (measured?.planes ?? []).map(({ name }, at) => planeIdOfColumn(planes, name, at)),
      planes,
      cards: readCards(doc),
      answers: readAnswers(doc),
      meant: readMeant(doc),
    });
  }

  /**
   * Marks on pictures that are for the person, by nobody whom they do not see, neither hidden from them nor sketches that
   * are no longer allowed.
   */
  async marks(): Promise<Mark[]> {
    const all = readMarks(await this.document('marks'));
    const roots = rootsOf(all);
    const blocked = new Set(this.#board.blocked);
    const seen: Mark[] = [];
    for (const mark of all) {
      const picture = this.#pictures.get(mark.pictureId);
      if (!picture) continue;
      const root = roots.get(mark) ?? mark;
      if (blocked.has(mark.author) || blocked.has(root.author)) continue;
      const { me, role } = this.#board;
      const onlooker = { personId: me.id, role, paints: picture.painter.id === me.id };
      const sight = sightOf(mark, root, await this.#remarks(picture), onlooker);
      if (sight !== 'away') seen.push(mark);
    }
    return seen;
  }

  async #remarks(picture: PictureView): Promise<PictureRemarks> {
    const doc = await this.#roomOf(picture.id);
    const isReference = picture.kind === 'reference';
    return { isReference, hidden: readHidden(doc), allowsSketch: !isReference && allowsSketch(doc) };
  }

  #roomOf(pictureId: string): Promise<Y.Doc> {
    const isReference = this.#pictures.get(pictureId)?.kind === 'reference';
    return this.document(isReference ? 'setup' : `painting/${pictureId}`);
  }
}
