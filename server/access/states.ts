/**
 * The states of one painting as one person sees them: figures, what changed from one to the next, what became of cards.
 *
 * In the flow: handlers, queue, path -> [states] -> said-on-board, measures. Measuring and comparing are asked of the main
 * process through `StateDesk`. IO: the database.
 */
import type * as Y from 'yjs';
import type { MeasureDocument } from '../core/contract/measures.ts';
import type { MoveVerdict } from '../core/contract/moves.ts';
import type { BoardView, Pending, PictureView } from '../core/contract/responses.ts';
import type { ComparedFacts, StatePair, StatesView, StateView, StepView } from '../core/contract/states.ts';
import { squareToCorners } from '../core/geometry/homography.ts';
import { invert3 } from '../core/geometry/matrix3.ts';
import type { LivePhoto } from '../core/live/layout.ts';
import { readPaintingOutlines } from '../core/live/outlines.ts';
import { readPhoto } from '../core/live/painting.ts';
import { planeIdOfColumn } from '../core/live/plane-id-of-column.ts';
import { planeIdsByName } from '../core/live/show-cards.ts';
import { statesOf } from '../core/own-time/states.ts';
import { may } from '../core/permissions/may.ts';
import { isProblem } from '../core/problem.ts';
import { withoutMixing } from '../core/readings/without-mixing.ts';
import { checkCorners } from '../core/rectify/check-corners.ts';
import { sideRatioOf } from '../core/rectify/side-ratio.ts';
import { cardResults, type StateCards } from '../core/states/card-results.ts';
import { changesBetweenStates } from '../core/states/moves/changes.ts';
import { SaidOnBoard } from './said-on-board.ts';

/** What the main process is asked. */
export interface StateDesk {
  measuresOf(boardId: string, pictureId: string): Promise<MeasureDocument | Pending>;
  compared(pair: StatePair): Promise<ComparedFacts | Pending>;
}

const isPending = (answer: object): answer is Pending => 'pending' in answer;

interface Measured {
  picture: PictureView;
  document: MeasureDocument | null;
  pending: string | null;
}

/** The states of the painting that one picture is a state of, oldest first; empty where it is no painting for them to see. */
export function paintingStates(board: BoardView, pictureId: string): PictureView[] {
  return statesOf(
    board.pictures.filter(({ kind }) => kind === 'painting'),
    pictureId,
  );
}

/** A state's cards as the person sees them, with the document behind them. */
export async function stateCards(
  said: SaidOnBoard,
  pictureId: string,
  document: MeasureDocument | null,
): Promise<StateCards> {
  const planes = await said.planes();
  const planeIds = (document?.planes ?? []).map(({ name }, at) => planeIdOfColumn(planes, name, at));
  return {
    ...{ pictureId, document, cards: await said.cards(pictureId, document) },
    planeIds: planeIdsByName({ document, planeIds }),
  };
}

/** How the photo is squared by its corners; null where it has none, or none that a flat picture can have. */
function squaredOf({ corners, size }: LivePhoto, { width, height }: PictureView): StateView['squared'] {
  if (!corners) return null;
  try {
    checkCorners(corners);
  } catch (thrown) {
    if (isProblem(thrown)) return null;
    throw thrown;
  }
  const { ratio } = sideRatioOf(corners, width, height, size);
  return { toSquared: invert3(squareToCorners(corners)), ratio };
}

function viewOf({ picture, document, pending }: Measured, doc: Y.Doc): StateView {
  return {
    squared: squaredOf(readPhoto(doc), picture),
    outlined: readPaintingOutlines(doc).size > 0,
    ...{ id: picture.id, caption: picture.caption, width: picture.width, height: picture.height },
    postedAt: picture.createdAt,
    grade: document?.capture.grade ?? null,
    ladder: (document?.planes ?? []).map(({ name, painting: { dark, mid, light } }) => ({
      ...{ name, dark, mid, light },
    })),
    pending,
  };
}

