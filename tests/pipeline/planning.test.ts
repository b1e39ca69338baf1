/** Plans of photographs on real parts: a worker thread, PGlite, live documents as rooms store them. */
import { readFile } from 'node:fs/promises';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { putReferenceOutline } from '#server/core/live/outlines.ts';
import { putCrop, removeCrop } from '#server/core/live/plan/crops.ts';
import { setFrameId } from '#server/core/live/plan/frame-of-painting.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { setAir } from '#server/core/live/scene.ts';
import type { PicturePlan } from '#server/core/plan/plan-picture.ts';
import { createRunner, type Runner } from '#server/pipeline/runner.ts';
import { removeBoard } from '#server/store/boards.ts';
import { database } from '#server/store/database.ts';
import { newestMeasures } from '#server/store/measures.ts';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';
import { type ABoard, aBoard } from './a-board.ts';

/** Long enough for a worker to start and to plan on a busy machine. */
const PATIENT = { timeout: 240_000, interval: 100 };
const TEST_MS = 600_000;
const SKY: FractionPoint[] = [
  [0, 0],
  [1, 0],
  [1, 0.4],
  [0, 0.4],
];
const LAND: FractionPoint[] = [
  [0, 0.4],
  [1, 0.4],
  [1, 1],
  [0, 1],
];
const CROSSED: FractionPoint[] = [
  [0, 0.8],
  [1, 1],
  [1, 0.8],
  [0, 1],
];

let store: AStore;
let board: ABoard;
let runner: Runner;
let troubles: unknown[];
let bytes: Buffer;

beforeAll(async () => {
  store = await openAStore();
  bytes = await readFile(new URL('../fixtures/traced/castle-isle-on-loch.jpg', import.meta.url));
});
afterAll(() => store.close());
beforeEach(async () => {
  troubles = [];
  board = await aBoard();
  runner = await createRunner({
    onResult: () => undefined,
    onError: (thrown) => void troubles.push(thrown),
    quietMs: 20,
  });
});
afterEach(async () => {
  await runner.stop();
  await removeBoard(board.boardId);
  expect(troubles).toEqual([]);
});

async function post(kind: 'reference' | 'painting'): Promise<string> {
  const rights = kind === 'reference' ? { rights: 'mine' as const } : {};
  return (await runner.takeInPicture(await board.upload(bytes, { kind, ...rights }))).id;
}

async function planOnceThere(pictureId: string): Promise<PicturePlan> {
  return vi.waitFor(async () => {
    const plan = await runner.planOf(board.boardId, pictureId);
    if ('pending' in plan) throw new Error(plan.pending);
    return plan;
  }, PATIENT);
}

async function outline(referenceId: string, third?: FractionPoint[]): Promise<void> {
  await board.write('setup', (doc) => {
    for (const [id, kind, points] of [
      ['sky', 'sky', SKY],
      ['land', 'land', LAND],
      ['spit', 'land', third],
    ] as const) {
      if (!points) continue;
      addPlane(doc, { id, name: id, kind, tilt: null });
      putReferenceOutline(doc, referenceId, id, points);
    }
  });
}

describe('the plan of a photograph', () => {
  test('is worked out when it is asked for, kept, and made anew when planes or the air change', {
    timeout: TEST_MS,
  }, async () => {
    const id = await post('reference');
    await expect(runner.planOf(board.boardId, id)).resolves.toEqual({
      pending: 'Looking for frames, weight and planes in the photograph.',
    });
    const proposed = await planOnceThere(id);
    expect(proposed.crops.length).toBeGreaterThan(0);

    await outline(id);
    const outlined = await planOnceThere(id);
    expect(outlined.ladder.map(({ name }) => name)).toEqual(['sky', 'land']);

    const count = () => database().measure.count({ where: { pictureId: id } });
    const before = await count();
    await board.write('setup', (doc) => setAir(doc, id, { L: 82, a: 4, b: 22 }));
    const inWarmAir = await planOnceThere(id);
    expect(inWarmAir.ladder).not.toEqual(outlined.ladder);
    expect(await count()).toBe(before + 1);

    await board.write('setup', (doc) => setAir(doc, id, null));
    await expect(runner.planOf(board.boardId, id)).resolves.toEqual(outlined);
    expect(await count()).toBe(before + 1);
    expect(await newestMeasures([id])).toEqual(new Map());
  });

  test('leaves out a plane whose outline crosses itself, and says so', { timeout: TEST_MS }, async () => {
    const id = await post('reference');
    await outline(id, CROSSED);
    const plan = await planOnceThere(id);
    expect(plan.ladder.map(({ name }) => name)).toEqual(['sky', 'land']);
    expect(plan.notes.join(' ')).toMatch(/spit.*Until then this plane is left out/s);
  });

  test('cannot be made from a painting, nor of another board', { timeout: TEST_MS }, async () => {
    const painting = await post('painting');
    await expect(runner.planOf(board.boardId, painting)).rejects.toMatchObject({ code: 'bad-request' });
    const other = await aBoard();
    const id = await post('reference');
    await expect(runner.planOf(other.boardId, id)).rejects.toMatchObject({ code: 'picture-not-found' });
    await removeBoard(other.boardId);
  });
});

describe('a painting made after a kept frame', () => {
  const upper = [0, 0, 1, 0.4] as const;
  async function figures(pictureId: string) {
    return vi.waitFor(async () => {
      const found = await runner.measuresOf(board.boardId, pictureId);
      if ('pending' in found) throw new Error(found.pending);
      return found;
    }, PATIENT);
  }

  test('is held against that frame alone, and against the whole again when the frame goes', {
    timeout: TEST_MS,
  }, async () => {
    const referenceId = await post('reference');
    const paintingId = await post('painting');
    await outline(referenceId);
    const whole = await figures(paintingId);
    expect(whole.planes.map(({ name }) => name)).toEqual(['sky', 'land']);

    await board.write('setup', (doc) => {
      putCrop(doc, 'half', {
        ...{ name: 'Above the loch', pictureId: referenceId, box: [0, 0.2, 1, 0.6] },
        ...{ format: 'free', canvas: null, at: 1 },
      });
      putCrop(doc, 'lower', {
        ...{ name: 'Under the sky', pictureId: referenceId, box: [0, 0.5, 1, 1] },
        ...{ format: 'free', canvas: null, at: 2 },
      });
    });
    await board.write(`painting/${paintingId}`, (doc) => setFrameId(doc, 'half'));
    const framed = await figures(paintingId);
    // Half of the frame is sky, as it was outlined: 0.2 to 0.4 of 0.2 to 0.6.
    expect(framed.planes[0]?.reference?.share).toBeCloseTo(0.5, 2);
    expect(whole.planes[0]?.reference?.share).toBeCloseTo(0.4, 2);

    await board.write(`painting/${paintingId}`, (doc) => setFrameId(doc, 'lower'));
    expect((await figures(paintingId)).planes.map(({ name }) => name)).toEqual(['land']);
    await board.write('setup', (doc) =>
      putCrop(doc, 'lower', {
        ...{
          name: 'Sky alone',
          pictureId: referenceId,
          box: [...upper],
          format: 'free',
          canvas: null,
          at: 2,
        },
      }),
    );
    expect((await figures(paintingId)).planes.map(({ name }) => name)).toEqual(['sky']);

    await board.write('setup', (doc) => removeCrop(doc, 'lower'));
    expect(await figures(paintingId)).toEqual(whole);
  });
});
