/** In one's own time, through the handlers on a real store and real rooms: asking, promising, answering, what is new. */
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { PATCH as change, DELETE as withdraw } from '#app/api/boards/[boardId]/asks/[askId]/route.ts';
import { POST as ask, GET as listAsks } from '#app/api/boards/[boardId]/asks/route.ts';
import { POST as look, GET as news } from '#app/api/boards/[boardId]/since/route.ts';
import { DELETE as forget, PATCH as rewrite } from '#app/api/phrases/[phraseId]/route.ts';
import { POST as keep, GET as phrases } from '#app/api/phrases/route.ts';
import { GET as queue } from '#app/api/queue/route.ts';
import { GET as newsOfBoards } from '#app/api/since/route.ts';
import type { AskView, BoardNews, NewsLine, PhraseView, QueueView } from '#server/core/contract/own-time.ts';
import { setAnswer } from '#server/core/live/card-answers.ts';
import { putMark } from '#server/core/live/marks.ts';
import { setHidden } from '#server/core/live/remarks.ts';
import { database } from '#server/store/database.ts';
import { aBoard, call, closeStage, openStage, type Stage } from '#tests/access/cast.ts';
import { aPainting, type Somebody } from '#tests/live/a-live-server.ts';

let stage: Stage;
let boardId: string;
let pictureId: string;
beforeAll(async () => {
  stage = await openStage();
});
beforeEach(async () => {
  boardId = await aBoard(stage);
  pictureId = await aPainting(boardId, stage.people.painter.id);
});
afterAll(() => closeStage(stage));

const body = (sent: unknown, method = 'POST') => ({ method, body: sent });
const read = async <T>(answer: Promise<Response>): Promise<T> => (await (await answer).json()) as T;
const codeOf = async (answer: Promise<Response>) => {
  const answered = await answer;
  const { error } = (await answered.json()) as { error: { code: string; message: string } };
  return `${answered.status} ${error.code}`;
};

const asking = (who: Somebody, sent: object = {}) =>
  call(ask, who, { boardId }, body({ picture: pictureId, of: null, words: '', ...sent }));
const asksFor = (who: Somebody) => read<AskView[]>(call(listAsks, who, { boardId }));
const rowsFor = async (who: Somebody) => {
  const { rows } = await read<QueueView>(call(queue, who, {}));
  return rows.filter((row) => row.board.id === boardId);
};
const changing = (who: Somebody, askId: string, sent: unknown) =>
  call(change, who, { boardId, askId }, body(sent, 'PATCH'));

async function nextState(followsId: string, painter = stage.people.painter): Promise<string> {
  const id = await aPainting(boardId, painter.id);
  await database().picture.update({ where: { id }, data: { followsId } });
  return id;
}

function remark(id: string, author: Somebody, at = Date.now(), on = pictureId, parent: string | null = null) {
  return stage.server.live.writeAsServer(boardId, 'marks', (doc) =>
    putMark(doc, {
      ...{ id, author: author.id, pictureId: on, text: 'Lift the ridge.', planeId: null, parent, at },
      ...(parent === null ? { kind: 'pin', points: [[0.5, 0.5]] } : { kind: 'reply', points: [] }),
    }),
  );
}

const inDays = (days: number) => new Date(Date.now() + days * 24 * 3_600_000).toISOString().slice(0, 10);

describe('asking for a look', () => {
  test('comes into the queue of everybody who teaches there, and of nobody else', async () => {
    const { painter, teacher, owner, host, peer, fellow } = stage.people;
    await asking(painter, { words: '  Does it go back? ' });
    for (const who of [teacher, owner, host]) {
      expect(await rowsFor(who)).toMatchObject([
        { ask: { words: 'Does it go back?', askedBy: { name: 'painter' }, promisedFor: null }, forMe: true },
      ]);
    }
    for (const who of [peer, fellow, painter]) expect(await rowsFor(who)).toEqual([]);
    expect(await asksFor(fellow)).toEqual([]);
    expect(await asksFor(painter)).toHaveLength(1);
  });

  test('of one teacher by name stands last with the others', async () => {
    const { painter, teacher, owner } = stage.people;
    await asking(painter, { of: teacher.id });
    expect(await rowsFor(teacher)).toMatchObject([{ forMe: true, ask: { askedOf: { name: 'teacher' } } }]);
    expect(await rowsFor(owner)).toMatchObject([{ forMe: false }]);
  });

  test('of somebody who gives no looks there is refused', async () => {
    const { painter, peer, stranger } = stage.people;
    for (const of of [peer.id, stranger.id, painter.id, 'nobody'])
      expect(await codeOf(asking(painter, { of }))).toBe('404 person-not-found');
    expect(await asksFor(painter)).toEqual([]);
  });

  test.each([
    [{ words: 'x'.repeat(401) }, '400 bad-request'],
    [{ of: 7 }, '400 bad-request'],
    [{ more: true }, '400 bad-request'],
    [{ picture: 'nothing' }, '404 picture-not-found'],
  ])('with %j is refused in one sentence', async (sent, code) => {
    expect(await codeOf(asking(stage.people.painter, sent))).toBe(code);
  });

  test('goes along to the next state', async () => {
    const { painter, teacher } = stage.people;
    await asking(painter);
    const next = await nextState(pictureId);
    expect(await rowsFor(teacher)).toMatchObject([
      { painting: { id: next, states: 2 }, ask: { askedAbout: pictureId, pictureId: next } },
    ]);
  });

  test('is withdrawn by its painter, and then waits nowhere', async () => {
    const { painter, teacher } = stage.people;
    await asking(painter);
    const [{ id: askId } = { id: '' }] = await asksFor(painter);
    expect((await call(withdraw, painter, { boardId, askId }, { method: 'DELETE' })).status).toBe(204);
    expect(await rowsFor(teacher)).toEqual([]);
    expect(await codeOf(changing(teacher, askId, { answered: true }))).toBe('404 ask-not-found');
  });

  test('about a painting that somebody may not see is not there for them', async () => {
    const { ward, guardian, fellow, peer } = stage.people;
    pictureId = await aPainting(boardId, ward.id);
    await asking(ward);
    expect(await asksFor(guardian)).toHaveLength(1);
    const [{ id: askId } = { id: '' }] = await asksFor(ward);
    for (const who of [fellow, peer])
      expect(await codeOf(changing(who, askId, { answered: true }))).toBe('404 ask-not-found');
  });
});

