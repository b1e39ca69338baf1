/** The states of a painting and a painter's path, through the handlers on a real store and real rooms, without workers. */
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { PUT as putCard } from '#app/api/boards/[boardId]/states/[pictureId]/cards/[key]/route.ts';
import { GET as seePicture } from '#app/api/boards/[boardId]/states/[pictureId]/pictures/[which]/route.ts';
import { POST as takeOver } from '#app/api/boards/[boardId]/states/[pictureId]/planes/route.ts';
import { GET as seeStates } from '#app/api/boards/[boardId]/states/[pictureId]/route.ts';
import { GET as seePath } from '#app/api/path/[personId]/route.ts';
import type { ComparedFacts, PathView, StatesView } from '#server/core/contract/states.ts';
import { changeCard, readAnswers } from '#server/core/live/card-answers.ts';
import { putPaintingOutline, readPaintingOutlines } from '#server/core/live/outlines.ts';
import { offerServices, services } from '#server/http/services.ts';
import { database } from '#server/store/database.ts';
import { aBoard, call, closeStage, openStage, type Stage } from '#tests/access/cast.ts';
import { aPainting, type Somebody } from '#tests/live/a-live-server.ts';

const SAME: ComparedFacts = {
  toLater: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  ...{ agreement: 0.9, movedBy: 0, trouble: null },
  shown: { widthPx: 4, heightPx: 3, doubtL: 3, lighter: 0, darker: 0 },
};
const CARD = 'own-lift';

let stage: Stage;
let boardId: string;
let first: string;
let second: string;
let facts: ComparedFacts;
beforeAll(async () => {
  stage = await openStage();
  offerServices({ ...services(), statesCompared: async () => facts });
});
beforeEach(async () => {
  facts = SAME;
  boardId = await aBoard(stage);
  first = await aPainting(boardId, stage.people.painter.id);
  second = await nextState(first);
  await stage.server.live.writeAsServer(boardId, `painting/${first}`, (doc) =>
    changeCard(doc, CARD, { what: 'lights: bring down a touch' }),
  );
});
afterAll(() => closeStage(stage));

async function nextState(followsId: string, painter = stage.people.painter): Promise<string> {
  const id = await aPainting(boardId, painter.id);
  await database().picture.update({ where: { id }, data: { followsId } });
  return id;
}

const codeOf = async (answer: Promise<Response>) => {
  const answered = await answer;
  if (answered.ok) return `${answered.status}`;
  const { error } = (await answered.json()) as { error: { code: string } };
  return `${answered.status} ${error.code}`;
};
const states = (who: Somebody, pictureId = second) => call(seeStates, who, { boardId, pictureId });
const statesFor = async (who: Somebody) => (await (await states(who)).json()) as StatesView;
const settle = (who: Somebody, state: string | null, key = CARD) =>
  call(putCard, who, { boardId, pictureId: first, key }, { method: 'PUT', body: { state } });
const answers = () => stage.server.live.read(boardId, `painting/${first}`, readAnswers);

describe('the states of a painting', () => {
  test('stand in order of time, from whichever of them one asks', async () => {
    const { painter, peer } = stage.people;
    for (const pictureId of [first, second]) {
      const view = (await (await states(peer, pictureId)).json()) as StatesView;
      expect(view.states.map(({ id }) => id)).toEqual([first, second]);
      expect(view.steps).toMatchObject([{ from: first, to: second, cards: [{ key: CARD, moves: [] }] }]);
    }
    expect(await statesFor(painter)).toMatchObject({ mine: true, mayAnswer: true });
    expect(await statesFor(peer)).toMatchObject({ mine: false, mayAnswer: false });
  });

  test('that are of another painting are said to be, and nothing goes', async () => {
    facts = { ...SAME, trouble: 'This seems to be another painting: 8 % of it agrees.', shown: null };
    const { steps, states: shown } = await statesFor(stage.people.painter);
    expect(steps).toMatchObject([{ facts: { trouble: facts.trouble }, changes: [] }]);
    expect(shown).toHaveLength(2);
    const taken = call(takeOver, stage.people.painter, { boardId, pictureId: second }, { method: 'POST' });
    expect(await codeOf(taken)).toBe('409 states-apart');
  });

  test('are nobody’s who is not on the board, and not there for whom the painting is hidden from', async () => {
    const { stranger, peer, ward } = stage.people;
    expect(await codeOf(states(stranger))).toBe('404 board-not-found');
    const hidden = await aPainting(boardId, ward.id);
    expect(await codeOf(states(peer, hidden))).toBe('404 picture-not-found');
    expect(await codeOf(states(ward, hidden))).toBe('200');
    expect(await codeOf(states(peer, 'nothing'))).toBe('404 picture-not-found');
  });

  test('have pictures against the one before or one that is named, and no others', async () => {
    const { peer } = stage.people;
    const see = (pictureId: string, which: string, query = '') =>
      call(seePicture, peer, { boardId, pictureId, which }, { query });
    expect(await codeOf(see(second, 'change'))).toBe('200');
    expect(await codeOf(see(second, 'before', `?from=${first}`))).toBe('200');
    expect(await codeOf(see(first, 'before'))).toBe('404 picture-not-found');
    expect(await codeOf(see(second, 'plate'))).toBe('400 bad-request');
  });
});

