/**
 * First impressions: reading the revealed ones, and what is done when some are revealed or a painting goes.
 *
 * In the flow: rooms `silent/<personId>` → [impressions] → handler. Before they are revealed nothing of them leaves the
 * server but to who wrote them. IO: the store, sockets.
 */
import { readNote, writeNote } from '../core/class/notes.ts';
import { forgetTurn } from '../core/class/run.ts';
import { isRevealed } from '../core/class/state.ts';
import { painterOf, silentRoomsOf } from '../store/live-updates.ts';
import { announceFrame } from './frames.ts';
import type { Rooms } from './rooms.ts';

export interface Impression {
  personId: string;
  text: string;
}

/** What everybody saw first in a painting, or null while it is kept back. @throws what the store throws. */
export async function impressionsOf(
  rooms: Rooms,
  boardId: string,
  pictureId: string,
): Promise<Impression[] | null> {
  if (!isRevealed(await rooms.class.read(boardId), pictureId)) return null;
  const impressions: Impression[] = [];
  for (const name of await silentRoomsOf(boardId)) {
    const text = await rooms.use(boardId, name, (room) => room.read((doc) => readNote(doc, pictureId)));
    if (text !== '') impressions.push({ personId: name.slice('silent/'.length), text });
  }
  // Asked again: a new silent look of the same painting may have begun while this was read.
  return isRevealed(await rooms.class.read(boardId), pictureId) ? impressions : null;
}

/** Takes out of the store what was written and deleted again, before anybody else is told that there is something to read. */
export async function whenRevealed(rooms: Rooms, boardId: string): Promise<void> {
  for (const name of await silentRoomsOf(boardId)) await rooms.use(boardId, name, (room) => room.compact());
  await announce(rooms, boardId);
}

/** Tells every browser on the board that something was added or taken away, whichever room it is in. */
export async function announce(rooms: Rooms, boardId: string): Promise<void> {
  const present = await rooms.present(boardId);
  const setup = present.find(({ name }) => name === 'setup');
  setup?.tell(announceFrame());
  const told = new Set([...(setup?.connections ?? [])].map(({ person }) => person.id));
  // Who came in the silent look is in the class room alone.
  for (const each of present.find(({ name }) => name === 'class')?.connections ?? []) {
    if (!told.has(each.person.id)) each.send(announceFrame());
  }
}

/** Takes a painting that left the board out of the class and out of everybody's first impressions. */
export async function forgetPictureInClass(rooms: Rooms, boardId: string, pictureId: string): Promise<void> {
  for (const name of await silentRoomsOf(boardId)) {
    await rooms.use(boardId, name, async (room) => {
      if (!room.read((doc) => doc.getMap('notes').has(pictureId))) return;
      await room.write((doc) => writeNote(doc, pictureId, ''));
      await room.compact();
    });
  }
  const { order, now, had, shown } = await rooms.class.read(boardId);
  const known = now?.pictureId === pictureId || [...order, ...had, ...shown.keys()].includes(pictureId);
  if (!known) return;
  const painters = new Map<string, string | null>();
  for (const id of order) painters.set(id, await painterOf(boardId, id));
  await rooms.use(boardId, 'class', (room) =>
    room.write((doc) => {
      forgetTurn(doc, pictureId, (id) => painters.get(id) ?? null);
      doc.getMap('kept').delete(`shown-${pictureId}`);
    }),
  );
}

/** A last word that came after the reveal is told of anew. */
export async function tellOfLastWords(rooms: Rooms, boardId: string): Promise<void> {
  const state = await rooms.class.read(boardId);
  if (state.now && isRevealed(state, state.now.pictureId)) await announce(rooms, boardId);
}
