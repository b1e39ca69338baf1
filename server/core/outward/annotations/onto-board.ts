/** What annotations are taken onto. In the flow: handler -> [onto-board] -> from-annotations, place-from. A type only. */
import type { Size } from './svg-shape.ts';

/** What the board is, as far as an annotation can name parts of it. */
export interface OntoBoard {
  boardId: string;
  /** Who takes them in. */
  authorId: string;
  /** Picture id -> size of the copy that our own addresses give; only pictures that the person sees. */
  pictures: ReadonlyMap<string, Size>;
  /** Where annotations go whose picture is not of this board; null leaves them out. */
  onto: string | null;
  /** Plane id -> name. */
  planes: ReadonlyMap<string, string>;
  /** Ids of marks that are there: a reply may answer them. Mark id -> its picture. */
  marks: ReadonlyMap<string, string>;
  /** A fresh id at each call. */
  newId(): string;
  /** For what does not say when it was made, ms since 1970. */
  nowMs: number;
}
