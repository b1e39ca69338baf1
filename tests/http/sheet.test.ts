/**
 * What stands on a sheet for whom: gathered through the handlers from a real store and real rooms. What is drawn of it is
 * looked at in tests/sheet; here the worker only hands back what it was asked for.
 */
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { GET as takeSheet } from '#app/api/boards/[boardId]/pictures/[pictureId]/sheet/route.ts';
import { GET as takePlan } from '#app/api/boards/[boardId]/plan/[pictureId]/sheet/route.ts';
import { startClass } from '#server/core/class/run.ts';
import { USUAL_LENGTHS } from '#server/core/class/steps.ts';
import { changeCard, setAnswer } from '#server/core/live/card-answers.ts';
import { putMark } from '#server/core/live/marks.ts';
import { setCorners, writeIntention } from '#server/core/live/painting.ts';
import { putCrop } from '#server/core/live/plan/crops.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { setHidden } from '#server/core/live/remarks.ts';
import { setCondition } from '#server/core/live/scene.ts';
import type { CritiqueSheet, PlanSheet, SheetOrder } from '#server/core/sheet/content.ts';
import { services } from '#server/http/services.ts';
import { sayConsent } from '#server/store/consents.ts';
import { database } from '#server/store/database.ts';
import { aBoard, call, closeStage, openStage, type Stage } from '#tests/access/cast.ts';
import { aPainting, type Somebody } from '#tests/live/a-live-server.ts';

let stage: Stage;
let boardId: string;
let pictureId: string;
let order: SheetOrder | null = null;
beforeAll(async () => {
  stage = await openStage();
  Object.assign(services(), {
    drawSheet: async (asked: SheetOrder) => {
      order = asked;
      return new Uint8Array([37, 80, 68, 70]);
    },
  });
});
beforeEach(async () => {
  boardId = await aBoard(stage);
  pictureId = await aPicture(stage.people.painter);
});
afterAll(() => closeStage(stage));

/** A picture with a plate to be drawn. */
async function aPicture(whose: Somebody, change: Record<string, unknown> = {}): Promise<string> {
  const id = await aPainting(boardId, whose.id);
  const file = { hash: 'cd'.repeat(32), mediaType: 'image/png', widthPx: 4, heightPx: 3, sizeBytes: 1 };
  await database().rendition.create({ data: { pictureId: id, name: 'plate', ...file } });
  await database().picture.update({ where: { id }, data: change });
  return id;
}
const aReference = (whose: Somebody, rights: string, credit: string | null = null) =>
  aPicture(whose, { kind: 'reference', rights, credit });

const take = (who: Somebody | null, picture = pictureId) =>
  call(takeSheet, who, { boardId, pictureId: picture });
async function taken(who: Somebody, picture = pictureId): Promise<CritiqueSheet> {
  const answer = await take(who, picture);
  expect(answer.status).toBe(200);
  if (order?.content.about !== 'critique') throw new Error('No sheet was drawn.');
  return order.content;
}
const codeOf = async (answer: Response) => {
  const { error } = (await answer.json()) as { error: { code: string } };
  return `${answer.status} ${error.code}`;
};
const inRoom = (
  room: Parameters<typeof stage.server.live.writeAsServer>[1],
  change: Parameters<typeof stage.server.live.writeAsServer>[2],
) => stage.server.live.writeAsServer(boardId, room, change);
const consent = (whose: Somebody, use: 'class' | 'others', given: boolean) =>
  sayConsent({ boardId, personId: whose.id, use, given, saidById: whose.id });

