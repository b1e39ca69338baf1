/** A board's wall through the handlers: no name before its time, the same letters for all, nothing that is not to be seen. */
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { PUT as block } from '#app/api/boards/[boardId]/blocks/[personId]/route.ts';
import { POST as say, GET as seeWork } from '#app/api/boards/[boardId]/wall/[pictureId]/route.ts';
import { GET as seeWall } from '#app/api/boards/[boardId]/wall/route.ts';
import { GET as listBoards } from '#app/api/boards/route.ts';
import { nextStep, startClass, stopClass } from '#server/core/class/run.ts';
import { USUAL_LENGTHS } from '#server/core/class/steps.ts';
import { NO_RULES } from '#server/core/contract/school.ts';
import type { WallView, WallWork } from '#server/core/contract/wall.ts';
import { readMarks } from '#server/core/live/marks.ts';
import { putPaintingOutline, putReferenceOutline } from '#server/core/live/outlines.ts';
import { setCorners } from '#server/core/live/painting.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { askOfTheDay, showNames } from '#server/core/live/wall.ts';
import { sayConsent } from '#server/store/consents.ts';
import { database } from '#server/store/database.ts';
import { setHouseRules } from '#server/store/school.ts';
import { aBoard, call, closeStage, openStage, type Stage } from '#tests/access/cast.ts';
import { aPainting, type Somebody } from '#tests/live/a-live-server.ts';

let stage: Stage;
let boardId: string;
/** One painting each, in the order they were posted. */
let paintings: { ofPainter: string; ofFellow: string; ofPeer: string };
beforeAll(async () => {
  stage = await openStage();
});
beforeEach(async () => {
  boardId = await aBoard(stage);
  const { painter, fellow, peer } = stage.people;
  paintings = {
    ofPainter: await aPainting(boardId, painter.id),
    ofFellow: await aPainting(boardId, fellow.id),
    ofPeer: await aPainting(boardId, peer.id),
  };
});
afterAll(() => closeStage(stage));

const wallText = async (who: Somebody) => (await call(seeWall, who, { boardId })).text();
const wallOf = async (who: Somebody) => JSON.parse(await wallText(who)) as WallView;
const onSetup = (edit: Parameters<Stage['server']['live']['writeAsServer']>[2]) =>
  stage.server.live.writeAsServer(boardId, 'setup', edit);
const consents = (person: Somebody, given: boolean) =>
  sayConsent({ boardId, personId: person.id, use: 'class', given, saidById: person.id });
const workOf = async (who: Somebody, pictureId: string) =>
  (await (await call(seeWork, who, { boardId, pictureId })).json()) as WallWork;
const codeOf = async (answer: Response) =>
  ((await answer.json()) as { error?: { code: string } }).error?.code ?? 'done';

describe('names on the wall', () => {
  test('of others are in nobody’s answer before they are shown, whatever one is', async () => {
    const { painter, fellow, peer } = stage.people;
    for (const who of [
      stage.people.host,
      stage.people.owner,
      stage.people.teacher,
      painter,
      peer,
      stage.people.viewer,
    ]) {
      const text = await wallText(who);
      for (const { id, name } of [painter, fellow, peer]) {
        // One's own id is in one's own answer, to mark what is one's own; and roles are words that are names here.
        if (id !== who.id) expect(text).not.toContain(id);
        expect(text).not.toContain(`"name":"${name}"`);
      }
      expect((JSON.parse(text) as WallView).paintings.every((each) => each.painter === null)).toBe(true);
    }
  });

  test('one’s own painting is marked to oneself alone', async () => {
    const mine = async (who: Somebody) =>
      (await wallOf(who)).paintings
        .filter((each) => each.mine)
        .flatMap(({ states }) => states.map(({ id }) => id));
    expect(await mine(stage.people.painter)).toEqual([paintings.ofPainter]);
    expect(await mine(stage.people.fellow)).toEqual([paintings.ofFellow]);
    expect(await mine(stage.people.teacher)).toEqual([]);
  });

  test('shown, they are there for all; hidden again, for nobody', async () => {
    await onSetup((doc) => showNames(doc, true));
    const { paintings: shown, named } = await wallOf(stage.people.viewer);
    expect(named).toBe(true);
    expect(shown.map(({ painter }) => painter?.name).sort()).toEqual(['fellow', 'painter', 'peer']);
    await onSetup((doc) => showNames(doc, false));
    expect((await wallOf(stage.people.viewer)).paintings.map(({ painter }) => painter)).toEqual([
      null,
      null,
      null,
    ]);
  });

  test('kept back by the school setting, they are shown as that setting has it', async () => {
    await onSetup((doc) => showNames(doc, true));
    await setHouseRules({ ...NO_RULES, aliases: true });
    try {
      const names = (await wallOf(stage.people.painter)).paintings.map(({ painter }) => painter?.name);
      expect(names).toContain('painter');
      expect(names).not.toContain('fellow');
      expect((await wallOf(stage.people.teacher)).paintings.map(({ painter }) => painter?.name)).toContain(
        'fellow',
      );
    } finally {
      await setHouseRules(NO_RULES);
    }
  });
});

