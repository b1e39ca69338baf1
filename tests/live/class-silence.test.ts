/**
 * What is written in a silent look reaches nobody else's machine, not a byte, until it is revealed: every frame that the
 * others are sent is searched for it. And who keeps to the rooms is let in again when the look is over.
 */
import { afterEach, beforeAll, describe, expect, test } from 'vitest';
import { WebSocket } from 'ws';
import * as sync from 'y-protocols/sync';
import * as Y from 'yjs';
import { readNote, writeNote } from '#server/core/class/notes.ts';
import { nextStep, setPaused, skipTurn, startClass, stopClass } from '#server/core/class/run.ts';
import { readClass } from '#server/core/class/state.ts';
import { STEPS, USUAL_LENGTHS } from '#server/core/class/steps.ts';
import type { RoomName } from '#server/core/live/layout.ts';
import { CLOSE, MESSAGE_ANNOUNCE } from '#server/core/live/wire.ts';
import { database } from '#server/store/database.ts';
import { readRoom } from '#server/store/live-updates.ts';
import { cast, server, startAgain } from './a-live-board.ts';
import { aPainting, eventually, join, type Somebody, syncFrame } from './a-live-server.ts';

const SECRET = 'gorse-yellow-over-the-left-bank';
const TAKEN_BACK = 'mauve-was-my-first-word';

let second: string;
beforeAll(async () => {
  second = await aPainting(cast.boardId, cast.peer.id);
});

const painters = () =>
  new Map([
    [cast.pictureId, cast.painter.id],
    [second, cast.peer.id],
  ]);
const painterOf = (pictureId: string) => painters().get(pictureId) ?? null;
const turns = () => [...painters()].map(([pictureId, painterId]) => ({ pictureId, painterId }));
const inClass = (change: (doc: Y.Doc) => void) => server.live.writeAsServer(cast.boardId, 'class', change);
const state = () => server.live.read(cast.boardId, 'class', (doc) => readClass(doc));

/** A socket that keeps every byte it is sent. */
async function recorder(who: Somebody, room: string) {
  const frames: Buffer[] = [];
  const socket = new WebSocket(`ws://127.0.0.1:${server.port}/live/${cast.boardId}/${room}`, {
    headers: { cookie: who.cookie },
  });
  socket.on('message', (data) => frames.push(data as Buffer)); // ws gives a Buffer where nothing else is asked for
  socket.on('error', () => {});
  const closed = new Promise<number>((resolve) => socket.once('close', (code) => resolve(code)));
  await new Promise<void>((open) => socket.once('open', () => open()));
  socket.send(syncFrame((encoder) => sync.writeSyncStep1(encoder, new Y.Doc())));
  return {
    frames,
    closed,
    close: () => socket.close(),
    heard: (text: string) => frames.some((frame) => frame.includes(text)),
  };
}

const open: { close(): void }[] = [];
afterEach(async () => {
  for (const each of open.splice(0)) each.close();
  await inClass(stopClass);
});

const heardBy = (listeners: readonly { heard(text: string): boolean }[]) =>
  listeners.filter(({ heard }) => heard(SECRET) || heard(TAKEN_BACK));

/** Everybody but who writes, in every room that they may be in. */
async function everybodyListens(writer: Somebody) {
  const others = [cast.host, cast.owner, cast.teacher, cast.painter, cast.viewer].filter(
    ({ id }) => id !== writer.id,
  );
  const rooms = ['class', 'setup', 'marks', `painting/${cast.pictureId}`, `painting/${second}`];
  const all = [];
  for (const who of others) {
    for (const room of [...rooms, `silent/${who.id}`]) all.push(await recorder(who, room));
  }
  open.push(...all);
  return all;
}