describe('a card of the last state', () => {
  test('is closed, taken along and opened again by its painter and by who teaches', async () => {
    const { painter, teacher } = stage.people;
    for (const who of [painter, teacher]) {
      for (const state of ['done', 'carried'] as const) {
        expect(await codeOf(settle(who, state))).toBe('204');
        expect((await answers()).get(CARD)?.state).toBe(state);
        expect((await statesFor(painter)).steps[0]?.cards).toMatchObject([{ key: CARD, state }]);
      }
      expect(await codeOf(settle(who, null))).toBe('204');
      expect((await answers()).has(CARD)).toBe(false);
    }
  });

  test('taken along stands on the state after next as well; closed it does not', async () => {
    const { painter } = stage.people;
    const third = await nextState(second);
    await settle(painter, 'carried');
    const cardsOfThird = async () => {
      const { steps } = await statesFor(painter);
      return steps.find(({ to }) => to === third)?.cards.map(({ pictureId }) => pictureId);
    };
    expect(await cardsOfThird()).toEqual([first]);
    await settle(painter, 'done');
    expect(await cardsOfThird()).toEqual([]);
  });

  test('is left as it is by everybody else, and by words that are none', async () => {
    const { peer, viewer, fellow, painter } = stage.people;
    for (const who of [peer, viewer, fellow]) expect(await codeOf(settle(who, 'done'))).toMatch(/^403 /);
    expect(await codeOf(settle(painter, 'gone'))).toBe('400 bad-request');
    expect(await codeOf(settle(painter, 'done', 'own-other'))).toBe('404 card-not-found');
    expect((await answers()).size).toBe(0);
  });
});

describe('the planes of the last state', () => {
  const TRIANGLE: [number, number][] = [
    [0.1, 0.1],
    [0.9, 0.1],
    [0.5, 0.8],
  ];
  const outlinesOf = (pictureId: string) =>
    stage.server.live.read(boardId, `painting/${pictureId}`, readPaintingOutlines);
  const take = (who: Somebody) => call(takeOver, who, { boardId, pictureId: second }, { method: 'POST' });

  test('are taken over in one step, but for those that are there already', async () => {
    const { painter, peer } = stage.people;
    expect(await codeOf(take(painter))).toBe('422 planes-missing');
    await stage.server.live.writeAsServer(boardId, `painting/${first}`, (doc) => {
      for (const plane of ['ridge', 'meadow']) putPaintingOutline(doc, plane, TRIANGLE);
    });
    const own: [number, number][] = [...TRIANGLE.slice(0, 2), [0.5, 0.5]];
    await stage.server.live.writeAsServer(boardId, `painting/${second}`, (doc) =>
      putPaintingOutline(doc, 'meadow', own),
    );
    expect(await codeOf(take(peer))).toMatch(/^403 /);
    expect(await (await take(painter)).json()).toEqual({ planes: 1 });
    const there = await outlinesOf(second);
    expect(there.get('meadow')).toEqual(own);
    expect(there.get('ridge')).toHaveLength(3);
  });
});

describe('a painter’s path', () => {
  const path = (who: Somebody, personId: string) => call(seePath, who, { personId });
  const pathFor = async (who: Somebody, personId: string) =>
    (await (await path(who, personId)).json()) as PathView;
  const here = ({ paintings }: PathView) => paintings.filter(({ board }) => board.id === boardId);

  test('is the very same to the painter and to who teaches them, and the painter reads who that is', async () => {
    const { painter, teacher, owner } = stage.people;
    await settle(painter, 'carried');
    const own = await pathFor(painter, painter.id);
    const taught = await pathFor(teacher, painter.id);
    expect(here(own)).toMatchObject([{ pictureId: second, hasStates: true }]);
    expect(here(taught)).toEqual(here(own));
    expect(taught.tried).toEqual(own.tried);
    expect(own.tried.filter(({ painting }) => painting.board.id === boardId)).toMatchObject([
      { what: 'lights: bring down a touch', state: 'carried', went: null },
    ]);
    const names = own.seenBy.find(({ board }) => board.id === boardId)?.names ?? [];
    expect(names).toEqual(expect.arrayContaining([owner.name, teacher.name]));
    expect(taught.mine).toBe(false);
  });

  test('is nobody else’s', async () => {
    const { painter, peer, fellow, viewer, stranger } = stage.people;
    for (const who of [peer, fellow, viewer, stranger])
      expect(await codeOf(path(who, painter.id))).toBe('404 person-not-found');
    expect(await codeOf(path(painter, 'nobody'))).toBe('404 person-not-found');
  });

  test('keeps back a board whose class keeps figures back just now', async () => {
    const { painter } = stage.people;
    const before = services();
    offerServices({ ...before, isVeiled: async (id) => id === boardId });
    expect(here(await pathFor(painter, painter.id))).toEqual([]);
    offerServices(before);
  });
});