test('a browser that only asks which boards are open to it is told no owner’s name', async () => {
  const headers = { cookie: stage.people.painter.cookie };
  const answer = await listBoards(new Request('http://localhost:4300/api/boards?ids', { headers }), {
    params: Promise.resolve({}),
  });
  const boards = (await answer.json()) as { id: string }[];
  expect(boards).toContainEqual({ id: boardId });
  expect(boards.every((board) => Object.keys(board).join() === 'id')).toBe(true);
});

describe('what hangs', () => {
  test('has the same letters and order for everybody, with states under one letter', async () => {
    const later = await aPainting(boardId, stage.people.painter.id);
    await database().picture.update({ where: { id: later }, data: { followsId: paintings.ofPainter } });
    const seen = async (who: Somebody) =>
      (await wallOf(who)).paintings.map(({ letter, states }) => [letter, states.map(({ id }) => id)]);
    const first = await seen(stage.people.painter);
    expect(first.map(([letter]) => letter)).toEqual(['A', 'B', 'C']);
    expect(first.map(([, states]) => states)).toContainEqual([paintings.ofPainter, later]);
    for (const who of [stage.people.host, stage.people.teacher, stage.people.peer])
      expect(await seen(who)).toEqual(first);
  });

  test('leaves out who blocks whom, both ways, and keeps the letters of the others', async () => {
    const { painter, fellow, peer } = stage.people;
    const before = await wallOf(peer);
    await call(block, painter, { boardId, personId: fellow.id }, { method: 'PUT' });
    try {
      const letters = async (who: Somebody) =>
        new Map((await wallOf(who)).paintings.map(({ letter, states }) => [states[0]?.id, letter]));
      const [one, other] = [await letters(painter), await letters(fellow)];
      expect(one.has(paintings.ofFellow)).toBe(false);
      expect(other.has(paintings.ofPainter)).toBe(false);
      for (const { letter, states } of before.paintings) {
        const id = states[0]?.id;
        if (one.has(id)) expect(one.get(id)).toBe(letter);
        if (other.has(id)) expect(other.get(id)).toBe(letter);
      }
      expect((await wallOf(peer)).paintings).toEqual(before.paintings);
      const work = await call(seeWork, painter, { boardId, pictureId: paintings.ofFellow });
      expect(await codeOf(work)).toBe('picture-not-found');
    } finally {
      await database().block.deleteMany({});
    }
  });

  test('what its painter does not let be shown in class is on nobody’s wall', async () => {
    const { fellow, teacher, painter, peer } = stage.people;
    await consents(fellow, false);
    for (const who of [teacher, painter, peer, fellow]) {
      const { paintings: hung, withheld } = await wallOf(who);
      expect(hung.flatMap(({ states }) => states.map(({ id }) => id))).not.toContain(paintings.ofFellow);
      // Who sees it on the board is told that something is left out, the others not even that.
      expect(withheld).toBe(who === teacher || who === fellow);
      const work = await call(seeWork, who, { boardId, pictureId: paintings.ofFellow });
      expect(await codeOf(work)).toBe('picture-not-found');
    }
    await consents(fellow, true);
    expect((await wallOf(peer)).paintings).toHaveLength(3);
  });

  test('the question of the day is there for all', async () => {
    await onSetup((doc) => askOfTheDay(doc, '  How did each of us say far?  '));
    expect((await wallOf(stage.people.viewer)).question).toBe('How did each of us say far?');
    await onSetup((doc) => askOfTheDay(doc, '   '));
    expect((await wallOf(stage.people.viewer)).question).toBe('');
  });
});