describe('first impressions', () => {
  test('not a byte reaches any other machine before they are revealed, and what was taken back never does', async () => {
    const listeners = await everybodyListens(cast.peer);
    await inClass((doc) => startClass(doc, turns(), USUAL_LENGTHS));
    const room = `silent/${cast.peer.id}` as const;
    const writer = join(server.port, cast.peer, cast.boardId, room);
    const elsewhere = join(server.port, cast.peer, cast.boardId, room);
    open.push({ close: writer.leave }, { close: elsewhere.leave });
    await Promise.all([writer.synced, elsewhere.synced]);
    writer.provider.awareness.setLocalState({ draft: SECRET });
    for (const text of [TAKEN_BACK, '', SECRET]) writeNote(writer.doc, cast.pictureId, text);
    await eventually(
      'their own other window has it',
      () => readNote(elsewhere.doc, cast.pictureId) === SECRET,
    );
    expect(await server.live.impressionsOf(cast.boardId, cast.pictureId)).toBeNull();
    // Somebody who asks for the rooms only now is told no more.
    for (const who of [cast.host, cast.teacher, cast.painter, cast.owner, cast.viewer, cast.stranger]) {
      const late = await recorder(who, room);
      expect([CLOSE.notAllowed, CLOSE.noSuchRoom]).toContain(await late.closed);
      listeners.push(late);
    }
    expect(heardBy(listeners)).toEqual([]);

    await inClass((doc) => nextStep(doc, painterOf));
    await eventually('they are revealed', async () => {
      return (await server.live.impressionsOf(cast.boardId, cast.pictureId)) !== null;
    });
    expect(await server.live.impressionsOf(cast.boardId, cast.pictureId)).toEqual([
      { personId: cast.peer.id, text: SECRET },
    ]);
    await eventually('everybody who listens is told that there is something to read', () =>
      listeners.some(({ frames }) =>
        frames.some((frame) => frame.length === 1 && frame[0] === MESSAGE_ANNOUNCE),
      ),
    );
    // Even now it is read over HTTP alone, and nobody else is let into the room.
    expect(heardBy(listeners)).toEqual([]);
    const after = await recorder(cast.host, room);
    expect(await after.closed).toBe(CLOSE.notAllowed);
    expect(after.heard(SECRET)).toBe(false);
  });

  test('what was written and taken back is not in the store once they are revealed', async () => {
    await inClass((doc) => startClass(doc, turns(), USUAL_LENGTHS));
    const room = `silent/${cast.painter.id}` as const;
    const writer = join(server.port, cast.painter, cast.boardId, room);
    open.push({ close: writer.leave });
    await writer.synced;
    for (const text of [TAKEN_BACK, SECRET]) writeNote(writer.doc, cast.pictureId, text);
    await eventually('it is stored', () =>
      server.live.read(cast.boardId, room, (doc) => readNote(doc, cast.pictureId) === SECRET),
    );
    await inClass((doc) => nextStep(doc, painterOf));
    await eventually('no update holds the word any more', async () => {
      const { updates } = await readRoom(cast.boardId, room);
      return updates.length > 0 && !updates.some((update) => Buffer.from(update).includes(TAKEN_BACK));
    });
    const { updates } = await readRoom(cast.boardId, room);
    expect(updates.some((update) => Buffer.from(update).includes(SECRET))).toBe(true);
  });

  test('a new silent look of the same painting keeps them back again', async () => {
    await inClass((doc) => startClass(doc, turns(), USUAL_LENGTHS));
    await inClass((doc) => nextStep(doc, painterOf));
    await eventually('they are revealed', async () => {
      return (await server.live.impressionsOf(cast.boardId, cast.pictureId)) !== null;
    });
    await inClass((doc) => startClass(doc, turns(), USUAL_LENGTHS));
    expect(await server.live.impressionsOf(cast.boardId, cast.pictureId)).toBeNull();
  });

  test('a skipped silent look reveals nothing; a painting that goes takes its impressions along', async () => {
    const gone = await aPainting(cast.boardId, cast.painter.id);
    const order = [{ pictureId: gone, painterId: cast.painter.id }, ...turns()];
    await inClass((doc) => startClass(doc, order, USUAL_LENGTHS));
    const room = `silent/${cast.peer.id}` as const;
    const writer = join(server.port, cast.peer, cast.boardId, room);
    open.push({ close: writer.leave });
    await writer.synced;
    const words = 'slate-blue-in-the-far-gap';
    writeNote(writer.doc, gone, words);
    await eventually('it is stored', () =>
      server.live.read(cast.boardId, room, (doc) => readNote(doc, gone) === words),
    );
    await inClass((doc) => skipTurn(doc, (id) => (id === gone ? cast.painter.id : painterOf(id))));
    expect((await state()).now?.pictureId).not.toBe(gone);
    expect((await state()).order.at(-1)).toBe(gone);
    expect(await server.live.impressionsOf(cast.boardId, gone)).toBeNull();

    await database().picture.delete({ where: { id: gone } });
    await server.live.closePicture(cast.boardId, gone);
    expect((await state()).order).not.toContain(gone);
    const { updates } = await readRoom(cast.boardId, room);
    expect(updates.some((update) => Buffer.from(update).includes(words))).toBe(false);
  });
});