describe('promising and answering', () => {
  test('the day is told to the painter and orders the queue; answered, it waits no more', async () => {
    const { painter, fellow, teacher } = stage.people;
    await asking(painter);
    const other = await aPainting(boardId, fellow.id);
    await asking(fellow, { picture: other });
    const [first, second] = await rowsFor(teacher);
    expect([first?.painting.id, second?.painting.id]).toEqual([pictureId, other]);
    await changing(teacher, second?.ask.id ?? '', { promisedFor: inDays(3) });
    expect((await rowsFor(teacher)).map(({ painting }) => painting.id)).toEqual([other, pictureId]);
    expect(await asksFor(fellow)).toMatchObject([
      { promisedFor: inDays(3), promisedBy: { name: 'teacher' } },
    ]);
    await changing(teacher, second?.ask.id ?? '', { answered: true });
    expect((await rowsFor(teacher)).map(({ painting }) => painting.id)).toEqual([pictureId]);
    expect(await asksFor(fellow)).toMatchObject([{ answeredBy: { name: 'teacher' } }]);
    expect(await codeOf(changing(teacher, second?.ask.id ?? '', { answered: true }))).toBe('409 ask-settled');
  });

  test.each([inDays(-3), inDays(500), '2026-02-30', 'soon', 5])(
    'a promise for %j is refused',
    async (promisedFor) => {
      const { painter, teacher } = stage.people;
      await asking(painter);
      const [{ id } = { id: '' }] = await asksFor(painter);
      expect(await codeOf(changing(teacher, id, { promisedFor }))).toBe('400 bad-request');
      expect(await asksFor(painter)).toMatchObject([{ promisedFor: null }]);
    },
  );

  test('what was said last time comes with what became of it', async () => {
    const { painter, teacher, owner } = stage.people;
    await remark('tried', teacher);
    await remark('hidden', owner);
    await remark('of-another', owner);
    await stage.server.live.writeAsServer(boardId, `painting/${pictureId}`, (doc) => {
      setAnswer(doc, 'tried', { state: 'tried', words: 'with a rag', about: [] });
      setHidden(doc, 'hidden', true);
    });
    const next = await nextState(pictureId);
    await asking(painter, { picture: next });
    const [row] = await rowsFor(teacher);
    expect(row?.last).toMatchObject({ pictureId, sameState: false });
    expect(row?.last?.remarks).toEqual([
      { key: 'tried', where: '', words: 'Lift the ridge.', went: null, state: 'tried', answer: 'with a rag' },
    ]);
    expect(row?.saidSince).toBe(false);
    await remark('now', teacher, Date.now() + 1000, next);
    expect((await rowsFor(teacher))[0]?.saidSince).toBe(true);
  });
});

