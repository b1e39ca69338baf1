/** Homework through the handlers on a real store: set, seen, moved, closed, taken back, and answered by a picture. */
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import {
  PATCH as change,
  DELETE as takeBack,
} from '#app/api/boards/[boardId]/homework/[homeworkId]/route.ts';
import { GET as see, POST as set } from '#app/api/boards/[boardId]/homework/route.ts';
import { POST as postPicture } from '#app/api/boards/[boardId]/pictures/route.ts';
import { homeworkAtHome } from '#server/access/homework.ts';
import type { HomeworkView } from '#server/core/contract/homework.ts';
import type { UploadedPicture } from '#server/core/contract/responses.ts';
import { services } from '#server/http/services.ts';
import { listBoards } from '#server/store/boards.ts';
import { database } from '#server/store/database.ts';
import { removePicture } from '#server/store/pictures.ts';
import { aBoard, call, closeStage, openStage, type Stage } from '#tests/access/cast.ts';
import { aPainting, type Somebody } from '#tests/live/a-live-server.ts';

let stage: Stage;
let boardId: string;
let pictureId: string;
beforeAll(async () => {
  stage = await openStage();
  // The cast takes pictures in without pixels; here it matters which state they follow.
  const before = services();
  Object.assign(before, {
    takeInPicture: async ({ fields, ...incoming }: Parameters<typeof before.takeInPicture>[0]) => {
      const id = await aPainting(incoming.boardId, incoming.painterId);
      await database().picture.update({ where: { id }, data: { followsId: fields.follows ?? null } });
      return { id, width: 4, height: 3 };
    },
  });
});
beforeEach(async () => {
  boardId = await aBoard(stage);
  pictureId = await aPainting(boardId, stage.people.painter.id);
});
afterAll(() => closeStage(stage));

const inDays = (days: number) => new Date(Date.now() + days * 24 * 3_600_000).toISOString().slice(0, 10);
const read = async <T>(answer: Promise<Response>): Promise<T> => (await (await answer).json()) as T;
const codeOf = async (answer: Promise<Response>) => {
  const answered = await answer;
  const { error } = (await answered.json()) as { error: { code: string; message: string } };
  return `${answered.status} ${error.code}`;
};

const setting = (who: Somebody, sent: object = {}) =>
  call(
    set,
    who,
    { boardId },
    {
      method: 'POST',
      body: {
        ...{ picture: pictureId, card: 'picture', words: 'Join the lights of the meadow', check: 'Squint.' },
        ...{ dueOn: inDays(7), answerAs: 'state', ...sent },
      },
    },
  );
const idOf = async (answer: Promise<Response>) => (await read<{ id: string }>(answer)).id;
const seenBy = (who: Somebody) => read<HomeworkView[]>(call(see, who, { boardId }));
const changing = (who: Somebody, homeworkId: string, body: unknown) =>
  call(change, who, { boardId, homeworkId }, { method: 'PATCH', body });

function answering(who: Somebody, homework: string, fields: Record<string, string> = {}) {
  const body = new FormData();
  for (const [name, value] of Object.entries({ kind: 'painting', homework, ...fields }))
    body.set(name, value);
  body.set('file', new File(['no pixels'], 'study.jpg', { type: 'image/jpeg' }));
  return call(postPicture, who, { boardId }, { method: 'POST', body });
}

const atHome = async ({ id: personId }: Somebody, name = '') => {
  const visitor = { personId, name, isHost: false };
  const home = await homeworkAtHome(visitor, await listBoards(personId, false), async () => false);
  const here = ({ board }: { board: { id: string } }) => board.id === boardId;
  return { toTry: home.toTry.filter(here), isIn: home.isIn.filter(here) };
};

test('a teacher sets it from a card; its painter finds it at the painting and at home, another painter nowhere', async () => {
  const { teacher, painter, fellow } = stage.people;
  await setting(teacher);
  const [homework] = await seenBy(painter);
  expect(homework).toMatchObject({
    ...{ pictureId, cardKey: 'picture', words: 'Join the lights of the meadow', check: 'Squint.' },
    ...{ dueOn: inDays(7), answerAs: 'state', answer: null, closedAt: null },
    ...{ painter: { name: 'painter' }, setBy: { name: 'teacher' } },
  });
  expect((await atHome(painter)).toTry).toHaveLength(1);
  expect(await seenBy(fellow)).toEqual([]);
  expect(await atHome(fellow)).toEqual({ toTry: [], isIn: [] });
});