describe('the rooms that hold figures and remarks', () => {
  const KEPT: { kind: string; room: () => RoomName }[] = [
    { kind: 'setup', room: () => 'setup' },
    { kind: 'marks', room: () => 'marks' },
    { kind: 'a painting', room: () => `painting/${cast.pictureId}` },
  ];

  test.each(KEPT)(
    'nobody is let into $kind in a silent look, and all are when it is over',
    async ({ room }) => {
      await inClass((doc) => startClass(doc, turns(), USUAL_LENGTHS));
      await eventually('the class is known', async () => (await state()).clock !== null);
      for (const who of [cast.host, cast.teacher, cast.painter, cast.peer]) {
        const early = await recorder(who, room());
        expect(await early.closed).toBe(CLOSE.veiled);
      }
      // A browser's own client goes on asking by itself.
      const patient = join(server.port, cast.peer, cast.boardId, room());
      open.push({ close: patient.leave });
      expect((await patient.closed).code).toBe(CLOSE.veiled);
      await inClass((doc) => nextStep(doc, painterOf));
      await patient.synced;
    },
  );
});

describe('the clock', () => {
  test('the server takes down when a step began and how long it was held, and goes on after a restart', async () => {
    const before = Date.now();
    await inClass((doc) => startClass(doc, turns(), USUAL_LENGTHS));
    await eventually('it counts', async () => (await state()).clock?.number === (await state()).now?.number);
    const first = (await state()).clock;
    expect(first?.stepBeganMs).toBeGreaterThanOrEqual(before);
    expect(first?.stepBeganMs).toBeLessThanOrEqual(Date.now());

    await inClass((doc) => setPaused(doc, true));
    await eventually('it is held', async () => (await state()).clock?.heldSinceMs !== null);
    await inClass((doc) => setPaused(doc, false));
    await eventually('it goes on', async () => (await state()).clock?.heldSinceMs === null);
    expect((await state()).clock?.stepHeldMs).toBeGreaterThanOrEqual(0);
    expect((await state()).clock?.stepBeganMs).toBe(first?.stepBeganMs);

    await server.stop();
    await startAgain();
    expect((await state()).clock?.stepBeganMs).toBe(first?.stepBeganMs);
  });

  test('two who press “next” in the same moment go on by one step', async () => {
    await inClass((doc) => startClass(doc, turns(), USUAL_LENGTHS));
    const hands = [
      join(server.port, cast.teacher, cast.boardId, 'class'),
      join(server.port, cast.host, cast.boardId, 'class'),
    ];
    open.push(...hands.map(({ leave }) => ({ close: leave })));
    await Promise.all(hands.map(({ synced }) => synced));
    for (const { doc } of hands) nextStep(doc, painterOf);
    await eventually('both are taken', async () => (await state()).now?.step === STEPS[1]);
    await eventually('both see the same', () => {
      const [one, two] = hands.map(({ doc }) => JSON.stringify(doc.getMap('class').get('now')));
      return one === two;
    });
    expect((await state()).now?.step).toBe(STEPS[1]);
  });

  test('whoever comes late is told the server’s time and the whole state', async () => {
    await inClass((doc) => startClass(doc, turns(), USUAL_LENGTHS));
    const late = join(server.port, cast.viewer, cast.boardId, 'class');
    open.push({ close: late.leave });
    await late.synced;
    await eventually('the clock is there', () => readClass(late.doc).clock !== null);
    expect(readClass(late.doc)).toEqual(await state());
  });
});
