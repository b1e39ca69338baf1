/** Askings, phrases and what was seen lie in the store: they outlive a restart, and go with what they are about. */
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { MOST_PHRASES } from '#server/core/contract/own-time-limits.ts';
import { addAsk, answerAsk, asksOn, findAsk, promiseDay, withdrawAsk } from '#server/store/asks.ts';
import { addBoard } from '#server/store/boards.ts';
import { database } from '#server/store/database.ts';
import { putLook, readLook } from '#server/store/looks.ts';
import { findMeasure, newestMeasures, saveMeasure } from '#server/store/measures.ts';
import { closeDatabase, openDatabase } from '#server/store/open-database.ts';
import { addPerson } from '#server/store/people.ts';
import { addPhrase, listPhrases, movePhrase, removePhrase, rewritePhrase } from '#server/store/phrases.ts';
import { removePicture } from '#server/store/pictures.ts';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';
import { aPainting } from '#tests/live/a-live-server.ts';

let store: AStore;
let boardId: string;
let painterId: string;
let teacherId: string;

beforeAll(async () => {
  store = await openAStore();
});
beforeEach(async () => {
  painterId = (await addPerson('Pelle', false)).id;
  teacherId = (await addPerson('Tove', false)).id;
  boardId = await addBoard(teacherId, 'Reeds at the weir');
});
afterAll(() => store.close());

async function restart(): Promise<void> {
  await closeDatabase();
  await openDatabase({ dataFolder: store.dataFolder, databaseUrl: null });
}

async function follow(pictureId: string, followsId: string): Promise<void> {
  await database().picture.update({ where: { id: pictureId }, data: { followsId } });
}

const asking = (pictureId: string, words = '', askedOfId: string | null = null) => {
  return { boardId, pictureId, askedById: painterId, askedOfId, words };
};

describe('a look that was asked for', () => {
  test('waits on after a restart, with its promise', async () => {
    const pictureId = await aPainting(boardId, painterId);
    const askId = await addAsk(asking(pictureId, 'Does it go back?'), [pictureId]);
    expect(await promiseDay(askId, teacherId, '2026-12-01')).toBe(true);
    await restart();
    expect(await asksOn([boardId], 'waiting')).toMatchObject([
      { id: askId, words: 'Does it go back?', promisedFor: '2026-12-01', promisedById: teacherId },
    ]);
  });

  test('is one for a painting: asking again while it waits changes the words and keeps place and promise', async () => {
    const pictureId = await aPainting(boardId, painterId);
    const first = await addAsk(asking(pictureId, 'one'), [pictureId]);
    await promiseDay(first, teacherId, '2026-12-01');
    const [before] = await asksOn([boardId]);
    const ids = await Promise.all([1, 2, 3].map(() => addAsk(asking(pictureId, 'two'), [pictureId])));
    expect(new Set([...ids, first]).size).toBe(1);
    expect(await asksOn([boardId])).toMatchObject([
      { words: 'two', askedAt: before?.askedAt, promisedFor: '2026-12-01' },
    ]);
  });

  test('asked of another teacher instead, it is theirs to promise', async () => {
    const pictureId = await aPainting(boardId, painterId);
    const askId = await addAsk(asking(pictureId), [pictureId]);
    await promiseDay(askId, teacherId, '2026-12-01');
    const other = await addPerson('Torolf', false);
    await addAsk(asking(pictureId, '', other.id), [pictureId]);
    expect(await findAsk(boardId, askId)).toMatchObject({ askedOfId: other.id, promisedFor: null });
  });

  test('answered or withdrawn, it waits no more and cannot be promised, answered or withdrawn again', async () => {
    for (const end of [answerAsk, (id: string) => withdrawAsk(id)]) {
      const pictureId = await aPainting(boardId, painterId);
      const askId = await addAsk(asking(pictureId), [pictureId]);
      expect(await end(askId, teacherId)).toBe(true);
      expect((await asksOn([boardId], 'waiting')).map(({ id }) => id)).not.toContain(askId);
      expect(await promiseDay(askId, teacherId, '2026-12-01')).toBe(false);
      expect(await answerAsk(askId, teacherId)).toBe(false);
      expect(await withdrawAsk(askId)).toBe(false);
      expect(await addAsk(asking(pictureId), [pictureId])).not.toBe(askId);
    }
  });

  test('goes on with the painting when the state it was about is taken back, and goes when the last one is', async () => {
    const [one, two] = [await aPainting(boardId, painterId), await aPainting(boardId, painterId)];
    await follow(two, one);
    await addAsk(asking(one), [one, two]);
    await removePicture(boardId, one);
    expect(await asksOn([boardId])).toMatchObject([{ pictureId: two }]);
    await removePicture(boardId, two);
    expect(await asksOn([boardId])).toEqual([]);
  });
});

