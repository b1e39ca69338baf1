/**
 * While a class looks at a painting alone, neither the bytes of a reference in any size nor any measured document is
 * given to anybody on the board, whatever they are; paintings are. First impressions answer 403 until they are revealed.
 */
import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { GET as seeImpressions } from '#app/api/boards/[boardId]/impressions/[pictureId]/route.ts';
import { GET as seeMeasures } from '#app/api/boards/[boardId]/measures/[pictureId]/route.ts';
import { GET as seeBytes } from '#app/api/boards/[boardId]/pictures/[pictureId]/[size]/route.ts';
import { GET as seePlan } from '#app/api/boards/[boardId]/plan/[pictureId]/route.ts';
import { nextStep, startClass, stopClass } from '#server/core/class/run.ts';
import { STEPS, type Step, USUAL_LENGTHS } from '#server/core/class/steps.ts';
import { BOARD_ROLES } from '#server/core/contract/roles.ts';
import { database } from '#server/store/database.ts';
import { aPainting, eventually } from '#tests/live/a-live-server.ts';
import { aBoard, call, closeStage, openStage, type Stage } from './cast.ts';

const SIZES = ['640', '1280', '2560', 'lossless-640', 'plate', 'clip-map'];
/** Steps in which reference and figures are kept back. */
const ALONE: readonly Step[] = ['silent', 'intention', 'strengths'];

let stage: Stage;
let boardId: string;
let paintingId: string;
let referenceId: string;

beforeAll(async () => {
  stage = await openStage();
  boardId = await aBoard(stage);
  paintingId = await aPainting(boardId, stage.people.painter.id);
  referenceId = randomUUID();
  const originalHash = randomUUID().replaceAll('-', '').repeat(2);
  await database().picture.create({
    data: {
      ...{ id: referenceId, boardId, kind: 'reference', painterId: stage.people.teacher.id, rights: 'mine' },
      ...{ widthPx: 1600, heightPx: 1200, originalHash, originalType: 'image/jpeg' },
    },
  });
});
afterAll(() => closeStage(stage));

const painterOf = () => stage.people.painter.id;

async function stepInto(step: Step | null): Promise<void> {
  await stage.server.live.writeAsServer(boardId, 'class', (doc) => {
    stopClass(doc);
    if (step === null) return;
    startClass(doc, [{ pictureId: paintingId, painterId: painterOf() }], USUAL_LENGTHS);
    for (let at = 0; at < STEPS.indexOf(step); at++) nextStep(doc, painterOf);
  });
}

/** The code of the refusal, or null. */
async function codeOf(answer: Response): Promise<string | null> {
  if (answer.ok) return null;
  const { error } = (await answer.json()) as { error: { code: string; message: string } };
  expect(error.message).toMatch(/\.$/);
  return error.code;
}

describe.each([null, ...STEPS])('in the step %s', (step) => {
  const kept = step !== null && ALONE.includes(step);

  test.each(BOARD_ROLES)('%s is given reference and figures only when it is time', async (role) => {
    await stepInto(step);
    const who = stage.people[role];
    for (const size of SIZES) {
      const reference = await codeOf(await call(seeBytes, who, { boardId, pictureId: referenceId, size }));
      if (kept && size !== 'plate' && size !== 'clip-map') expect(reference).toBe('not-yet');
      else expect(reference).not.toBe('not-yet');
      const painting = await codeOf(await call(seeBytes, who, { boardId, pictureId: paintingId, size }));
      expect(painting).not.toBe('not-yet');
    }
    for (const pictureId of [paintingId, referenceId]) {
      for (const see of [seeMeasures, seePlan]) {
        const figures = await call(see, who, { boardId, pictureId });
        expect(figures.status).toBe(kept ? 403 : 202);
        expect(figures.headers.get('cache-control')).toContain('no-store');
        expect(await codeOf(figures)).toBe(kept ? 'not-yet' : null);
      }
    }
  });

  test.each(BOARD_ROLES)('%s reads first impressions only when they are revealed', async (role) => {
    await stepInto(step);
    const ask = async () =>
      codeOf(await call(seeImpressions, stage.people[role], { boardId, pictureId: paintingId }));
    if (step === 'silent') expect(await ask()).toBe('not-yet');
    // The server takes the reveal down in its own write, just after the step.
    else if (step !== null) await eventually('they are given out', async () => (await ask()) === null);
  });
});

test('bytes of a reference are asked about each time, so that none is shown from before', async () => {
  await stepInto(null);
  const answer = await call(seeBytes, stage.people.painter, { boardId, pictureId: referenceId, size: '640' });
  expect(answer.status).toBe(404);
  await stepInto('silent');
  const tag = await call(seeBytes, stage.people.painter, { boardId, pictureId: referenceId, size: '640' });
  expect(tag.status).toBe(403);
  expect(tag.headers.get('cache-control')).toContain('no-store');
});
