/**
 * What waits for one person's look, over all boards on which they give looks.
 *
 * In the flow: handlers -> [queue] -> asks, said-on-board, since, measures. IO: the database.
 */
import type { AskView, LastTime, QueueRow, QueueView, Repeated } from '../core/contract/own-time.ts';
import type { BoardListItem, PictureView } from '../core/contract/responses.ts';
import type { Mark } from '../core/live/marks.ts';
import { lastTimeOf } from '../core/own-time/last-time.ts';
import { byPromiseThenWait } from '../core/own-time/queue-order.ts';
import { repeatedReadings } from '../core/own-time/repeated.ts';
import { statesOf } from '../core/own-time/states.ts';
import { may } from '../core/permissions/may.ts';
import { type Ask, asksOn } from '../store/asks.ts';
import { listBoards } from '../store/boards.ts';
import { newestUpdates } from '../store/live-documents.ts';
import { type LookRow, looksOf } from '../store/looks.ts';
import { newestMeasures } from '../store/measures.ts';
import { paintingsBy } from '../store/painters.ts';
import { askSeen, peopleIn } from './asks.ts';
import { hiddenPainters } from './consent.ts';
import type { SaidOnBoard } from './said-on-board.ts';
import { type IsVeiled, type SeenBoard, SeenBoards } from './seen-boards.ts';
import type { Visitor } from './session.ts';
import { newsSince } from './since.ts';
import { type StateDesk, wentOn } from './states.ts';

/** @param compared How two states lie on one another; see `StateDesk`. */
export async function queueOf(
  visitor: Visitor,
  isVeiled: IsVeiled,
  compared: StateDesk['compared'],
): Promise<QueueView> {
  const boards = await listBoards(visitor.personId, visitor.isHost);
  const taught = boards.filter(({ role }) => may(role, 'queue.see'));
  const asks = await asksOn(
    taught.map(({ id }) => id),
    'waiting',
  );
  const seen = new SeenBoards(visitor, boards, isVeiled);
  const names = await peopleIn(asks);
  const repeated = await repeatedBy([...new Set(asks.map(({ askedById }) => askedById))], taught, seen);
  const seenBefore = await seenBy(visitor.personId, [...new Set(asks.map(({ boardId }) => boardId))]);
  const rows: QueueRow[] = [];
  for (const ask of asks) {
    const row = await rowOf(ask, seen, { names, repeated, seenBefore, compared });
    if (row) rows.push(row);
  }
  rows.sort((one, two) => byPromiseThenWait(one.ask, two.ask));
  return { meId: visitor.personId, teaches: taught.length > 0, rows };
}

/** How far somebody had looked at boards, and how far these go. */
interface SeenBefore {
  looks: ReadonlyMap<string, LookRow>;
  newest: ReadonlyMap<string, ReadonlyMap<string, bigint>>;
}

async function seenBy(personId: string, boardIds: readonly string[]): Promise<SeenBefore> {
  const looks = new Map((await looksOf(personId)).map((look) => [look.boardId, look]));
  return { looks, newest: await newestUpdates(boardIds) };
}

/** What all rows go by. */
interface Known {
  names: ReadonlyMap<string, string>;
  repeated: ReadonlyMap<string, Repeated[]>;
  seenBefore: SeenBefore;
  compared: StateDesk['compared'];
}

async function rowOf(ask: Ask, boards: SeenBoards, known: Known): Promise<QueueRow | null> {
  const on = await boards.board(ask.boardId);
  const seen = on && askSeen(ask, on.board, known.names);
  const newest = seen?.states.at(-1);
  if (!on || !seen || !newest) return null;
  const { board, said, veiled } = on;
  const me = boards.visitor.personId;
  const mine = (await on.marks()).filter(({ author }) => author === me);
  const reference = veiled ? undefined : board.pictures.find(({ kind }) => kind === 'reference');
  return {
    ask: seen.view,
    board: { id: board.id, title: board.title },
    painting: { id: newest.id, caption: newest.caption, states: seen.states.length },
    referenceId: reference?.id ?? null,
    intention: veiled ? '' : firstLine(await said.intention(newest.id)),
    last: veiled ? null : await lastTime({ ...seen, mine, said, boardId: board.id }, known.compared),
    repeated: veiled ? [] : (known.repeated.get(ask.askedById) ?? []),
    news: await newsOfPainting(seen.states, on, known.seenBefore),
    saidSince: saidSince(seen, mine),
    forMe: ask.askedOfId === null || ask.askedOfId === me,
  };
}