describe('phrases', () => {
  test('are one person’s, in their order, after a restart too', async () => {
    for (const words of ['one', 'two', 'three']) await addPhrase(teacherId, words);
    await addPhrase(painterId, 'of somebody else');
    const ids = (await listPhrases(teacherId)).map(({ id }) => id);
    const [one = '', two = '', three = ''] = ids;
    expect(await movePhrase(teacherId, three, one)).toBe(true);
    expect(await movePhrase(teacherId, one, null)).toBe(true);
    expect(await movePhrase(teacherId, two, two)).toBe(true);
    await restart();
    expect((await listPhrases(teacherId)).map(({ words }) => words)).toEqual(['three', 'two', 'one']);
  });

  test('of somebody else cannot be changed, moved or forgotten', async () => {
    const id = (await addPhrase(painterId, 'mine')) ?? '';
    const own = (await addPhrase(teacherId, 'own')) ?? '';
    expect(await rewritePhrase(teacherId, id, 'yours')).toBe(false);
    expect(await movePhrase(teacherId, id, null)).toBe(false);
    expect(await movePhrase(teacherId, own, id)).toBe(false);
    expect(await removePhrase(teacherId, id)).toBe(false);
    expect(await listPhrases(painterId)).toEqual([{ id, words: 'mine' }]);
  });

  test('are two hundred at most', async () => {
    await database().phrase.createMany({
      data: Array.from({ length: MOST_PHRASES - 1 }, (_, place) => {
        return { id: `${teacherId}-${place}`, personId: teacherId, words: 'again', place };
      }),
    });
    expect(await addPhrase(teacherId, 'the last')).not.toBeNull();
    expect(await addPhrase(teacherId, 'one more')).toBeNull();
    expect((await listPhrases(teacherId)).at(-1)?.words).toBe('the last');
  });

  test('go with the person', async () => {
    await addPhrase(painterId, 'mine');
    await database().person.delete({ where: { id: painterId } });
    expect(await listPhrases(painterId)).toEqual([]);
  });
});

test('how far somebody looked outlives a restart and goes with the board', async () => {
  const seen = { rooms: { marks: { vector: 'AQID', through: '9007199254740993' } }, unseen: ['m1'] };
  const at = new Date('2026-11-24T19:30:00Z');
  await putLook(boardId, painterId, seen, at);
  await restart();
  expect(await readLook(boardId, painterId)).toEqual({ boardId, at, ...seen });
  expect(await readLook(boardId, teacherId)).toBeNull();
  await database().board.delete({ where: { id: boardId } });
  expect(await readLook(boardId, painterId)).toBeNull();
});

const DOCUMENT: MeasureDocument = {
  version: 1,
  target: 'none',
  units: { lightness: 'CIE L*, D65', chroma: 'C*ab', hue: 'degrees' },
  capture: { grade: 'B', reasons: [] },
  air: { reference: null, painting: null },
  ...{ planes: [], steps: [], fit: { key: null, span: null }, readings: [], priorities: [], works: null },
};

test('of the results of a picture the one measured last is the newest', async () => {
  const [one, two] = [await aPainting(boardId, painterId), await aPainting(boardId, painterId)];
  await saveMeasure(one, 'before', 1, { ...DOCUMENT, priorities: ['V1'] });
  await saveMeasure(one, 'after', 1, { ...DOCUMENT, priorities: ['V4'] });
  const newest = await newestMeasures([one, two]);
  expect([...newest.keys()]).toEqual([one]);
  expect(newest.get(one)?.priorities).toEqual(['V4']);
  expect((await findMeasure(one, 'before'))?.priorities).toEqual(['V1']);
});
