/**
 * What the running class means for this person: whose turn, which step, what they may write, what is kept from them.
 *
 * In the flow: class document -> [class-view] -> board-live (which hides and forbids by it), class strip, tasks. Pure but
 * for its own memory.
 */
import type * as Y from 'yjs';
import { type ClassWrite, classAllows, classWriteOf } from '#server/core/class/allowed.ts';
import {
  type ClassState,
  isVeiledOnScreen,
  NO_CLASS,
  readClass,
  silentPicture,
} from '#server/core/class/state.ts';
import type { BoardView, PictureView } from '#server/core/contract/responses.ts';
import { may } from '#server/core/permissions/may.ts';
import type { Permissions } from './board-live-types.ts';
import { PerDocument } from './read-board.ts';

export interface ClassView {
  state: ClassState;
  /** Whether the class room has come; before that only `veiled` is known, from the page. */
  known: boolean;
  /** References and figures are kept from everybody. */
  veiled: boolean;
  /** The painting that is looked at in silence, or null. */
  silentId: string | null;
  /** Every painting of the board that this person may see, whatever is shown just now. */
  paintings: readonly PictureView[];
  /** Whether this person runs classes here. */
  runs: boolean;
  /** Whether it is this person's turn. */
  mine: boolean;
  /** Whether this person writes first impressions here, when it is time. */
  writesImpressions: boolean;
  /** Whether the class lets this person write that now, on the painting of the turn. */
  lets(write: ClassWrite): boolean;
  /** How far the server's clock is ahead of this one, milliseconds. */
  aheadMs: number;
}

const classOf = new PerDocument((doc) => readClass(doc));

/** @param veiledAtFirst What the page said, before the class room has come. */
export function classView(
  board: BoardView,
  room: { doc: Y.Doc | null; loaded: boolean; aheadMs: number },
  veiledAtFirst: boolean,
): ClassView {
  const state = room.doc && room.loaded ? classOf.of(room.doc) : NO_CLASS;
  const runs = may(board.role, 'room.class');
  const mine = state.now?.painterId === board.me.id;
  return {
    ...{ state, runs, mine },
    paintings: board.pictures.filter(({ kind }) => kind === 'painting'),
    known: room.loaded,
    veiled: room.loaded ? isVeiledOnScreen(state) : veiledAtFirst,
    silentId: silentPicture(state),
    writesImpressions: may(board.role, 'room.silent', 'own'),
    lets: (write) => classAllows(state, write, { teaches: runs, paints: mine }),
    aheadMs: room.aheadMs,
  };
}

/** What may be written now: what is permitted here at all, as far as the class lets it. */
export function mayInClass(may: Permissions, view: ClassView): Permissions {
  const { now } = view.state;
  const lets = (pictureId: string, root: string) => {
    const write = classWriteOf('painting', root);
    if (now === null || write === null) return true;
    return now.pictureId === pictureId ? view.lets(write) : view.silentId === null;
  };
  return {
    ...may,
    setup: may.setup && view.lets('work'),
    mark: may.mark && view.lets('marks'),
    cards: may.cards && (now === null || view.lets('cards')),
    painting: (pictureId) => may.painting(pictureId) && lets(pictureId, 'outlines'),
    intention: (pictureId) => may.intention(pictureId) && lets(pictureId, 'intention'),
    answer: (pictureId) => may.answer(pictureId) && lets(pictureId, 'answers'),
  };
}

/** The board as it is looked at now: without references while they are kept back, the one painting in a silent look. */
export function boardInClass(board: BoardView, { veiled, silentId }: ClassView): BoardView {
  if (!veiled) return board;
  const shown = ({ id, kind }: PictureView) => kind === 'painting' && (silentId === null || id === silentId);
  return { ...board, pictures: board.pictures.filter(shown) };
}
