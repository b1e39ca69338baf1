/**
 * What came onto boards since somebody last looked, and remembering how far they looked.
 *
 * In the flow: handlers, queue -> [since] -> looks, live-documents. What is new is told by the documents' own counting;
 * pictures by the server's clock. IO: the database.
 */

import * as Y from 'yjs';
import type { BoardNews, NewsLine } from '../core/contract/own-time.ts';
import type { LookedRequest } from '../core/contract/own-time-requests.ts';
import type { BoardView } from '../core/contract/responses.ts';
import { parseRoomName, type RoomName } from '../core/live/layout.ts';
import { newKeys, type Seen, sawAll, seenFrom, seenWhole } from '../core/own-time/news.ts';
import { newsLine } from '../core/own-time/news-line.ts';
import { listBoards } from '../store/boards.ts';
import { newestUpdates } from '../store/live-documents.ts';
import { type LookRow, looksOf, putLook, readLook, type SeenOfBoard } from '../store/looks.ts';
import { newestPictures } from '../store/painters.ts';
import { boardAsSeen } from './consent.ts';
import { SaidOnBoard } from './said-on-board.ts';
import type { Visitor } from './session.ts';

/** Longest list in an answer; nobody reads further. */
const MOST_NEWS = 300;
/** Rooms that nobody wrote in yet were seen whole. */
const NOTHING: Seen = new Map();

/** Null when the person never looked at the board. @param board As they see it. */
export async function newsOn(board: BoardView): Promise<BoardNews | null> {
  const look = await readLook(board.id, board.me.id);
  if (!look) return null;
  const newest = (await newestUpdates([board.id])).get(board.id) ?? new Map();
  return newsSince(look, board, newest);
}

/** @param newest Room -> id of its newest stored update. */
export async function newsSince(
  look: LookRow,
  board: BoardView,
  newest: ReadonlyMap<string, bigint>,
  said = new SaidOnBoard(board),
): Promise<BoardNews> {
  const unread = (room: RoomName): Seen | null => {
    const seen = look.rooms[room];
    const newestId = newest.get(room);
    if (newestId === undefined || (seen && newestId <= BigInt(seen.through))) return null;
    return (seen && seenFrom(Buffer.from(seen.vector, 'base64'))) ?? NOTHING;
  };
  const pictures = board.pictures.filter(({ createdAt, painter }) => {
    return new Date(createdAt) > look.at && painter.id !== board.me.id;
  });
  const answers: BoardNews['answers'] = [];
  const cards: BoardNews['cards'] = [];
  for (const { id, kind } of board.pictures) {
    const room: RoomName = kind === 'reference' ? 'setup' : `painting/${id}`;
    const seen = unread(room);
    if (!seen || kind === 'reference') continue;
    const doc = await said.document(room);
    answers.push(...newKeys(doc, 'answers', seen).map((key) => ({ pictureId: id, key })));
    const changed = newKeys(doc, 'cards', seen).map((flat) => flat.slice(0, flat.indexOf('.')));
    cards.push(...[...new Set(changed)].map((key) => ({ pictureId: id, key })));
  }
  return {
    lookedAt: look.at.toISOString(),
    remarks: (await newRemarks(look, unread('marks'), board, said)).slice(0, MOST_NEWS),
    pictures: pictures.map(({ id }) => id).slice(0, MOST_NEWS),
    answers: answers.slice(0, MOST_NEWS),
    cards: cards.slice(0, MOST_NEWS),
  };
}

/** A sketch counts once, however many strokes it has. */
async function newRemarks(
  look: LookRow,
  seen: Seen | null,
  board: BoardView,
  said: SaidOnBoard,
): Promise<BoardNews['remarks']> {
  if (!seen && look.unseen.length === 0) return [];
  const arrived = seen ? newKeys(await said.document('marks'), 'marks', seen) : [];
  const fresh = new Set([...arrived, ...look.unseen]);
  if (fresh.size === 0) return [];
  const sketches = new Set<string>();
  return (await said.marks()).flatMap(({ id, pictureId, author, kind, parent }) => {
    if (!fresh.has(id) || author === board.me.id) return [];
    if (kind === 'sketch') {
      if (parent !== null && (sketches.has(parent) || fresh.has(parent))) return [];
      sketches.add(parent ?? id);
    }
    return [{ id, pictureId }];
  });
}

