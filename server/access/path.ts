/**
 * A painter's path over boards: what comes back, what was tried, what helped. Painter and teacher read the same page.
 *
 * In the flow: the path page -> [path] -> states, measures. Only boards on which the asker may see it (`path.see`); what a
 * class keeps back just now, and pictures that are not for the asker, are left out. IO: the database.
 */
import type { BoardListItem, BoardView, PictureView } from '../core/contract/responses.ts';
import type { BoardRole } from '../core/contract/roles.ts';
import type { PathPainting, PathPerson, PathTried, PathView } from '../core/contract/states.ts';
import { may, type Relation } from '../core/permissions/may.ts';
import { LANGUAGE } from '../core/say/language.ts';
import { cardResults } from '../core/states/card-results.ts';
import { type PaintingRead, recurringReadings } from '../core/states/recurring.ts';
import { listBoards } from '../store/boards.ts';
import { paintersOn } from '../store/consents.ts';
import { guardianshipsOn } from '../store/guardians.ts';
import { newestMeasures } from '../store/measures.ts';
import { paintingsBy } from '../store/painters.ts';
import { type IsVeiled, type SeenBoard, SeenBoards } from './seen-boards.ts';
import type { Visitor } from './session.ts';
import { belongTogether, factsBetween, paintingStates, type StateDesk, stateCards } from './states.ts';

export interface PathDesk {
  isVeiled: IsVeiled;
  compared: StateDesk['compared'];
}

async function relationOn(boardId: string, askerId: string, personId: string): Promise<Relation> {
  if (askerId === personId) return 'own';
  const guards = (await guardianshipsOn(boardId)).some((row) => {
    return row.guardianId === askerId && row.wardId === personId;
  });
  return guards ? 'ward' : 'other';
}

/** The boards with paintings of that person on which the asker may see their path. */
async function boardsOfPath(visitor: Visitor, personId: string): Promise<BoardListItem[]> {
  const boards = await listBoards(visitor.personId, visitor.isHost);
  const painted = await paintingsBy(
    [personId],
    boards.map(({ id }) => id),
  );
  const seen: BoardListItem[] = [];
  for (const board of boards) {
    if (!painted.has(board.id)) continue;
    const relation = await relationOn(board.id, visitor.personId, personId);
    if (may(board.role, 'path.see', relation)) seen.push(board);
  }
  return seen;
}

/** Null when the asker may see nothing of that person's path: a stranger's, or nobody's, looks the same. */
export async function pathOf(visitor: Visitor, personId: string, desk: PathDesk): Promise<PathView | null> {
  const mine = visitor.personId === personId;
  const boards = await boardsOfPath(visitor, personId);
  if (boards.length === 0 && !mine) return null;
  const seen = new SeenBoards(visitor, boards, desk.isVeiled);
  const read: BoardPath[] = [];
  for (const { id } of boards) {
    const on = await seen.board(id);
    if (on && !on.veiled) read.push(await pathOn(on, personId, desk));
  }
  const painter = read.flatMap(({ painter: known }) => known ?? [])[0];
  const newestFirst = (p: { postedAt: string }, q: { postedAt: string }) =>
    p.postedAt < q.postedAt ? 1 : -1;
  return {
    person: painter ?? { id: personId, name: mine ? visitor.name : '' },
    mine,
    paintings: read.flatMap(({ paintings }) => paintings.map(({ painting }) => painting)).sort(newestFirst),
    readings: recurringReadings(read.flatMap(({ paintings }) => paintings)),
    tried: read.flatMap(({ tried }) => tried).sort((p, q) => newestFirst(p.painting, q.painting)),
    seenBy: read.map(({ board, teachers }) => ({ board, names: teachers })),
  };
}

/** What one board adds to somebody's path. */
interface BoardPath {
  board: { id: string; title: string };
  painter: { id: string; name: string } | null;
  paintings: PaintingRead<PathPainting>[];
  tried: PathTried[];
  teachers: string[];
}

const GIVES: readonly BoardRole[] = ['host', 'owner', 'teacher'];

/** Names of those who may see it on that board, but for the painter. */
function teachersOn({ owner, members }: BoardView, personId: string): string[] {
  const teachers = members.filter(({ role }) => GIVES.includes(role));
  const people = new Map([owner, ...teachers].map(({ id, name }) => [id, name]));
  people.delete(personId);
  return [...people.values()];
}

async function pathOn({ board, said }: SeenBoard, personId: string, desk: PathDesk): Promise<BoardPath> {
  const own = board.pictures.filter(({ kind, painter }) => kind === 'painting' && painter.id === personId);
  const measured = await newestMeasures(own.map(({ id }) => id));
  const place = { id: board.id, title: board.title };
  const paintings: PaintingRead<PathPainting>[] = [];
  const tried: PathTried[] = [];
  for (const states of paintingsOf(board, own)) {
    const newest = states.at(-1) as PictureView; // at least one
    const painting: PathPainting = {
      ...{ board: place, pictureId: newest.id, caption: newest.caption },
      ...{ width: newest.width, height: newest.height, postedAt: newest.createdAt },
      hasStates: states.length > 1,
    };
    paintings.push({ painting, states: states.map(({ id }) => measured.get(id) ?? null) });
    const cards = [];
    for (const { id } of states) cards.push(await stateCards(said, id, measured.get(id) ?? null));
    const facts = await factsBetween(states, board.id, desk);
    tried.push(...triedOn(painting, cards, (from, to) => belongTogether(facts, from, to)));
  }
  const painter = own[0]?.painter ?? null;
  return { board: place, painter, paintings, tried, teachers: teachersOn(board, personId) };
}

/** The states of each painting, oldest first. */
function paintingsOf(board: BoardView, own: readonly PictureView[]): PictureView[][] {
  const newest = own.filter(({ id }) => paintingStates(board, id).at(-1)?.id === id);
  return newest.map(({ id }) => paintingStates(board, id));
}

/** Cards that were taken on, with what the next state shows of them; of one that was taken along, what the newest shows. */
function triedOn(
  painting: PathPainting,
  cards: Parameters<typeof cardResults>[0],
  together: (from: number, to: number) => boolean,
): PathTried[] {
  const found = new Map<string, PathTried>();
  for (let to = 1; to <= cards.length; to++) {
    // After the last state there is none to show anything: what is being tried now.
    for (const result of cardResults(cards, to, (from) => to < cards.length && together(from, to))) {
      if (result.state === 'open' || result.state === 'declined') continue;
      const { where, what, state, moves, pictureId, key } = result;
      found.set(`${pictureId}/${key}`, { painting, where, what, state, went: moves[0]?.verdict ?? null });
    }
  }
  return [...found.values()];
}

/** Painters whose path the asker may see as host, owner or teacher, by name. */
export async function pathPeople(visitor: Visitor): Promise<PathPerson[]> {
  const boards = await listBoards(visitor.personId, visitor.isHost);
  const people = new Map<string, PathPerson>();
  for (const { id, title, role } of boards) {
    if (!may(role, 'path.see')) continue;
    for (const painter of await paintersOn(id)) {
      if (painter.id === visitor.personId) continue;
      const known = people.get(painter.id) ?? { ...painter, boards: [] };
      people.set(painter.id, { ...known, boards: [...known.boards, title] });
    }
  }
  return [...people.values()].sort((p, q) => p.name.localeCompare(q.name, LANGUAGE));
}