describe('a sheet', () => {
  test('is sent as a file with a name, never kept by what lies between', async () => {
    await database().picture.update({ where: { id: pictureId }, data: { caption: 'Über die Brücke!' } });
    const answer = await take(stage.people.painter);
    expect(answer.headers.get('content-type')).toBe('application/pdf');
    expect(answer.headers.get('content-disposition')).toBe('attachment; filename="uber-die-brucke.pdf"');
    expect(answer.headers.get('cache-control')).toBe('private, no-store');
    expect(order).toMatchObject({ as: 'pdf', paper: 'a4' });
  });

  test('says what is missing where nothing was measured, written, marked or outlined yet', async () => {
    const sheet = await taken(stage.people.painter);
    expect(sheet).toMatchObject({
      title: 'Painting by painter',
      reference: { picture: null, why: 'Painted without a reference photograph.' },
      intention: 'Not written down yet.',
      conditions: 'Nothing special noted.',
      ...{ cards: [], remarks: [], ladder: null },
      noCards: 'No adjustments yet. Not measured in this test',
      noLadder: 'No ladder yet. Not measured in this test',
      moreRemarks: 'Nobody has marked the painting.',
    });
  });

  test('brings intention, conditions, a teacher’s card with the painter’s answer, and remarks with names', async () => {
    const { painter, teacher } = stage.people;
    await inRoom('setup', (doc) => {
      addPlane(doc, { id: 'ridge', name: 'Far ridge', kind: 'land', tilt: null });
      setCondition(doc, 'low-sun', true);
    });
    await inRoom(`painting/${pictureId}`, (doc) => {
      writeIntention(doc, 'The cold\ncoming down.');
      changeCard(doc, 'own-1', { planeId: 'ridge', what: 'lift its darks', check: 'Squint.' });
      setAnswer(doc, 'own-1', { state: 'adapted', words: 'with a veil', about: [] });
    });
    await inRoom('marks', (doc) => putMark(doc, aMark('m1', teacher, 'Soften this.')));
    const sheet = await taken(painter);
    expect(sheet.intention).toBe('The cold coming down.');
    expect(sheet.conditions).toBe('Low sun.');
    expect(sheet.cards).toMatchObject([
      { letter: 'A', headline: 'Far ridge, lift its darks', check: 'Squint.', healthLine: true },
    ]);
    expect(sheet.cards[0]?.answer).toBe('done another way: “with a veil”');
    expect(sheet.remarks).toMatchObject([{ number: 1, who: 'teacher', words: 'Soften this.' }]);
  });

  test('leaves out remarks that are hidden from whoever takes it, and places marks on the squared painting', async () => {
    const { peer, teacher } = stage.people;
    await consent(stage.people.painter, 'others', true);
    await inRoom('marks', (doc) => {
      putMark(doc, aMark('m1', teacher, 'In the middle'));
      putMark(doc, aMark('m2', teacher, 'Hidden'));
    });
    await inRoom(`painting/${pictureId}`, (doc) => {
      setHidden(doc, 'm2', true);
      setCorners(doc, [
        [0.25, 0.25],
        [0.75, 0.25],
        [0.75, 0.75],
        [0.25, 0.75],
      ]);
    });
    const sheet = await taken(peer);
    expect(sheet.remarks.map(({ words }) => words)).toEqual(['In the middle']);
    // (0.6, 0.5) of the photo is (0.7, 0.5) of a painting that fills its middle half.
    expect(sheet.remarks[0]?.at[0]).toBeCloseTo(0.7, 6);
    expect(sheet.remarks[0]?.at[1]).toBeCloseTo(0.5, 6);
    expect((await taken(stage.people.painter)).remarks).toHaveLength(2);
  });

  test('of somebody else’s painting is for teachers, and for others only where it may be shown outside', async () => {
    const { painter, teacher, peer, fellow, viewer } = stage.people;
    await taken(teacher);
    for (const other of [peer, fellow, viewer])
      expect(await codeOf(await take(other))).toBe('403 not-allowed');
    await consent(painter, 'others', true);
    for (const other of [peer, fellow, viewer]) await taken(other);
    await consent(painter, 'class', false);
    expect(await codeOf(await take(teacher))).toBe('403 not-allowed');
    expect(await codeOf(await take(fellow))).toBe('404 picture-not-found');
    await taken(painter);
  });

  test('shows the reference as its rights and its poster allow', async () => {
    const { painter, owner, viewer } = stage.people;
    await consent(painter, 'others', true);
    const reference = await aReference(owner, 'permission');
    const kept = { picture: null, why: expect.stringMatching(/^The reference stays on the board/) };
    expect((await taken(painter)).reference).toMatchObject(kept);
    expect((await taken(owner)).reference.picture).not.toBeNull();
    await database().picture.update({ where: { id: reference }, data: { rights: 'mine' } });
    expect((await taken(painter)).reference.picture).not.toBeNull();
    expect((await taken(viewer)).reference).toMatchObject(kept);
    await database().picture.update({
      where: { id: reference },
      data: { rights: 'free', credit: 'R. Halden' },
    });
    expect((await taken(viewer)).reference).toMatchObject({ caption: 'Reference: R. Halden' });
  });

  test('is not there while a class looks at the painting alone', async () => {
    const { teacher, painter } = stage.people;
    await inRoom('class', (doc) => startClass(doc, [{ pictureId, painterId: painter.id }], USUAL_LENGTHS));
    for (const who of [teacher, painter]) expect(await codeOf(await take(who))).toBe('403 not-yet');
  });

  test('of a reference, of another board and on another paper than there is, is refused in one sentence', async () => {
    const { owner, stranger } = stage.people;
    expect(await codeOf(await take(owner, await aReference(owner, 'mine')))).toBe('404 picture-not-found');
    expect(await codeOf(await take(stranger))).toBe('404 board-not-found');
    const request = new Request('http://localhost:4300/?paper=a5', { headers: { cookie: owner.cookie } });
    const answer = await takeSheet(request, { params: Promise.resolve({ boardId, pictureId }) });
    expect(await codeOf(answer)).toBe('400 bad-request');
  });
});

test('a planning sheet has kept frames with their values, or says that none was kept', async () => {
  const { owner, viewer } = stage.people;
  const id = await aReference(owner, 'mine');
  const plan = async (who: Somebody): Promise<PlanSheet> => {
    const answer = await call(takePlan, who, { boardId, pictureId: id });
    expect(answer.status).toBe(200);
    if (order?.content.about !== 'plan') throw new Error('No planning sheet was drawn.');
    return order.content;
  };
  expect(await plan(owner)).toMatchObject({
    frames: [{ name: 'The photograph', words: 'three values, not settled yet' }],
    framesNote: 'No frame was kept: this is the whole photograph.',
    ladder: null,
  });
  await inRoom('setup', (doc) => {
    for (const at of [1, 2, 3, 4]) {
      putCrop(doc, `c${at}`, {
        ...{ name: `Frame ${at}`, pictureId: id, box: [0.1, 0.1, 0.9, 0.6 + at / 20] },
        ...{ format: '3:2', canvas: at === 1 ? '30 × 20 cm' : null, at },
      });
    }
  });
  const kept = await plan(owner);
  expect(kept.frames.map(({ name }) => name)).toEqual(['Frame 1', 'Frame 2', 'Frame 3']);
  expect(kept.frames[0]?.words).toBe('3:2, canvas 30 × 20 cm, three values, not settled yet');
  expect(kept.framesNote).toBe('One more frame stands on the plan page.');
  expect((await plan(viewer)).frames).toEqual([]);
});

function aMark(id: string, author: Somebody, text: string): Parameters<typeof putMark>[1] {
  return {
    ...{ id, author: author.id, pictureId, kind: 'pin', points: [[0.6, 0.5]], text },
    ...{ planeId: null, parent: null, at: 1 },
  };
}