/** For every board that somebody looked at before and to which something came: how much, picture by picture. */
export async function newsOfBoards(visitor: Visitor): Promise<Record<string, NewsLine>> {
  const [looks, boards] = await Promise.all([
    looksOf(visitor.personId),
    listBoards(visitor.personId, visitor.isHost),
  ]);
  const roles = new Map(boards.map(({ id, role }) => [id, role]));
  const ids = looks.map(({ boardId }) => boardId).filter((id) => roles.has(id));
  const [newest, posted] = await Promise.all([newestUpdates(ids), newestPictures(ids)]);
  const lines: Record<string, NewsLine> = {};
  for (const look of looks) {
    const role = roles.get(look.boardId);
    const rooms = newest.get(look.boardId) ?? new Map();
    if (!mayHaveNews(look, rooms, posted.get(look.boardId))) continue;
    const board = role ? await boardAsSeen(look.boardId, visitor, role) : null;
    if (!board) continue;
    const news = await newsSince(look, board, rooms);
    const line = newsLine(news, board);
    if (line.pictures.length > 0) lines[board.id] = line;
  }
  return lines;
}

/** Told without reading a room: false where nothing was stored and nothing posted since all was seen. */
function mayHaveNews(look: LookRow, newest: ReadonlyMap<string, bigint>, posted: Date | undefined): boolean {
  if (look.unseen.length > 0 || (posted !== undefined && posted > look.at)) return true;
  return [...newest].some(([room, id]) => {
    const seen = look.rooms[room];
    return (room === 'marks' || room.startsWith('painting/')) && !(seen && id <= BigInt(seen.through));
  });
}

/**
 * Remembers that somebody looked, and how far.
 *
 * Of rooms that were not open in the browser the older memory stays; at the first look every room counts as seen, for
 * nobody wants the whole past as news. @param seen What the browser says; it can only deceive its own person.
 */
export async function rememberLook(board: BoardView, seen: LookedRequest): Promise<void> {
  const before = await readLook(board.id, board.me.id);
  const newest = (await newestUpdates([board.id])).get(board.id) ?? new Map<string, bigint>();
  const said = new SaidOnBoard(board);
  const rooms: SeenOfBoard['rooms'] = {};
  const ids = new Set(board.pictures.map(({ id }) => `painting/${id}`));
  for (const [name, newestId] of newest) {
    const room = parseRoomName(name);
    if (room === null || !(room === 'setup' || room === 'marks' || ids.has(room))) continue;
    const vector = seen.rooms[room] ?? (before ? undefined : '');
    const kept = before?.rooms[room];
    const next = vector === undefined ? kept : await roomSeen(said, room, vector, newestId, kept);
    if (next) rooms[room] = next;
  }
  await putLook(board.id, board.me.id, { rooms, unseen: seen.unseen });
}

type RoomSeen = SeenOfBoard['rooms'][string];

/** @param vector Empty = all that is there. */
async function roomSeen(
  said: SaidOnBoard,
  room: RoomName,
  vector: string,
  newestId: bigint,
  kept: RoomSeen | undefined,
): Promise<RoomSeen | undefined> {
  const doc = await said.document(room);
  const seen = vector === '' ? seenWhole(doc) : seenFrom(Buffer.from(vector, 'base64'));
  if (!seen) return kept;
  return {
    vector: vector === '' ? Buffer.from(Y.encodeStateVector(doc)).toString('base64') : vector,
    // Without having seen all of it, the room is read again whenever somebody asks what is new.
    through: sawAll(doc, seen) ? String(newestId) : '0',
  };
}
