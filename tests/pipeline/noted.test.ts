/** A note about wet paint reaches the capture grade and the readings, and a change of it measures again. */
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import type { PictureFields } from '#server/core/contract/requests.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import type { LiveResult } from '#server/core/live/layout.ts';
import { putReferenceOutline } from '#server/core/live/outlines.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { createRunner, type Runner } from '#server/pipeline/runner.ts';
import { removeBoard } from '#server/store/boards.ts';
import { notePicture } from '#server/store/pictures.ts';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';
import { card } from '#tests/imaging/pictures.ts';
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
const PATIENT = { timeout: 30_000, interval: 50 };

let store: AStore;
let board: ABoard;
let runner: Runner;
let results: LiveResult[];

beforeAll(async () => {
  store = await openAStore();
});
afterAll(() => store.close());
beforeEach(async () => {
  results = [];
  board = await aBoard();
  runner = await createRunner({
    onResult: (_board, _picture, result) => void results.push(result),
    quietMs: 20,
  });
});
afterEach(async () => {
  await runner.stop();
  await removeBoard(board.boardId);
});

async function posted(fields: Partial<PictureFields>): Promise<string> {
  const post = async (sky: number, meadow: number, more: PictureFields) => {
    const levels = [sky, sky, meadow, meadow].map((level) => [level, level, level]);
    const bytes = await card(levels).resize(640, 400, { kernel: 'nearest' }).jpeg({ quality: 95 }).toBuffer();
    return (await runner.takeInPicture(await board.upload(bytes, more))).id;
  };
  const referenceId = await post(200, 50, { kind: 'reference', rights: 'mine' });
  await board.write('setup', (doc) => {
    addPlane(doc, { id: 'sky', name: 'sky', kind: 'sky', tilt: null });
    addPlane(doc, { id: 'meadow', name: 'meadow', kind: 'land', tilt: null });
    putReferenceOutline(doc, referenceId, 'sky', SKY);
    putReferenceOutline(doc, referenceId, 'meadow', MEADOW);
  });
  return post(180, 90, { kind: 'painting', ...fields });
}

async function measured(pictureId: string) {
  return vi.waitFor(async () => {
    const found = await runner.measuresOf(board.boardId, pictureId);
    if ('pending' in found) throw new Error(found.pending);
    return found;
  }, PATIENT);
}

async function noteAndMeasure(pictureId: string, drying: 'wet' | 'dry' | null) {
  const told = results.length;
  await notePicture(board.boardId, pictureId, { drying });
  runner.pictureNoted(board.boardId, pictureId);
  await vi.waitFor(
    () => expect(results.slice(told).some(({ pending }) => pending === null)).toBe(true),
    PATIENT,
  );
  return measured(pictureId);
}

describe('wet paint', () => {
  test('noted at upload is a reason of the grade and speaks as a reading', { timeout: 60_000 }, async () => {
    const { capture, readings } = await measured(await posted({ medium: 'oil', drying: 'wet' }));
    expect(capture.reasons).toContain('wet');
    expect(readings.find(({ id }) => id === 'G8')?.sentence).toMatch(/wet/);
  });

  test('noted later is measured again, and again when it has dried', { timeout: 60_000 }, async () => {
    const id = await posted({});
    expect((await measured(id)).capture.reasons).not.toContain('wet');
    await vi.waitFor(() => expect(results.at(-1)?.pending).toBeNull(), PATIENT);
    const wet = await noteAndMeasure(id, 'wet');
    expect(wet.capture.reasons).toContain('wet');
    expect(wet.readings.map((reading) => reading.id)).toContain('G8');
    const dry = await noteAndMeasure(id, 'dry');
    expect(dry.capture.reasons).not.toContain('wet');
    expect(dry.readings.map((reading) => reading.id)).not.toContain('G8');
    expect(dry.planes).toEqual(wet.planes);
  });

  test('the medium alone changes no figure, so nothing is measured again', { timeout: 60_000 }, async () => {
    const id = await posted({ drying: 'dry' });
    const before = await measured(id);
    await vi.waitFor(() => expect(results.at(-1)?.pending).toBeNull(), PATIENT);
    await notePicture(board.boardId, id, { medium: 'gouache', light: 'lamp' });
    expect(await runner.measuresOf(board.boardId, id)).toEqual(before);
  });
});
