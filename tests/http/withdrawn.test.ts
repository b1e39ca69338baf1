/**
 * A picture that was taken back is gone: every address of it, its files, its figures, what was said and drawn on it;
 * states that followed it follow the one before.
 */
import { access, readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import * as Y from 'yjs';
import { GET as seeMeasures } from '#app/api/boards/[boardId]/measures/[pictureId]/route.ts';
import { GET as seeBytes } from '#app/api/boards/[boardId]/pictures/[pictureId]/[size]/route.ts';
import {
  GET as seePicture,
  DELETE as withdraw,
} from '#app/api/boards/[boardId]/pictures/[pictureId]/route.ts';
import { POST as post } from '#app/api/boards/[boardId]/pictures/route.ts';
import { GET as seeBoard } from '#app/api/boards/[boardId]/route.ts';
import { GET as listBoards } from '#app/api/boards/route.ts';
import type { BoardListItem, BoardView } from '#server/core/contract/responses.ts';
import { putMark, readMarks } from '#server/core/live/marks.ts';
import { setNod } from '#server/core/live/nods.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { offerServices, services } from '#server/http/services.ts';
import { createRunner, type Runner } from '#server/pipeline/runner.ts';
import { blobPath } from '#server/store/blobs.ts';
import { database } from '#server/store/database.ts';
import { aBoard, call, closeStage, openStage, type Stage } from '#tests/access/cast.ts';
import { join, type Somebody } from '#tests/live/a-live-server.ts';

const PHOTO = fileURLToPath(new URL('../fixtures/photos/painting-harvest-plain-1888.jpg', import.meta.url));
const SIZES = ['640', '1280', '2560', 'lossless-640', 'plate', 'clip-map', 'original', 'untouched'];
let stage: Stage;
let runner: Runner;
let boardId: string;
beforeAll(async () => {
  stage = await openStage();
  runner = await createRunner({ onResult: () => undefined });
  const before = services();
  offerServices({
    ...before,
    takeInPicture: (incoming) => runner.takeInPicture(incoming),
    measuresOf: (board, picture) => runner.measuresOf(board, picture),
    planOf: (board, picture) => runner.planOf(board, picture),
    async pictureRemoved(board, picture) {
      const marks = await before.pictureRemoved(board, picture);
      await runner.pictureRemoved(board, picture);
      return marks;
    },
  });
  boardId = await aBoard(stage);
}, 60_000);
afterAll(async () => {
  await runner.stop();
  await closeStage(stage);
});

async function posts(who: Somebody, follows?: string): Promise<string> {
  const form = new FormData();
  form.set('kind', 'painting');
  if (follows) form.set('follows', follows);
  form.set('keepUntouched', 'yes');
  form.set('file', new File([new Uint8Array(await readFile(PHOTO))], 'study.jpg', { type: 'image/jpeg' }));
  const answer = await call(post, who, { boardId }, { method: 'POST', body: form });
  expect(answer.status).toBe(201);
  return ((await answer.json()) as { id: string }).id;
}

/** Files that the rows of a picture name. */
async function filesOf(pictureId: string): Promise<string[]> {
  const row = await database().picture.findUniqueOrThrow({
    where: { id: pictureId },
    include: { renditions: true },
  });
  return [row.originalHash, row.untouchedHash, ...row.renditions.map(({ hash }) => hash)].flatMap(
    (hash) => hash ?? [],
  );
}

const isThere = (hash: string) =>
  access(blobPath(hash)).then(
    () => true,
    () => false,
  );

test('nothing of it is left for anybody, at once', { timeout: 60_000 }, async () => {
  const { painter, peer, fellow, host } = stage.people;
  const first = await posts(painter);
  const taken = await posts(painter, first);
  const after = await posts(painter, taken);
  // The same file posted by somebody else: its blobs are shared and stay.
  const files = await filesOf(taken);
  expect(files.length).toBeGreaterThan(5);

  const remark = (id: string, author: Somebody, pictureId: string, text: string) => ({
    ...{ id, author: author.id, pictureId, kind: 'pin' as const, text, planeId: null, parent: null, at: 1 },
    points: [[0.5, 0.5] as [number, number]],
  });
  const inMarks = join(stage.server.port, peer, boardId, 'marks');
  await inMarks.synced;
  putMark(inMarks.doc, remark('on-it', peer, taken, 'Bring the far hills forward'));
  await stage.server.live.writeAsServer(boardId, 'marks', (doc) => {
    putMark(doc, remark('elsewhere', fellow, first, 'Keep this edge'));
    setNod(doc, 'on-it', fellow.id, true);
  });
  await stage.server.live.writeAsServer(boardId, `painting/${taken}`, (doc) => {
    doc.getText('intention').insert(0, 'The cold before the rain');
  });
  const inPainting = join(stage.server.port, peer, boardId, `painting/${taken}`);
  await inPainting.synced;
  const seen = await call(seeBytes, peer, { boardId, pictureId: taken, size: '640' });
  expect(seen.status).toBe(200);
  expect(seen.headers.get('cache-control')).toBe('private, max-age=0, must-revalidate');

  const fromMs = performance.now();
  expect((await call(withdraw, painter, { boardId, pictureId: taken }, { method: 'DELETE' })).status).toBe(
    204,
  );
  expect(performance.now() - fromMs).toBeLessThan(60_000);

  for (const who of [painter, peer, host]) {
    for (const size of SIZES) {
      const status = (await call(seeBytes, who, { boardId, pictureId: taken, size })).status;
      expect([400, 404], `${size} for ${who.name}`).toContain(status);
    }
    for (const handler of [seePicture, seeMeasures]) {
      expect((await call(handler, who, { boardId, pictureId: taken })).status).toBe(404);
    }
    const board = (await (await call(seeBoard, who, { boardId })).json()) as BoardView;
    expect(board.pictures.map(({ id, follows }) => [id, follows])).toEqual([
      [first, null],
      [after, first],
    ]);
  }
  // A browser that kept a copy asks again with its tag and is told no.
  const tag = { 'if-none-match': seen.headers.get('etag') ?? '', cookie: peer.cookie };
  const again = new Request('http://localhost:4300/', { headers: tag });
  const params = Promise.resolve({ boardId, pictureId: taken, size: '640' });
  expect((await seeBytes(again, { params })).status).toBe(404);

  expect((await inPainting.closed).code).toBe(CLOSE.noSuchRoom);
  expect((await inMarks.closed).code).toBe(CLOSE.epochOver);
  for (const client of [inPainting, inMarks]) client.leave();
  const [marks, nods] = await stage.server.live.read(boardId, 'marks', (doc) => [
    readMarks(doc).map(({ id }) => id),
    [...doc.getMap('nods').keys()],
  ]);
  expect([marks, nods]).toEqual([['elsewhere'], []]);
  const rows = await database().liveUpdate.findMany({ where: { boardId } });
  const parts = await database().liveSnapshot.findMany({ where: { boardId } });
  const stored = Buffer.concat([...rows, ...parts].map(({ bytes }) => Buffer.from(bytes)));
  for (const gone of ['Bring the far hills', 'The cold before']) expect(stored.includes(gone)).toBe(false);
  expect(stored.includes('Keep this edge')).toBe(true);
  expect(await database().measure.count({ where: { pictureId: taken } })).toBe(0);

  // The other two states are the same file, so their shared blobs stay; with the last of them they go.
  expect(await Promise.all(files.map(isThere))).toEqual(files.map(() => true));
  for (const pictureId of [first, after]) {
    await call(withdraw, painter, { boardId, pictureId }, { method: 'DELETE' });
  }
  expect(await Promise.all(files.map(isThere))).toEqual(files.map(() => false));
  const boards = (await (await call(listBoards, peer, {})).json()) as BoardListItem[];
  expect(boards.find(({ id }) => id === boardId)).toMatchObject({ coverPictureId: null, paintings: 0 });
});

test('an older copy of the marks is refused and cannot bring the words back', {
  timeout: 60_000,
}, async () => {
  const { painter, peer } = stage.people;
  const pictureId = await posts(painter);
  const away = new Y.Doc();
  const online = join(stage.server.port, peer, boardId, 'marks', { doc: away });
  await online.synced;
  putMark(away, {
    ...{
      id: 'back',
      author: peer.id,
      pictureId,
      kind: 'pin',
      points: [[0, 0]],
      text: 'Too blue',
      planeId: null,
    },
    ...{ parent: null, at: 2 },
  });
  const has = () => stage.server.live.read(boardId, 'marks', (doc) => doc.getMap('marks').has('back'));
  while (!(await has())) await new Promise((next) => setTimeout(next, 10));
  const { epoch } = await database().liveRoom.findUniqueOrThrow({
    where: { boardId_room: { boardId, room: 'marks' } },
  });
  online.leave();
  await call(withdraw, painter, { boardId, pictureId }, { method: 'DELETE' });
  const later = join(stage.server.port, peer, boardId, 'marks', {
    doc: away,
    params: { epoch: String(epoch) },
  });
  expect((await later.closed).code).toBe(CLOSE.epochOver);
  later.leave();
  expect(await has()).toBe(false);
});
