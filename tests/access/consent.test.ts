/** A minor's pictures, and those of who withdrew consent, are not for the others on the board to see. */
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { PUT as putConsent } from '#app/api/boards/[boardId]/consents/[personId]/[use]/route.ts';
import { GET as seeConsents } from '#app/api/boards/[boardId]/consents/route.ts';
import { GET as seeMeasures } from '#app/api/boards/[boardId]/measures/[pictureId]/route.ts';
import { GET as seeBytes } from '#app/api/boards/[boardId]/pictures/[pictureId]/[size]/route.ts';
import { GET as seePlan } from '#app/api/boards/[boardId]/plan/[pictureId]/route.ts';
import { GET as seeBoard } from '#app/api/boards/[boardId]/route.ts';
import { GET as listBoards } from '#app/api/boards/route.ts';
import type { BoardListItem, BoardView, ConsentView } from '#server/core/contract/responses.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { aPainting, join, type Somebody } from '#tests/live/a-live-server.ts';
import { aBoard, call, closeStage, openStage, type Stage } from './cast.ts';

let stage: Stage;
let boardId: string;
let pictureId: string;
beforeAll(async () => {
  stage = await openStage();
});
beforeEach(async () => {
  boardId = await aBoard(stage);
  pictureId = await aPainting(boardId, stage.people.ward.id);
});
afterAll(() => closeStage(stage));

async function seesIt(who: Somebody): Promise<boolean> {
  const board = (await (await call(seeBoard, who, { boardId })).json()) as BoardView;
  const inList = board.pictures.some(({ id }) => id === pictureId);
  const figures = (await call(seeMeasures, who, { boardId, pictureId })).status;
  // The row has no pixels here, so whoever may see it is told that this size is not there by the same code.
  expect((await call(seeBytes, who, { boardId, pictureId, size: '640' })).status).toBe(404);
  expect(figures).toBe(inList ? 202 : 404);
  expect((await call(seePlan, who, { boardId, pictureId })).status).toBe(inList ? 202 : 404);
  return inList;
}

const says = (who: Somebody, personId: string, given: boolean, use = 'class') =>
  call(putConsent, who, { boardId, personId, use }, { method: 'PUT', body: { given } });

async function whoSees(): Promise<string[]> {
  const names = ['host', 'owner', 'teacher', 'painter', 'peer', 'viewer', 'guardian', 'ward'] as const;
  const seen = await Promise.all(
    names.map(async (name) => ((await seesIt(stage.people[name])) ? [name] : [])),
  );
  return seen.flat();
}

const EVERYBODY = ['host', 'owner', 'teacher', 'painter', 'peer', 'viewer', 'guardian', 'ward'];
const THOSE_IT_CONCERNS = ['host', 'owner', 'teacher', 'guardian', 'ward'];

describe('a minor’s painting', () => {
  test('is seen by the others once the guardian has given consent, and no longer when it is withdrawn', async () => {
    const { guardian, ward } = stage.people;
    expect(await whoSees()).toEqual(THOSE_IT_CONCERNS);
    expect((await says(guardian, ward.id, true)).status).toBe(204);
    expect(await whoSees()).toEqual(EVERYBODY);
    await says(guardian, ward.id, false);
    expect(await whoSees()).toEqual(THOSE_IT_CONCERNS);
  });

  test('is not shown as the picture of the board in anybody’s list', async () => {
    const boards = (await (await call(listBoards, stage.people.peer, {})).json()) as BoardListItem[];
    expect(boards.find(({ id }) => id === boardId)?.coverPictureId).toBeNull();
  });

  test('has a room that the others cannot enter, and that closes for them when consent is withdrawn', async () => {
    const { guardian, peer, teacher, ward } = stage.people;
    const room = `painting/${pictureId}` as const;
    const early = join(stage.server.port, peer, boardId, room);
    expect((await early.closed).code).toBe(CLOSE.noSuchRoom);
    await says(guardian, ward.id, true);
    const [seen, led] = [peer, teacher].map((who) => join(stage.server.port, who, boardId, room));
    await Promise.all([seen?.synced, led?.synced]);
    const fromMs = performance.now();
    await says(guardian, ward.id, false);
    expect((await seen?.closed)?.code).toBe(CLOSE.noSuchRoom);
    expect(performance.now() - fromMs).toBeLessThan(5_000);
    expect(led?.provider.wsconnected).toBe(true);
    for (const client of [early, seen, led]) client?.leave();
  });
});

describe('a grown painter', () => {
  test('is seen without having said so, until they withdraw it', async () => {
    const { painter, peer } = stage.people;
    pictureId = await aPainting(boardId, painter.id);
    expect(await seesIt(peer)).toBe(true);
    await says(painter, painter.id, false);
    expect(await seesIt(peer)).toBe(false);
    expect(await seesIt(painter)).toBe(true);
  });
});

test('what was said is told with who said it, for each use apart', async () => {
  const { guardian, teacher, ward } = stage.people;
  await says(guardian, ward.id, true, 'example');
  const told = (await (await call(seeConsents, teacher, { boardId })).json()) as ConsentView[];
  const of = (use: string) => told.find((each) => each.person.id === ward.id && each.use === use);
  expect(of('example')).toMatchObject({ given: true, allowed: true, saidBy: 'guardian', mine: false });
  expect(of('class')).toMatchObject({ given: null, allowed: false, saidBy: null, at: null });
  expect(of('keep')).toMatchObject({ given: null, allowed: false });
});

test('a use that there is not is refused', async () => {
  const { painter } = stage.people;
  expect((await says(painter, painter.id, true, 'selling')).status).toBe(400);
});
