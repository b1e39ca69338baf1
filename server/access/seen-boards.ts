/**
 * Boards as one person sees them, each read once for all that is asked about it. In the flow: queue, waiting ->
 * [seen-boards] -> consent, said-on-board. IO: the database.
 */
import type { BoardListItem, BoardView } from '../core/contract/responses.ts';
import type { Mark } from '../core/live/marks.ts';
import { boardAsSeen } from './consent.ts';
import { SaidOnBoard } from './said-on-board.ts';
import type { Visitor } from './session.ts';

/** Whether a class keeps references, figures and remarks from everybody on a board just now. */
export type IsVeiled = (boardId: string) => Promise<boolean>;

export interface SeenBoard {
  board: BoardView;
  veiled: boolean;
  said: SaidOnBoard;
  marks(): Promise<Mark[]>;
}

/** Boards as the person sees them, each read once. */
export class SeenBoards {
  readonly visitor: Visitor;
  readonly #roles: ReadonlyMap<string, BoardListItem['role']>;
  readonly isVeiled: IsVeiled;
  readonly #read = new Map<string, Promise<SeenBoard | null>>();

  constructor(visitor: Visitor, boards: readonly BoardListItem[], isVeiled: IsVeiled) {
    this.visitor = visitor;
    this.isVeiled = isVeiled;
    this.#roles = new Map(boards.map(({ id, role }) => [id, role]));
  }

  /** Null when the person is no longer on it. */
  board(boardId: string): Promise<SeenBoard | null> {
    const read = this.#read.get(boardId) ?? this.#readBoard(boardId);
    this.#read.set(boardId, read);
    return read;
  }

  async #readBoard(boardId: string): Promise<SeenBoard | null> {
    const role = this.#roles.get(boardId);
    const board = role ? await boardAsSeen(boardId, this.visitor, role) : null;
    if (!board) return null;
    const said = new SaidOnBoard(board);
    let marks: Promise<Mark[]> | null = null;
    const readMarks = () => {
      marks ??= said.marks();
      return marks;
    };
    return { board, veiled: await this.isVeiled(boardId), said, marks: readMarks };
  }
}
