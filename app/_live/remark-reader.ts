/**
 * What is said of marks: which are hidden, which paintings may be sketched over, who nods at which remark.
 *
 * In the flow: rooms of the pictures, marks room -> [remark-reader] -> read-board. Whatever stayed the same keeps its
 * identity, so that nothing of it is drawn again. Pure but for its own memory.
 */
import type * as Y from 'yjs';
import type { BoardView } from '#server/core/contract/responses.ts';
import type { PictureRemarks } from '#server/core/live/mark-sight.ts';
import { readNods } from '#server/core/live/nods.ts';
import { allowsSketch, readHidden } from '#server/core/live/remarks.ts';
import type { Nod } from './mark-types.ts';

type Remarks = ReadonlyMap<string, PictureRemarks | null>;
type Nods = ReadonlyMap<string, readonly Nod[]>;

const NO_NODS: Nods = new Map();

export class RemarkReader {
  #remarks: Remarks = new Map();
  #nods: { doc: Y.Doc; map: Nods; stale: boolean; board: BoardView } | null = null;

  /** By picture. @param docOf The document in which it stands, or null while that is not here. */
  remarks(
    board: BoardView,
    docOf: (pictureId: string, kind: 'reference' | 'painting') => Y.Doc | null,
  ): Remarks {
    const next = new Map(
      board.pictures.map(({ id, kind }) => {
        const doc = docOf(id, kind);
        const fresh = doc && remarksIn(doc, kind === 'reference');
        const last = this.#remarks.get(id) ?? null;
        return [id, fresh && last && sameRemarks(last, fresh) ? last : fresh] as const;
      }),
    );
    const before = this.#remarks;
    const same = before.size === next.size && [...next].every(([id, said]) => before.get(id) === said);
    if (!same) this.#remarks = next;
    return this.#remarks;
  }

  /** By mark, in order of name. */
  nods(doc: Y.Doc | null, board: BoardView): Nods {
    if (!doc) return NO_NODS;
    const kept = this.#nods;
    if (kept?.doc === doc && kept.board === board && !kept.stale) return kept.map;
    const fresh = { doc, map: namedNods(doc, board, kept?.map ?? NO_NODS), stale: false, board };
    if (kept?.doc !== doc) doc.getMap('nods').observe(() => this.#overtake(doc));
    this.#nods = fresh;
    return fresh.map;
  }

  #overtake(doc: Y.Doc): void {
    if (this.#nods?.doc === doc) this.#nods.stale = true;
  }
}

function remarksIn(doc: Y.Doc, isReference: boolean): PictureRemarks {
  return { isReference, hidden: readHidden(doc), allowsSketch: !isReference && allowsSketch(doc) };
}

function sameRemarks(one: PictureRemarks, two: PictureRemarks): boolean {
  if (one.allowsSketch !== two.allowsSketch || one.hidden.size !== two.hidden.size) return false;
  return [...one.hidden].every((id) => two.hidden.has(id));
}

/** Somebody who left the board nods no more, nor does whom this person does not see. */
function namedNods(doc: Y.Doc, board: BoardView, before: Nods): Nods {
  const names = new Map([...board.members, board.owner, board.me].map(({ id, name }) => [id, name]));
  for (const id of board.blocked) names.delete(id);
  const nods = new Map<string, readonly Nod[]>();
  for (const [markId, personIds] of readNods(doc)) {
    const people = personIds.flatMap((id) => {
      const name = names.get(id);
      return name === undefined ? [] : [{ id, name }];
    });
    people.sort((one, two) => one.name.localeCompare(two.name) || (one.id < two.id ? -1 : 1));
    const last = before.get(markId);
    if (people.length > 0) nods.set(markId, last && sameNods(last, people) ? last : people);
  }
  return nods;
}

function sameNods(one: readonly Nod[], two: readonly Nod[]): boolean {
  return (
    one.length === two.length && one.every(({ id, name }, at) => id === two[at]?.id && name === two[at]?.name)
  );
}