/** How far states belong together, from one to the next. @returns Null where it is still being worked out. */
export async function factsBetween(
  states: readonly { id: string }[],
  boardId: string,
  desk: Pick<StateDesk, 'compared'>,
): Promise<(ComparedFacts | null)[]> {
  return Promise.all(
    states.slice(1).map(async ({ id: laterId }, at) => {
      const facts = await desk.compared({ boardId, earlierId: states[at]?.id ?? '', laterId });
      return isPending(facts) ? null : facts;
    }),
  );
}

/** Whether every step from one state up to another shows one painting. @param facts one a step. */
export function belongTogether(facts: readonly (ComparedFacts | null)[], from: number, to: number): boolean {
  return facts.slice(from, to).every((each) => each !== null && each.trouble === null);
}

/** Null where there is no such painting for them to see. @param board as they see it. */
export async function statesFor(
  board: BoardView,
  pictureId: string,
  desk: StateDesk,
): Promise<StatesView | null> {
  const pictures = paintingStates(board, pictureId);
  const [first] = pictures;
  if (!first) return null;
  const measured = await Promise.all(pictures.map((picture) => measuredState(board, picture, desk)));
  const facts = await factsBetween(pictures, board.id, desk);
  const said = new SaidOnBoard(board);
  const cards: StateCards[] = [];
  for (const { picture, document } of measured) cards.push(await stateCards(said, picture.id, document));
  const mine = first.painter.id === board.me.id;
  const states: StateView[] = [];
  for (const each of measured) {
    states.push(viewOf(each, await said.document(`painting/${each.picture.id}`)));
  }
  const steps = pictures.slice(1).map((picture, at): StepView => {
    const [earlier, later] = [measured[at]?.document, measured[at + 1]?.document];
    const between = facts[at] ?? null;
    return {
      ...{ from: pictures[at]?.id ?? '', to: picture.id, pending: between === null, facts: between },
      changes: earlier && later && between?.trouble === null ? changesBetweenStates(earlier, later) : [],
      cards: cardResults(cards, at + 1, (from) => belongTogether(facts, from, at + 1)),
    };
  });
  return {
    board: { id: board.id, title: board.title },
    painter: first.painter,
    mine,
    mayAnswer: may(board.role, 'room.painting', mine ? 'own' : 'other'),
    ...{ states, steps },
  };
}

/** One state and the newest one, with what is needed to tell how far its cards went. */
interface Since {
  boardId: string;
  /** The painting's states, oldest first. */
  ids: readonly string[];
  /** Place of the state with the cards. */
  from: number;
  measured: ReadonlyMap<string, MeasureDocument>;
  said: SaidOnBoard;
  compared: StateDesk['compared'];
}

/** Key of a card of that state -> how much of it the newest state shows; empty until the photos lie on one another. */
export async function wentOn(since: Since): Promise<Map<string, MoveVerdict>> {
  const { boardId, ids, from, measured, said } = since;
  const until = ids.slice(from).map((id) => ({ id }));
  const facts = await factsBetween(until, boardId, since);
  if (!belongTogether(facts, 0, until.length - 1)) return new Map();
  const ends = await Promise.all(
    [ids[from], ids.at(-1)].map((id = '') => stateCards(said, id, measured.get(id) ?? null)),
  );
  const results = cardResults(ends, 1, () => true);
  return new Map(results.flatMap(({ key, moves: [lead] }) => (lead ? [[key, lead.verdict] as const] : [])));
}

async function measuredState(board: BoardView, picture: PictureView, desk: StateDesk): Promise<Measured> {
  const answer = await desk.measuresOf(board.id, picture.id);
  if (isPending(answer)) return { picture, document: null, pending: answer.pending };
  const document = board.school.noMixingHints ? withoutMixing(answer) : answer;
  return { picture, document, pending: null };
}
