/** Whom somebody blocks is nowhere before them, both ways: pointers and names on the wire, remarks on every screen. */

import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type * as Y from 'yjs';
import { MarkReader } from '#app/_live/mark-reader.ts';
import { DELETE as unblock } from '#app/api/blocks/[personId]/route.ts';
import { GET as seeBlocks } from '#app/api/blocks/route.ts';
import { PUT as block } from '#app/api/boards/[boardId]/blocks/[personId]/route.ts';
import { GET as seeBoard } from '#app/api/boards/[boardId]/route.ts';
import type { BoardView } from '#server/core/contract/responses.ts';
import { putMark } from '#server/core/live/marks.ts';
import { SOMEBODY } from '#server/core/live/presence.ts';
import { type Client, eventually, join, type Somebody } from '#tests/live/a-live-server.ts';
import { aBoard, aPaintingOn, call, closeStage, openStage, type Stage } from './cast.ts';

let stage: Stage;
let boardId: string;
const open: Client[] = [];
beforeAll(async () => {
  stage = await openStage();
});
beforeEach(async () => {
  boardId = await aBoard(stage);
});
afterAll(() => closeStage(stage));

const blocks = (who: Somebody, other: Somebody) =>
  call(block, who, { boardId, personId: other.id }, { method: 'PUT' });
const unblocks = (who: Somebody, other: Somebody) =>
  call(unblock, who, { personId: other.id }, { method: 'DELETE' });

async function boardOf(who: Somebody): Promise<BoardView> {
  return (await (await call(seeBoard, who, { boardId })).json()) as BoardView;
}

async function comesIn(who: Somebody): Promise<Client> {
  const client = join(stage.server.port, who, boardId, 'marks');
  open.push(client);
  await client.synced;
  return client;
}

const points = (client: Client, x: number, extra: object = {}) =>
  client.provider.awareness.setLocalState({ pointer: { pictureId: 'p', x, y: 0.5 }, ...extra });

/** What a browser holds of one person's awareness. */
const statesOf = (client: Client, who: Somebody) =>
  [...client.provider.awareness.getStates().values()].filter((state) => state.person?.id === who.id);

describe('two painters, one of whom blocks the other', () => {
  test('lose sight of each other’s pointers within a second, and of nobody else’s', async () => {
    const { painter, fellow, peer } = stage.people;
    const [one, two, third] = [await comesIn(painter), await comesIn(fellow), await comesIn(peer)];
    for (const client of [one, two, third]) points(client, 0.1);
    await eventually('all see all', () => statesOf(one, fellow).length + statesOf(two, painter).length === 2);
    const fromMs = performance.now();
    expect((await blocks(painter, fellow)).status).toBe(204);
    await eventually(
      'neither sees the other',
      () => statesOf(one, fellow).length + statesOf(two, painter).length === 0,
    );
    expect(performance.now() - fromMs).toBeLessThan(1000);
    points(one, 0.7);
    points(two, 0.8);
    await eventually('the third hears of both', () => {
      return [painter, fellow].every((who) => (statesOf(third, who)[0]?.pointer?.x ?? 0) > 0.6);
    });
    expect(statesOf(one, fellow)).toEqual([]);
    expect(statesOf(two, painter)).toEqual([]);

    await unblocks(painter, fellow);
    await eventually('they see each other again', () => {
      return statesOf(one, fellow).length === 1 && statesOf(two, painter).length === 1;
    });
    for (const client of open.splice(0)) client.leave();
  });

  test('hear of what the other holds, but not who it is', async () => {
    const { painter, fellow } = stage.people;
    await blocks(painter, fellow);
    const [one, two] = [await comesIn(painter), await comesIn(fellow)];
    points(two, 0.4, { hold: { what: 'outline/p/ridge', since: 1 } });
    const holds = () => [...one.provider.awareness.getStates().values()].filter(({ hold }) => hold);
    await eventually('the hold is told', () => holds().length === 1);
    expect(holds()).toEqual([{ person: SOMEBODY, hold: { what: 'outline/p/ridge', since: 1 } }]);
    await unblocks(painter, fellow);
    for (const client of open.splice(0)) client.leave();
  });

  test('do not find each other’s remarks on their screens, old ones too, nor answers under them', async () => {
    const { painter, fellow, peer } = stage.people;
    const pictureId = await aPaintingOn(boardId, peer);
    const remark = (id: string, author: Somebody, parent: string | null = null) => ({
      ...{ id, author: author.id, pictureId, text: `by ${author.name}`, planeId: null, parent, at: 1 },
      ...(parent
        ? { kind: 'reply' as const, points: [] }
        : { kind: 'pin' as const, points: [[0.5, 0.5] as [number, number]] }),
    });
    await stage.server.live.writeAsServer(boardId, 'marks', (doc) => {
      putMark(doc, remark('one', painter));
      putMark(doc, remark('two', fellow));
      putMark(doc, remark('answer', peer, 'two'));
    });
    await blocks(painter, fellow);
    const shownTo = async (who: Somebody) => {
      const board = await boardOf(who);
      return stage.server.live.read(boardId, 'marks', (doc: Y.Doc) => {
        const writer = { personId: who.id, role: board.role, paints: false };
        const remarks = new Map([
          [pictureId, { isReference: false, hidden: new Set<string>(), allowsSketch: false }],
        ]);
        return new MarkReader(doc)
          .views({ board, writer, remarks })
          .map(({ id }) => id)
          .sort();
      });
    };
    expect(await shownTo(painter)).toEqual(['one']);
    expect(await shownTo(fellow)).toEqual(['answer', 'two']);
    expect(await shownTo(peer)).toEqual(['answer', 'one', 'two']);
    expect((await boardOf(fellow)).blocked).toEqual([painter.id]);
    await unblocks(painter, fellow);
    expect(await shownTo(painter)).toEqual(['answer', 'one', 'two']);
  });
});

test('nobody is told who blocks them; one’s own are listed and can be undone', async () => {
  const { painter, fellow } = stage.people;
  await blocks(painter, fellow);
  expect(await (await call(seeBlocks, painter, {})).json()).toEqual([{ id: fellow.id, name: fellow.name }]);
  expect(await (await call(seeBlocks, fellow, {})).json()).toEqual([]);
  await unblocks(fellow, painter);
  expect(await (await call(seeBlocks, painter, {})).json()).toHaveLength(1);
  await unblocks(painter, fellow);
  expect(await (await call(seeBlocks, painter, {})).json()).toEqual([]);
});

test('whoever runs the board or teaches on it is not blocked; the sentence says what to do instead', async () => {
  const { painter, teacher, owner, host } = stage.people;
  for (const leader of [teacher, owner, host]) {
    const answer = await blocks(painter, leader);
    expect(answer.status).toBe(403);
    expect(((await answer.json()) as { error: { message: string } }).error.message).toContain('report it');
  }
  expect((await boardOf(painter)).blocked).toEqual([]);
});

test('oneself and strangers cannot be blocked', async () => {
  const { painter, stranger } = stage.people;
  expect((await blocks(painter, painter)).status).toBe(400);
  expect((await blocks(painter, stranger)).status).toBe(404);
});