function saidSince(
  { view, states }: { view: AskView; states: PictureView[] },
  mine: readonly Mark[],
): boolean {
  const asked = Date.parse(view.askedAt);
  return mine.some(({ pictureId, at }) => at >= asked && states.some(({ id }) => id === pictureId));
}

/** The first line with words in it, at most 200 characters. */
function firstLine(text: string): string {
  const line = text.split('\n').find((each) => each.trim() !== '') ?? '';
  return line.trim().slice(0, 200);
}

/** A painting that waits, with what the caller said of it. */
interface Waiting {
  states: readonly PictureView[];
  view: AskView;
  mine: readonly Mark[];
  said: SaidOnBoard;
  boardId: string;
}

async function lastTime(
  { states, view, mine, said, boardId }: Waiting,
  compared: StateDesk['compared'],
): Promise<LastTime | null> {
  const measured = await newestMeasures(states.map(({ id }) => id));
  const planes = new Map((await said.planes()).map(({ id, name }) => [id, name]));
  const newestFirst = [...states].reverse();
  const those = await Promise.all(
    newestFirst.map(async ({ id, createdAt }) => ({
      ...{ id, postedAt: createdAt },
      marks: mine.filter(({ pictureId, kind }) => pictureId === id && kind !== 'reply'),
      answers: await said.answers(id),
      cards: await said.cards(id, measured.get(id) ?? null),
    })),
  );
  const last = lastTimeOf(those, Date.parse(view.askedAt), planes);
  if (!last || last.sameState || last.cards.length === 0) return last;
  const ids = states.map(({ id }) => id);
  const went = await wentOn({ boardId, ids, from: ids.indexOf(last.pictureId), measured, said, compared });
  return { ...last, cards: last.cards.map((card) => ({ ...card, went: went.get(card.key) ?? null })) };
}

async function newsOfPainting(
  states: readonly PictureView[],
  { board, said }: SeenBoard,
  { looks, newest }: SeenBefore,
): Promise<QueueRow['news']> {
  const look = looks.get(board.id);
  if (!look) return null;
  const news = await newsSince(look, board, newest.get(board.id) ?? new Map(), said);
  const here = new Set(states.map(({ id }) => id));
  const count = (list: readonly { pictureId: string }[]) => {
    return list.filter(({ pictureId }) => here.has(pictureId)).length;
  };
  return {
    lookedAt: news.lookedAt,
    remarks: count(news.remarks),
    states: news.pictures.filter((id) => here.has(id)).length,
    answers: count(news.answers),
  };
}

/** Person id -> readings that stand on the newest state of three or more of their paintings on the boards one teaches. */
async function repeatedBy(
  painterIds: readonly string[],
  taught: readonly BoardListItem[],
  { visitor, isVeiled }: SeenBoards,
): Promise<Map<string, Repeated[]>> {
  const roles = new Map(taught.map(({ id, role }) => [id, role]));
  const newestStates = new Map<string, string[]>();
  for (const [boardId, paintings] of await paintingsBy(painterIds, [...roles.keys()])) {
    const role = roles.get(boardId);
    if (!role || (await isVeiled(boardId))) continue;
    const hidden = await hiddenPainters(boardId, visitor.personId, role);
    for (const { id, painterId } of newestOfEach(paintings)) {
      if (hidden.has(painterId)) continue;
      newestStates.set(painterId, [...(newestStates.get(painterId) ?? []), id]);
    }
  }
  const measured = await newestMeasures([...newestStates.values()].flat());
  return new Map(
    [...newestStates].map(([painterId, ids]) => {
      return [painterId, repeatedReadings(ids.flatMap((id) => measured.get(id) ?? []))];
    }),
  );
}

/** The newest state of each painting. */
function newestOfEach<Painting extends { id: string; follows: string | null }>(
  paintings: readonly Painting[],
): Painting[] {
  return paintings.filter(({ id }) => statesOf(paintings, id).at(-1)?.id === id);
}