describe('how a painting on the wall lies', () => {
  const CORNERS: [[number, number], [number, number], [number, number], [number, number]] = [
    [0.1, 0.1],
    [0.9, 0.1],
    [0.9, 0.9],
    [0.1, 0.9],
  ];

  test('has its corners, and its planes far to near on the squared painting', async () => {
    await onSetup((doc) => {
      addPlane(doc, { id: 'sky', name: 'Sky', kind: 'sky', tilt: null });
      addPlane(doc, { id: 'hill', name: 'Hill', kind: 'land', tilt: null });
    });
    await stage.server.live.writeAsServer(boardId, `painting/${paintings.ofPeer}`, (doc) => {
      setCorners(doc, CORNERS);
      putPaintingOutline(doc, 'hill', [
        [0.1, 0.5],
        [0.9, 0.5],
        [0.9, 0.9],
        [0.1, 0.9],
      ]);
    });
    const { photo, planes } = await workOf(stage.people.painter, paintings.ofPeer);
    expect(photo).toEqual({ corners: CORNERS });
    expect(planes.map(({ name, kind }) => [name, kind])).toEqual([['Hill', 'land']]);
    const [left, top] = planes[0]?.outline[0] ?? [];
    expect(left).toBeCloseTo(0, 9);
    expect(top).toBeCloseTo(0.5, 9);
  });

  test('tells no planes while a class looks at a painting alone', async () => {
    const { painter, teacher } = stage.people;
    await onSetup((doc) => {
      addPlane(doc, { id: 'hill', name: 'Hill', kind: 'land', tilt: null });
      putReferenceOutline(doc, 'a-reference', 'hill', [
        [0, 0.5],
        [1, 0.5],
        [1, 1],
      ]);
    });
    await stage.server.live.writeAsServer(boardId, `painting/${paintings.ofPeer}`, (doc) =>
      putPaintingOutline(doc, 'hill', [
        [0, 0.5],
        [1, 0.5],
        [1, 1],
      ]),
    );
    await stage.server.live.writeAsServer(boardId, 'class', (doc) =>
      startClass(doc, [{ pictureId: paintings.ofPainter, painterId: painter.id }], USUAL_LENGTHS),
    );
    expect((await wallOf(teacher)).veiled).toBe(true);
    expect((await workOf(teacher, paintings.ofPeer)).planes).toEqual([]);
    await stage.server.live.writeAsServer(boardId, 'class', (doc) => {
      for (let step = 0; step < 3; step++) nextStep(doc, () => painter.id);
    });
    expect((await wallOf(teacher)).veiled).toBe(false);
    expect((await workOf(teacher, paintings.ofPeer)).planes).toHaveLength(1);
    await stage.server.live.writeAsServer(boardId, 'class', stopClass);
  });
});

describe('one thing to try', () => {
  const saying = (who: Somebody, sent: unknown, pictureId = paintings.ofFellow) =>
    call(say, who, { boardId, pictureId }, { method: 'POST', body: sent });
  const thing = { text: 'The violet in the far ridge', at: [0.4, 0.3] };
  const marks = () => stage.server.live.read(boardId, 'marks', readMarks);

  test('stands on that painting as a remark of whoever said it', async () => {
    const { id } = (await (await saying(stage.people.peer, thing)).json()) as { id: string };
    expect(await marks()).toMatchObject([
      {
        ...{ id, author: stage.people.peer.id, pictureId: paintings.ofFellow, kind: 'pin' },
        ...{ points: [[0.4, 0.3]], text: thing.text, parent: null },
      },
    ]);
  });

  test('is not for who only looks on, and not for a painting that does not hang', async () => {
    expect(await codeOf(await saying(stage.people.viewer, thing))).toBe('not-allowed');
    expect(await codeOf(await saying(stage.people.peer, thing, 'nothing'))).toBe('picture-not-found');
    await consents(stage.people.fellow, false);
    expect(await codeOf(await saying(stage.people.teacher, thing))).toBe('picture-not-found');
    expect(await marks()).toEqual([]);
  });

  test('is refused like any other mark while a class lets nobody mark', async () => {
    const { painter, peer } = stage.people;
    await stage.server.live.writeAsServer(boardId, 'class', (doc) =>
      startClass(doc, [{ pictureId: paintings.ofFellow, painterId: painter.id }], USUAL_LENGTHS),
    );
    const answer = await saying(peer, thing);
    expect(answer.status).toBe(403);
    expect(await codeOf(answer)).toBe('live-not-allowed');
    expect(await marks()).toEqual([]);
    await stage.server.live.writeAsServer(boardId, 'class', stopClass);
    expect(await codeOf(await saying(peer, thing))).toBe('done');
  });

  test.each([
    [{ ...thing, text: '   ' }],
    [{ ...thing, text: 'x'.repeat(1001) }],
    [{ ...thing, at: [1.2, 0.5] }],
    [{ ...thing, at: [0.5] }],
    [{ ...thing, author: 'somebody else' }],
  ])('%j is refused in one sentence', async (sent) => {
    expect(await codeOf(await saying(stage.people.peer, sent))).toBe('bad-request');
    expect(await marks()).toEqual([]);
  });
});
