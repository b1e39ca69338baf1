/**
 * The marks of a board as Web Annotations, out as somebody sees them and in under their name.
 *
 * In the flow: marks handler -> [board-marks] -> store; what comes in is written through the main process, whose guard
 * judges it like any other mark. IO: the database.
 */
import { randomUUID } from 'node:crypto';
import { boardAsSeen } from '../access/consent.ts';
import { SaidOnBoard } from '../access/said-on-board.ts';
import { knownNames } from '../access/school.ts';
import type { Visitor } from '../access/session.ts';
import type { BoardView } from '../core/contract/responses.ts';
import type { BoardRole } from '../core/contract/roles.ts';
import type { Mark } from '../core/live/marks.ts';
import { allowsSketch } from '../core/live/remarks.ts';
import { type FromAnnotations, fromAnnotations } from '../core/outward/annotations/from-annotations.ts';
import { toAnnotations } from '../core/outward/annotations/to-annotations.ts';
import { say } from '../core/say/say.ts';
import { readDocument } from '../store/live-documents.ts';
import { namesOf } from '../store/people.ts';
import { copySizes } from '../store/renditions.ts';

/** Somebody on a board. */
interface OnBoard {
  visitor: Visitor;
  role: BoardRole;
}

/** @param origin Address of this server. @returns The collection, or null when the board is gone. */
export async function marksOut(
  boardId: string,
  { visitor, role }: OnBoard,
  origin: string,
): Promise<{ title: string; collection: unknown } | null> {
  const board = await boardAsSeen(boardId, visitor, role);
  if (!board) return null;
  const said = new SaidOnBoard(board);
  const [marks, planes, sizes] = await Promise.all([said.marks(), said.planes(), copySizes(boardId, '2560')]);
  const names = await namesFor(board, marks, await knownNames({ boardId }, visitor.personId, role));
  const planeNames = new Map(planes.map(({ id, name }) => [id, name]));
  const { title } = board;
  return {
    title,
    collection: toAnnotations({ origin, boardId, title, marks, names, sizes, planes: planeNames }),
  };
}

/** Who left the board is named where names are not kept back; else nobody says who they were. */
async function namesFor(
  board: BoardView,
  marks: readonly Mark[],
  known: unknown,
): Promise<Map<string, string>> {
  const people = [...board.members, board.owner, board.me, ...board.pictures.map(({ painter }) => painter)];
  const names = new Map(people.map(({ id, name }) => [id, name]));
  if (known !== 'all') return names;
  const others = await namesOf(marks.map(({ author }) => author).filter((id) => !names.has(id)));
  return new Map([...others, ...names]);
}

/**
 * What of a document can be taken in, and what cannot.
 *
 * @param onto Picture for annotations whose picture is not on this board; null leaves them out.
 * @returns Null when the board is gone.
 */
export async function marksIn(
  boardId: string,
  { visitor, role }: OnBoard,
  document: unknown,
  onto: string | null,
): Promise<FromAnnotations | null> {
  const board = await boardAsSeen(boardId, visitor, role);
  if (!board) return null;
  const said = new SaidOnBoard(board);
  const [marks, planes, sizes] = await Promise.all([said.marks(), said.planes(), copySizes(boardId, '2560')]);
  const seen = new Map(
    board.pictures.flatMap(({ id }) => {
      const size = sizes.get(id);
      return size ? [[id, size] as const] : [];
    }),
  );
  const read = fromAnnotations(document, {
    ...{ boardId, authorId: visitor.personId, pictures: seen, onto, newId: randomUUID, nowMs: Date.now() },
    planes: new Map(planes.map(({ id, name }) => [id, name])),
    marks: new Map(marks.map(({ id, pictureId }) => [id, pictureId])),
  });
  return withoutRefusedSketches(board, read);
}

/** Nobody paints over a painting whose painter does not allow it, not by a file either. */
async function withoutRefusedSketches(board: BoardView, read: FromAnnotations): Promise<FromAnnotations> {
  const sketched = new Set(
    read.marks.filter(({ kind }) => kind === 'sketch').map(({ pictureId }) => pictureId),
  );
  const refused = new Set<string>();
  for (const pictureId of sketched) {
    const isPainting = board.pictures.some(({ id, kind }) => id === pictureId && kind === 'painting');
    const allowed = isPainting && allowsSketch(await readDocument(board.id, `painting/${pictureId}`));
    if (!allowed) refused.add(pictureId);
  }
  const goes = ({ kind, pictureId }: Mark) => kind === 'sketch' && refused.has(pictureId);
  const gone = new Set(read.marks.filter(goes).map(({ id }) => id));
  const marks = read.marks.filter(
    ({ id, parent }) => !gone.has(id) && (parent === null || !gone.has(parent)),
  );
  const lost = read.marks.length - marks.length;
  if (lost === 0) return read;
  const what = lost === 1 ? say`A sketched stroke` : say`${lost} sketched strokes and what answers them`;
  const why = say`The painter of that painting does not let others sketch over it.`;
  return { ...read, marks, leftOut: [...read.leftOut, { what, why }] };
}
