import { beforeEach, describe, expect, test } from 'vitest';
import type { WebSocket } from 'ws';
import * as sync from 'y-protocols/sync';
import * as Y from 'yjs';
import { declareRoots } from '#server/core/live/document.ts';
import { type Mark, putMark, readMarks } from '#server/core/live/marks.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { askFrame } from '#server/live/frames.ts';
import { cast, server } from './a-live-board.ts';
import { awarenessFrame, type Client, eventually, join, rawSocket, syncFrame } from './a-live-server.ts';

function mark(id: string, author: string): Mark {
  return {
    id,
    author,
    at: 1,
    pictureId: 'p',
    kind: 'pin',
    points: [[0, 1]],
    text: 'Cooler',
    planeId: null,
    parent: null,
  };
}

function updateFrame(update: Uint8Array): Uint8Array {
  return syncFrame((encoder) => sync.writeUpdate(encoder, update));
}

function closed(socket: WebSocket): Promise<{ code: number; reason: string }> {
  return new Promise((resolve) => {
    socket.once('close', (code, reason) => resolve({ code, reason: String(reason) }));
  });
}

describe('a broken or hostile client', () => {
  let one: Client;
  let two: Client;
  let heard: number;

  beforeEach(async () => {
    one = join(server.port, cast.painter, cast.boardId, 'marks');
    two = join(server.port, cast.teacher, cast.boardId, 'marks');
    await Promise.all([one.synced, two.synced]);
    heard = 0;
    two.doc.on('update', () => heard++);
    return () => {
      one.leave();
      two.leave();
    };
  });

  /** The two others still work together and nothing came to them but this. */
  async function undisturbed(id: string): Promise<void> {
    const before = heard;
    putMark(one.doc, mark(id, cast.painter.id));
    await eventually('the other sees the mark', () => readMarks(two.doc).some((each) => each.id === id));
    expect(heard).toBe(before + 1);
    expect(one.refusals).toEqual([]);
    expect(two.refusals).toEqual([]);
    expect(await server.live.healthy()).toBe(true);
  }

  test('a message of 50 MB closes its sender, and one of 5 MB with a sentence', async () => {
    const huge = await rawSocket(server.port, cast.peer, cast.boardId, 'marks');
    const hugeEnd = closed(huge);
    huge.send(new Uint8Array(50_000_000));
    // RFC 6455 §7.4.1: 1009 = a message too big to process.
    expect([1009, 1006]).toContain((await hugeEnd).code);
    const large = await rawSocket(server.port, cast.peer, cast.boardId, 'marks');
    const largeEnd = closed(large);
    large.send(new Uint8Array(5_000_000));
    const { code, reason } = await largeEnd;
    expect(code).toBe(CLOSE.tooLarge);
    expect(reason).toContain('4000 kB');
    await undisturbed('after-large');
  });

  test('10,000 messages at once close their sender with the number', async () => {
    const socket = await rawSocket(server.port, cast.peer, cast.boardId, 'marks');
    const end = closed(socket);
    const empty = updateFrame(Y.encodeStateAsUpdate(new Y.Doc()));
    for (let count = 0; count < 10_000; count++) socket.send(empty);
    const { code, reason } = await end;
    expect(code).toBe(CLOSE.tooMany);
    expect(reason).toContain('200 messages a second');
    await undisturbed('after-flood');
  });

  test('a socket that asks for everything and never reads is closed, and others go on', async () => {
    one.doc.transact(() => {
      for (let index = 0; index < 60; index++) {
        putMark(one.doc, { ...mark(`long-${index}`, cast.painter.id), text: 'x'.repeat(3900) });
      }
    });
    await eventually('the room is large', () => readMarks(two.doc).some(({ id }) => id === 'long-59'));
    const deaf = await rawSocket(server.port, cast.viewer, cast.boardId, 'marks');
    const end = closed(deaf);
    deaf.send(awarenessFrame(777, 1, { pointer: null }));
    await eventually('it is seen to be there', async () => (await heldBy(cast.viewer.id)) === 1);
    deaf.pause();
    // Each answer holds 240 kB: 36 MB in all, more than any socket buffer takes.
    for (let count = 0; count < 150; count++) deaf.send(askFrame(new Y.Doc()));
    await undisturbed('while-deaf');
    await eventually('the server has let go of it', async () => (await heldBy(cast.viewer.id)) === 0);
    deaf.resume();
    expect([CLOSE.notReading, 1006]).toContain((await end).code);
    await undisturbed('after-deaf');
  });

  test('nobody can advance another person’s history', async () => {
    putMark(one.doc, mark('own-history', cast.painter.id));
    await eventually('it is stored', () => readMarks(two.doc).some(({ id }) => id === 'own-history'));
    const forged = declareRoots(new Y.Doc(), 'marks');
    Y.applyUpdate(forged, Y.encodeStateAsUpdate(one.doc));
    forged.clientID = one.doc.clientID;
    const known = Y.encodeStateVector(forged);
    putMark(forged, mark('in-your-name', cast.peer.id));
    const socket = await rawSocket(server.port, cast.peer, cast.boardId, 'marks');
    const end = closed(socket);
    socket.send(updateFrame(Y.encodeStateAsUpdate(forged, known)));
    expect((await end).reason).toContain('another person');
    await undisturbed('after-forged-history');
  });
});

/** How many people the server shows as present under an id: the room forgets a socket when it is cut. */
async function heldBy(personId: string): Promise<number> {
  const witness = join(server.port, cast.host, cast.boardId, 'marks');
  await witness.synced;
  const states = [...witness.provider.awareness.getStates().values()];
  witness.leave();
  return states.filter((state) => state.person?.id === personId).length;
}
