/**
 * Planes carried over: overlap on paintings of known scenes and of the traced landscapes, and the time that it takes.
 *
 * Overlap is mean intersection over union of the planes that a painting shows; the yardstick is the same without
 * fitting or carrying. Thresholds were chosen on the scenes for measuring and on the tuning half. Reads the fixtures.
 */
import sharp from 'sharp';
import { encodedRaster } from '#server/core/image/raster.ts';
import { Carrying } from '#server/core/planes/carry/carry-planes.ts';
import { type CarriedResult, carriedResult, together, wrongShare } from '../fixtures/carry/carried.ts';
import { CARRY_KINDS, type CarryKind, carryCase, caseOfName } from '../fixtures/carry/cases.ts';
import { paintPhoto } from '../fixtures/carry/paint-photo.ts';
import { type CarriedPair, paintScene } from '../fixtures/carry/paint-scene.ts';
import { isCloseScene, proposalScenes } from '../fixtures/proposals/scenes.ts';
import { decodeTraced, tracedPictures } from '../fixtures/traced/traced.ts';
import type { BenchRow } from './row.ts';

const TARGET = 0.9;
const TARGET_MS = 1000;
const SIDE_PX = 1280;
const RUNS = 4;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

/** @param target Null where nothing was promised. */
function rowOf(name: string, results: readonly CarriedResult[], target: number | null): BenchRow {
  const fitted = mean(results.map((result) => result.fitted));
  const before = mean(results.map((result) => result.before));
  const placed = mean(results.map((result) => result.placed));
  const { sure, unsure } = together(results.map(({ ridges }) => ridges));
  const per = (share: number): string => `${(100 * share).toFixed(1)} %`;
  return {
    name: `${name}: wrong among sure ridges ${per(wrongShare(sure))}, among unsure ${per(wrongShare(unsure))}`,
    measured: `overlap ${fitted.toFixed(3)}`,
    yardstick: `not carried ${before.toFixed(3)}, not fitted ${placed.toFixed(3)}`,
    ratio: `+ ${(fitted - before).toFixed(3)}`,
    target: target === null ? '' : `≥ ${target}`,
    met: target === null ? null : fitted >= target,
  };
}

function sceneRow(kind: CarryKind): BenchRow {
  const results = proposalScenes.map((scene, at) =>
    carriedResult(paintScene(scene, carryCase(kind, 100 + at, scene.planes.length + 1, isCloseScene(scene)))),
  );
  return rowOf(`planes carried to ${results.length} rendered scenes, ${kind}`, results, TARGET);
}

async function tracedPairs(half: 'tune' | 'report', kind: CarryKind): Promise<CarriedPair[]> {
  const pairs: CarriedPair[] = [];
  for (const traced of tracedPictures(half)) {
    const drawn = carryCase(kind, caseOfName(traced.picture), traced.planes.length, false);
    pairs.push(paintPhoto({ picture: await decodeTraced(traced), planes: traced.planes }, drawn));
  }
  return pairs;
}

async function tracedRow(half: 'tune' | 'report', kind: CarryKind): Promise<BenchRow> {
  const results = (await tracedPairs(half, kind)).map(carriedResult);
  return rowOf(
    `planes carried from ${results.length} traced landscapes, ${half} half, ${kind}`,
    results,
    null,
  );
}

/** Least of several runs, milliseconds: what a run takes beyond it is the machine's other work. */
async function least(run: () => unknown): Promise<number> {
  let best = Number.POSITIVE_INFINITY;
  for (let index = 0; index < RUNS; index++) {
    const started = performance.now();
    await run();
    best = Math.min(best, performance.now() - started);
  }
  return best;
}

async function enlarged({ widthPx, heightPx, samples }: CarriedPair['painting']) {
  const { data, info } = await sharp(samples, { raw: { width: widthPx, height: heightPx, channels: 3 } })
    .resize(SIDE_PX, SIDE_PX, { fit: 'inside' })
    .raw()
    .toBuffer({ resolveWithObject: true });
  return encodedRaster(info.width, info.height, data);
}

/** Everything that one click does in the worker: both copies read, the place found, planes moved and fitted. */
async function speedRows(): Promise<BenchRow[]> {
  const [pair] = await tracedPairs('tune', 'repainted');
  if (!pair) throw new Error('No traced picture.');
  const [reference, painting] = [await enlarged(pair.reference), await enlarged(pair.painting)];
  const planes = pair.outlines.map((outline, at) => ({ id: `${at}`, name: `${at}`, outline }));
  const raw = { width: painting.widthPx, height: painting.heightPx, channels: 3 } as const;
  const jpeg = await sharp(painting.samples, { raw }).jpeg({ quality: 92 }).toBuffer();
  const yardstick = await least(() => sharp(jpeg).raw().toBuffer());
  const carrying = new Carrying(reference, painting, planes);
  const { placement } = carrying.whole();
  const moves = carrying.moves(placement);
  const taken = {
    'fitted again after a hand moved them': await least(() => carrying.fitted(placement, moves)),
    'placed, moved and fitted at once': await least(() => {
      const fresh = new Carrying(reference, painting, planes);
      const found = fresh.whole().placement;
      return fresh.fitted(found, fresh.moves(found));
    }),
  };
  return Object.entries(taken).map(([what, timeMs]) => ({
    name: `${planes.length} planes on a copy of ${SIDE_PX} px, ${what}`,
    measured: `${timeMs.toFixed(0)} ms`,
    yardstick: `libvips decode of that copy ${yardstick.toFixed(0)} ms`,
    ratio: `× ${(timeMs / yardstick).toFixed(1)}`,
    target: `≤ ${TARGET_MS} ms`,
    met: timeMs <= TARGET_MS,
  }));
}

/** Speed, then overlap on rendered scenes and on both halves of the traced ones. */
export async function carryingRows(): Promise<BenchRow[]> {
  const rows = await speedRows();
  for (const kind of CARRY_KINDS) rows.push(sceneRow(kind));
  for (const half of ['tune', 'report'] as const) {
    for (const kind of CARRY_KINDS) rows.push(await tracedRow(half, kind));
  }
  return rows;
}