test('the picture that answers it follows the newest state, and whoever set it sees that it is in', async () => {
  const { teacher, painter } = stage.people;
  const id = await idOf(setting(teacher));
  const second = await aPainting(boardId, painter.id);
  await database().picture.update({ where: { id: second }, data: { followsId: pictureId } });
  expect((await atHome(teacher)).isIn).toEqual([]);
  const taken = await read<UploadedPicture>(answering(painter, id));
  expect(await database().picture.findUnique({ where: { id: taken.id } })).toMatchObject({
    followsId: second,
  });
  const [homework] = await seenBy(teacher);
  expect(homework?.answer?.pictureId).toBe(taken.id);
  expect(homework?.pictureId).toBe(taken.id);
  expect((await atHome(teacher)).isIn.map(({ homework: { id: each } }) => each)).toEqual([id]);
});

test('an exercise is a picture of its own, whatever state its sender names', async () => {
  const { teacher, painter } = stage.people;
  const id = await idOf(setting(teacher, { card: null, answerAs: 'exercise', words: 'Three values' }));
  const taken = await read<UploadedPicture>(answering(painter, id, { follows: pictureId }));
  expect(await database().picture.findUnique({ where: { id: taken.id } })).toMatchObject({ followsId: null });
});

test('it is moved, closed, opened again and taken back; what was posted for it stays', async () => {
  const { teacher, painter } = stage.people;
  const id = await idOf(setting(teacher));
  expect((await changing(teacher, id, { dueOn: inDays(14) })).status).toBe(204);
  expect((await seenBy(painter))[0]?.dueOn).toBe(inDays(14));
  const taken = await read<UploadedPicture>(answering(painter, id));
  expect((await changing(teacher, id, { closed: true })).status).toBe(204);
  expect((await seenBy(painter))[0]?.closedAt).not.toBeNull();
  expect(await atHome(painter)).toEqual({ toTry: [], isIn: [] });
  expect(await codeOf(changing(teacher, id, { dueOn: inDays(3) }))).toBe('409 homework-settled');
  expect(await codeOf(answering(painter, id))).toBe('409 homework-settled');
  expect((await changing(teacher, id, { closed: false })).status).toBe(204);
  const back = await call(takeBack, teacher, { boardId, homeworkId: id }, { method: 'DELETE' });
  expect(back.status).toBe(204);
  expect(await seenBy(painter)).toEqual([]);
  expect(await database().picture.count({ where: { id: taken.id } })).toBe(1);
  expect(await codeOf(answering(painter, id))).toBe('404 homework-not-found');
});

test('taking the answer back leaves the homework open; taking a state back hands it to the next one', async () => {
  const { teacher, painter } = stage.people;
  const id = await idOf(setting(teacher));
  const taken = await read<UploadedPicture>(answering(painter, id));
  await removePicture(boardId, pictureId);
  expect((await seenBy(painter))[0]).toMatchObject({ id, pictureId: taken.id });
  const second = await idOf(setting(teacher, { picture: taken.id, answerAs: 'exercise' }));
  const exercise = await read<UploadedPicture>(answering(painter, second));
  await removePicture(boardId, exercise.id);
  expect((await seenBy(painter)).find((each) => each.id === second)?.answer).toBeNull();
});

test('a painter sets it for themselves and changes that, not what a teacher set', async () => {
  const { teacher, painter } = stage.people;
  const own = await idOf(setting(painter));
  expect((await changing(painter, own, { closed: true })).status).toBe(204);
  const set = await idOf(setting(teacher));
  expect(await codeOf(changing(painter, set, { dueOn: inDays(3) }))).toBe('403 not-allowed');
});

test('what cannot be homework is refused in one sentence, and nothing is kept', async () => {
  const { teacher } = stage.people;
  expect(await codeOf(setting(teacher, { words: ' ' }))).toBe('400 bad-request');
  expect(await codeOf(setting(teacher, { dueOn: '2026-02-30' }))).toBe('400 bad-request');
  expect(await codeOf(setting(teacher, { dueOn: '2001-01-01' }))).toBe('400 bad-request');
  expect(await codeOf(setting(teacher, { card: '../etc' }))).toBe('400 bad-request');
  expect(await codeOf(setting(teacher, { picture: 'none' }))).toBe('404 picture-not-found');
  expect(await seenBy(teacher)).toEqual([]);
});
