/** The whole way on real parts: sharp in worker threads, PGlite, live documents as rooms store them. */
import { access, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import type { LiveResult } from '#server/core/live/layout.ts';
import { putPaintingOutline, putReferenceOutline } from '#server/core/live/outlines.ts';
import { setCorners } from '#server/core/live/painting.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { createRunner, type Runner } from '#server/pipeline/runner.ts';
import { blobPath, incomingFolder, listBlobs } from '#server/store/blobs.ts';
import { removeBoard } from '#server/store/boards.ts';
import { database } from '#server/store/database.ts';
import { findPicture, removePicture } from '#server/store/pictures.ts';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';
import { burdenedJpeg, card } from '#tests/imaging/pictures.ts';
import { type ABoard, aBoard } from './a-board.ts';

const SKY: FractionPoint[] = [
  [0, 0],
  [1, 0],
  [1, 0.5],
  [0, 0.5],
];
const MEADOW: FractionPoint[] = [
  [0, 0.5],
  [1, 0.5],
  [1, 1],
  [0, 1],
];
const CROSSED: FractionPoint[] = [
  [0, 0.5],
  [1, 1],
  [1, 0.5],
  [0, 1],
];
/** Long enough for a worker to start on a busy machine. */
const PATIENT = { timeout: 30_000, interval: 50 };

let store: AStore;
let board: ABoard;
let runner: Runner;
let results: { pictureId: string; result: LiveResult }[];
let troubles: unknown[];

beforeAll(async () => {
  store = await openAStore();
});
afterAll(() => store.close());
beforeEach(async () => {
  results = [];
  troubles = [];
  board = await aBoard();
  runner = await createRunner({
    onResult: (_boardId, pictureId, result) => void results.push({ pictureId, result }),
    onError: (thrown) => void troubles.push(thrown),
    quietMs: 20,
  });
});
afterEach(async () => {
  await runner.stop();
  await removeBoard(board.boardId);
  expect(troubles).toEqual([]);
});

const grey = (level: number) => [level, level, level];
/** A picture of a light upper and a dark lower half. */
const scene = (sky: number, meadow: number) =>
  card([grey(sky), grey(sky), grey(meadow), grey(meadow)])
    .jpeg({ quality: 95 })
    .toBuffer();

async function post(kind: 'reference' | 'painting', bytes: Uint8Array): Promise<string> {
  const rights = kind === 'reference' ? { rights: 'mine' as const } : {};
  return (await runner.takeInPicture(await board.upload(bytes, { kind, ...rights }))).id;
}

async function outline(referenceId: string, meadow = MEADOW): Promise<void> {
  await board.write('setup', (doc) => {
    addPlane(doc, { id: 'sky', name: 'sky', kind: 'sky', tilt: null });
    addPlane(doc, { id: 'meadow', name: 'meadow', kind: 'land', tilt: null });
    putReferenceOutline(doc, referenceId, 'sky', SKY);
    putReferenceOutline(doc, referenceId, 'meadow', meadow);
  });
  runner.roomChanged(board.boardId, 'setup');
}

async function measured(pictureId: string) {
  return vi.waitFor(async () => {
    const found = await runner.measuresOf(board.boardId, pictureId);
    if ('pending' in found) throw new Error(found.pending);
    return found;
  }, PATIENT);
}

describe('taking in', () => {
  test('a picture is stored with its copies and nothing is left on the way', async () => {
    const { id, width, height } = await runner.takeInPicture(
      await board.upload(await burdenedJpeg(), { kind: 'painting', caption: 'First state' }),
    );
    expect([width, height]).toEqual([256, 160]);
    const row = await findPicture(board.boardId, id);
    expect(row).toMatchObject({ painterId: board.painterId, caption: 'First state', rights: null });
    await access(blobPath(row?.originalHash ?? ''));
    expect(await readdir(incomingFolder())).toEqual([]);
    expect(row?.untouchedHash).toBeNull();
  });

  test('the untouched file is kept when its painter asked for it', async () => {
    const bytes = await burdenedJpeg();
    const { id } = await runner.takeInPicture(
      await board.upload(bytes, { kind: 'painting', keepUntouched: 'yes' }),
    );
    const row = await findPicture(board.boardId, id);
    expect(row?.untouchedHash).toMatch(/^[0-9a-f]{64}$/);
    await access(blobPath(row?.untouchedHash ?? ''));
  });

  test('a refused picture leaves neither file nor row', async () => {
    const before = await listBlobs();
    const cut = (await scene(200, 50)).subarray(0, 400);
    const incoming = await board.upload(cut, { kind: 'painting' }, 'cut.jpg');
    await expect(runner.takeInPicture(incoming)).rejects.toMatchObject({ code: 'picture-unreadable' });
    expect(await readdir(incomingFolder())).toEqual([]);
    expect(await listBlobs()).toEqual(before);
    expect(await database().picture.count({ where: { boardId: board.boardId } })).toBe(0);
  });

  test('a state cannot follow a picture that is not a painting of the board', async () => {
    const before = await listBlobs();
    const incoming = await board.upload(await scene(200, 50), { kind: 'painting', follows: 'nowhere' });
    await expect(runner.takeInPicture(incoming)).rejects.toMatchObject({ code: 'picture-not-found' });
    expect(await listBlobs()).toEqual(before);
  });
});

describe('measuring', () => {
  test('waits for planes, then follows every change of the outlines', { timeout: 60_000 }, async () => {
    const referenceId = await post('reference', await scene(200, 50));
    const paintingId = await post('painting', await scene(180, 90));
    await expect(runner.measuresOf(board.boardId, paintingId)).resolves.toEqual({
      pending: 'Waiting for planes: outline at least one on the reference.',
    });
    await vi.waitFor(() => expect(results.at(-1)?.result.pending).toMatch(/^Waiting for planes/), PATIENT);

    await outline(referenceId);
    await vi.waitFor(() => expect(results.at(-1)?.result.pending).toBeNull(), PATIENT);
    const first = await measured(paintingId);
    expect(first.target).toBe('reference');
    expect(first.planes.map(({ name }) => name)).toEqual(['sky', 'meadow']);
    // L* of sRGB grey 200, 50, 180, 90 by CIE 15 and IEC 61966-2-1.
    expect(first.planes[0]?.reference?.mid).toBeCloseTo(80.6, 0);
    expect(first.planes[1]?.reference?.mid).toBeCloseTo(20.8, 0);
    expect(first.planes[0]?.painting.mid).toBeCloseTo(73.4, 0);
    expect(first.planes[1]?.painting.mid).toBeCloseTo(38.3, 0);

    const told = results.length;
    await board.write(`painting/${paintingId}`, (doc) => putPaintingOutline(doc, 'meadow', SKY));
    runner.roomChanged(board.boardId, `painting/${paintingId}`);
    await vi.waitFor(() => expect(results.length).toBeGreaterThan(told), PATIENT);
    const numbers = results
      .filter(({ pictureId }) => pictureId === paintingId)
      .map(({ result }) => result.number);
    expect(numbers).toEqual([...new Set(numbers)].sort((one, other) => one - other));
    const second = await measured(paintingId);
    expect(second.planes.find(({ name }) => name === 'meadow')?.painting.mid).toBeCloseTo(73.4, 0);
  });

  test('the painting that somebody looks at is measured before the others', { timeout: 60_000 }, async () => {
    const referenceId = await post('reference', await scene(200, 50));
    const paintings = [];
    for (const sky of [180, 170, 160, 150]) paintings.push(await post('painting', await scene(sky, 90)));
    const looked = paintings[2] ?? '';
    await outline(referenceId);
    for (const id of paintings) await measured(id);
    await measured(looked);
    const told = results.length;
    await outline(referenceId, [...MEADOW.slice(0, 3), [0, 0.99]]);
    const ofOthers = () => new Set(results.slice(told).map(({ pictureId }) => pictureId));
    await vi.waitFor(() => expect(ofOthers().size).toBe(4), PATIENT);
    expect(results[told]?.pictureId).toBe(looked);
  });

  test('many changes at once make one measurement', { timeout: 60_000 }, async () => {
    const referenceId = await post('reference', await scene(200, 50));
    const paintingId = await post('painting', await scene(180, 90));
    await outline(referenceId);
    await measured(paintingId);
    const before = await database().measure.count({ where: { pictureId: paintingId } });
    for (let step = 1; step <= 10; step++) {
      await board.write('setup', (doc) =>
        putReferenceOutline(doc, referenceId, 'sky', [...SKY.slice(0, 3), [0, 0.4 + step / 1000]]),
      );
      runner.roomChanged(board.boardId, 'setup');
    }
    await measured(paintingId);
    const made = (await database().measure.count({ where: { pictureId: paintingId } })) - before;
    expect(made).toBeGreaterThanOrEqual(1);
    expect(made).toBeLessThan(5);
  });

  test('a plane whose outline crosses itself is left out, with the reason', { timeout: 60_000 }, async () => {
    const referenceId = await post('reference', await scene(200, 50));
    const paintingId = await post('painting', await scene(180, 90));
    await outline(referenceId, CROSSED);
    const found = await measured(paintingId);
    expect(found.planes.map(({ name }) => name)).toEqual(['sky']);
    await vi.waitFor(
      () => expect(results.at(-1)?.result.pending).toMatch(/'meadow' crosses itself .* left out/),
      PATIENT,
    );
  });

  test('without a reference the painting is measured alone', { timeout: 60_000 }, async () => {
    const paintingId = await post('painting', await scene(180, 90));
    await board.write('setup', (doc) => addPlane(doc, { id: 'sky', name: 'sky', kind: 'sky', tilt: null }));
    await expect(runner.measuresOf(board.boardId, paintingId)).resolves.toEqual({
      pending: 'Waiting for planes: outline at least one on the painting.',
    });
    await board.write(`painting/${paintingId}`, (doc) => putPaintingOutline(doc, 'sky', SKY));
    const found = await measured(paintingId);
    expect(found.target).toBe('none');
    expect(found.planes[0]).toMatchObject({ name: 'sky', reference: null, gap: null });
    expect(found.planes[0]?.painting.mid).toBeCloseTo(73.4, 0);
  });

  test('a reference has a ladder of its own', { timeout: 60_000 }, async () => {
    const referenceId = await post('reference', await scene(200, 50));
    await outline(referenceId);
    const found = await measured(referenceId);
    expect(found.target).toBe('none');
    expect(found.planes.map(({ painting }) => Math.round(painting.mid ?? 0))).toEqual([81, 21]);
    expect(results.filter(({ pictureId }) => pictureId === referenceId)).toEqual([]);
  });

  test('of several references the first with an outline counts', { timeout: 60_000 }, async () => {
    await post('reference', await scene(240, 20));
    const second = await post('reference', await scene(200, 50));
    const paintingId = await post('painting', await scene(180, 90));
    await outline(second);
    expect((await measured(paintingId)).planes[0]?.reference?.mid).toBeCloseTo(80.6, 0);
  });

  test('corners that cannot be squared are a sentence, not a crash', { timeout: 60_000 }, async () => {
    const referenceId = await post('reference', await scene(200, 50));
    const paintingId = await post('painting', await scene(180, 90));
    await board.write(`painting/${paintingId}`, (doc) =>
      setCorners(doc, [
        [0.1, 0.1],
        [0.9, 0.9],
        [0.9, 0.1],
        [0.1, 0.9],
      ]),
    );
    await outline(referenceId);
    await vi.waitFor(async () => {
      const found = await runner.measuresOf(board.boardId, paintingId);
      expect(found).toMatchObject({ pending: expect.stringMatching(/corner/i) });
    }, PATIENT);
  });

  test('a result is found again after a restart without measuring', { timeout: 60_000 }, async () => {
    const referenceId = await post('reference', await scene(200, 50));
    const paintingId = await post('painting', await scene(180, 90));
    await outline(referenceId);
    const first = await measured(paintingId);
    await runner.stop();
    runner = await createRunner({ onResult: () => undefined });
    await expect(runner.measuresOf(board.boardId, paintingId)).resolves.toEqual(first);
  });
});

describe('what goes is gone', () => {
  test('a removed board leaves no file of its own', async () => {
    const before = await listBlobs();
    await post('painting', await scene(33, 66));
    expect((await listBlobs()).length).toBeGreaterThan(before.length);
    await removeBoard(board.boardId);
    await runner.boardRemoved(board.boardId);
    expect((await listBlobs()).length).toBeLessThanOrEqual(before.length);
  });

  test('a picture that went is no longer measured', async () => {
    const id = await post('painting', await scene(120, 60));
    await removePicture(board.boardId, id);
    await runner.pictureRemoved(board.boardId, id);
    await expect(runner.measuresOf(board.boardId, id)).rejects.toMatchObject({ code: 'picture-not-found' });
  });

  test('what a crash left is swept at the start', async () => {
    await board.upload(await scene(1, 2), { kind: 'painting' });
    expect(await readdir(incomingFolder())).not.toEqual([]);
    await runner.stop();
    runner = await createRunner({ onResult: () => undefined });
    await expect(readdir(incomingFolder())).rejects.toMatchObject({ code: 'ENOENT' });
    expect(incomingFolder()).toBe(join(store.dataFolder, 'incoming'));
  });
});
