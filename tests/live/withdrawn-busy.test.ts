/** A picture is taken back while people write on another one: nothing of what anybody saw there is lost. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { putMark, readMarks } from '#server/core/live/marks.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { database } from '#server/store/database.ts';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';
import {
  aBoardWithPeople,
  aPainting,
  type Client,
  join,
  type LiveServer,
  startLive,
} from './a-live-server.ts';

const ROUNDS = 40;
const SECRET = 'words on the one that goes';
let store: AStore;
let server: LiveServer;
beforeAll(async () => {
  store = await openAStore();
  server = await startLive();
});
afterAll(async () => {
  await server.stop();
  await store.close();
});

test('taken back under three writers', { timeout: 120_000 }, async () => {
  const { boardId, pictureId: goes, painter, peer, teacher } = await aBoardWithPeople();
  const stays = await aPainting(boardId, painter.id);
  const mark = (id: string, author: string, pictureId: string, text: string) => ({
    ...{ id, author, pictureId, kind: 'pin' as const, text, planeId: null, parent: null, at: 1 },
    points: [[0.5, 0.5] as [number, number]],
  });
  await server.live.writeAsServer(boardId, 'marks', (doc) =>
    putMark(doc, mark('gone', peer.id, goes, SECRET)),
  );
  const writers = [painter, peer, teacher].map((who) => ({
    who,
    client: join(server.port, who, boardId, 'marks'),
  }));
  await Promise.all(writers.map(({ client }) => client.synced));

  /** What reached somebody else than its author. */
  const seen = new Set<string>();
  const look = (client: Client, own: string) => {
    for (const key of client.doc.getMap('marks').keys()) if (!key.startsWith(`${own}-`)) seen.add(key);
  };
  let removal: Promise<number> | null = null;
  for (let round = 0; round < ROUNDS; round++) {
    for (const { who, client } of writers) {
      putMark(client.doc, mark(`${who.name}-${round}`, who.id, stays, `${round}`));
      look(client, who.name);
    }
    if (round === ROUNDS / 2) removal = server.live.closePicture(boardId, goes);
    await new Promise((next) => setTimeout(next, 5));
  }
  expect(await removal).toBe(1);
  for (const { who, client } of writers) {
    // Sent out with the sentence that it is loaded afresh; what others saw of them until then is there.
    expect((await client.closed).code).toBe(CLOSE.epochOver);
    look(client, who.name);
  }
  seen.delete('gone');
  expect(seen.size).toBeGreaterThan(ROUNDS);
  const there = await server.live.read(boardId, 'marks', (doc) => readMarks(doc).map(({ id }) => id));
  expect([...seen].filter((id) => !there.includes(id))).toEqual([]);
  expect(there).not.toContain('gone');
  for (const { client } of writers) client.leave();
  const rows = await database().liveUpdate.findMany({ where: { boardId, room: 'marks' } });
  const parts = await database().liveSnapshot.findMany({ where: { boardId, room: 'marks' } });
  for (const { bytes } of [...rows, ...parts]) expect(Buffer.from(bytes).includes(SECRET)).toBe(false);
  expect(server.trouble).toEqual([]);
});