describe('phrases', () => {
  test('are read, changed and forgotten by their own person alone; the host is told that there is no such phrase', async () => {
    const { teacher, host } = stage.people;
    const { id } = await read<PhraseView>(
      call(keep, teacher, {}, body({ words: ' Squint at the {plane}. ' })),
    );
    expect(await read<PhraseView[]>(call(phrases, teacher, {}))).toEqual([
      { id, words: 'Squint at the {plane}.' },
    ]);
    for (const who of [host, stage.people.owner, stage.people.stranger]) {
      expect(await read(call(phrases, who, {}))).toEqual([]);
      const params = { phraseId: id };
      expect(await codeOf(call(rewrite, who, params, body({ words: 'x' }, 'PATCH')))).toBe(
        '404 phrase-not-found',
      );
      expect(await codeOf(call(forget, who, params, { method: 'DELETE' }))).toBe('404 phrase-not-found');
    }
    expect((await call(forget, teacher, { phraseId: id }, { method: 'DELETE' })).status).toBe(204);
    expect(await read(call(phrases, teacher, {}))).toEqual([]);
  });

  test.each([{ words: '  ' }, { words: 'x'.repeat(601) }, {}, { words: 'x', of: 'y' }])(
    '%j is refused in one sentence',
    async (sent) => {
      expect(await codeOf(call(keep, stage.people.teacher, {}, body(sent)))).toBe('400 bad-request');
    },
  );

  test('need a session', async () => {
    const nobody = { ...stage.people.stranger, cookie: '' };
    expect(await codeOf(call(phrases, nobody, {}))).toBe('401 not-entered');
    expect(await codeOf(call(queue, nobody, {}))).toBe('401 not-entered');
    expect(await codeOf(call(newsOfBoards, nobody, {}))).toBe('401 not-entered');
  });
});

describe('since one looked', () => {
  const looked = (who: Somebody, unseen: string[] = []) =>
    call(look, who, { boardId }, body({ rooms: {}, unseen }));
  const newsFor = (who: Somebody) => read<BoardNews>(call(news, who, { boardId }));
  const ids = ({ remarks }: BoardNews) => remarks.map(({ id }) => id);

  test('nothing is new to somebody who never looked, nor to a stranger that there is a board', async () => {
    const { painter, stranger } = stage.people;
    expect((await call(news, painter, { boardId })).status).toBe(204);
    expect(await codeOf(call(news, stranger, { boardId }))).toBe('404 board-not-found');
    expect(await codeOf(looked(stranger))).toBe('404 board-not-found');
  });

  test('remarks, states and answers of others are new until the person has seen them', async () => {
    const { painter, teacher } = stage.people;
    await remark('old', teacher);
    await looked(painter);
    await remark('fresh', teacher);
    await remark('own', painter);
    await remark('reply', teacher, Date.now(), pictureId, 'own');
    const next = await nextState(pictureId, stage.people.fellow);
    const first = await newsFor(painter);
    expect(ids(first).sort()).toEqual(['fresh', 'reply']);
    expect(first.pictures).toEqual([next]);
    const lines = await read<Record<string, NewsLine>>(call(newsOfBoards, painter, {}));
    expect(lines[boardId]?.pictures).toMatchObject([
      { name: { mine: true }, remarks: 2, posted: false },
      { name: { painter: 'fellow', state: 2 }, posted: true },
    ]);
  });

  test('what was seen is told by the document, not by clocks', async () => {
    const { painter, teacher } = stage.people;
    await looked(painter);
    await remark('from-the-past', teacher, 1000);
    expect(ids(await newsFor(painter))).toEqual(['from-the-past']);
  });

  test('a remark that was there but never in view stays new', async () => {
    const { painter, teacher } = stage.people;
    await remark('below', teacher);
    await looked(painter, ['below', 'never-was']);
    expect(ids(await newsFor(painter))).toEqual(['below']);
    await looked(painter);
    expect(ids(await newsFor(painter))).toEqual([]);
  });

  test('answers to cards and remarks are new to the teacher', async () => {
    const { teacher } = stage.people;
    await looked(teacher);
    await stage.server.live.writeAsServer(boardId, `painting/${pictureId}`, (doc) =>
      setAnswer(doc, 'picture', { state: 'tried', words: '', about: [] }),
    );
    expect((await newsFor(teacher)).answers).toEqual([{ pictureId, key: 'picture' }]);
  });

  test('what somebody may not see is no news to them', async () => {
    const { fellow, ward, teacher } = stage.people;
    await looked(fellow);
    const unshown = await aPainting(boardId, ward.id);
    await remark('on-unshown', teacher, Date.now(), unshown);
    expect(await newsFor(fellow)).toMatchObject({ remarks: [], pictures: [] });
  });

  test.each([
    { why: 'a room that is none of these', sent: { rooms: { 'silent/x': '' }, unseen: [] } },
    { why: 'a vector that is too long', sent: { rooms: { marks: 'x'.repeat(40_001) }, unseen: [] } },
    { why: 'no list of what was not seen', sent: { rooms: {} } },
  ])('$why is refused', async ({ sent }) => {
    expect(await codeOf(call(look, stage.people.painter, { boardId }, body(sent)))).toBe('400 bad-request');
  });

  test('a vector that is none leaves the memory of that room as it was', async () => {
    const { painter, teacher } = stage.people;
    await looked(painter);
    await remark('fresh', teacher);
    const broken = Buffer.from([255, 255, 255]).toString('base64');
    await call(look, painter, { boardId }, body({ rooms: { marks: broken }, unseen: [] }));
    expect(ids(await newsFor(painter))).toEqual(['fresh']);
  });
});
