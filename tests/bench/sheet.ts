/**
 * Rows about the sheet to take away: how long a page takes and how large it is, as PDF and as PNG, and how long the main
 * process stood still meanwhile.
 *
 * A painting and a reference of 2048 px, both the traced photograph at different light, five planes, nine remarks, three
 * cards. The yardstick is libvips decoding, shrinking and encoding the same two pictures. IO: worker threads, a folder.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import type { CritiqueSheet, SheetKind, SheetPicture } from '#server/core/sheet/content.ts';
import { createSheets, type Sheets } from '#server/pipeline/sheets.ts';
import { aCritique, aRemark } from '#tests/sheet/a-sheet.ts';
import { median, times } from './measured.ts';
import type { BenchRow } from './row.ts';

const PHOTO = fileURLToPath(new URL('../fixtures/photos/canyon-river.jpg', import.meta.url));
const ROUNDS = 7;
const TARGET_MS = 2000;
const TARGET_BYTES = 2_000_000;
const SIDE_PX = 2048;

export async function sheetRows(): Promise<BenchRow[]> {
  const folder = await mkdtemp(join(tmpdir(), 'bench-sheet-'));
  const sheets = createSheets();
  try {
    const [painting, reference] = [await plate(folder, 'painting', 0.9), await plate(folder, 'reference', 1)];
    const sheet = crowded(painting, reference);
    const yardstickMs = await yardstick([painting, reference]);
    const began = performance.now();
    await sheets.warm();
    const warmMs = performance.now() - began;
    const first = await drawn(sheets, sheet, 'pdf');
    const rows: BenchRow[] = [
      timeRow('sheet as PDF, the first since the start', [first], yardstickMs),
      {
        name: 'making the sheets’ thread ready, once after the first page was sent',
        measured: `${warmMs.toFixed(0)} ms`,
        ...{ yardstick: '', ratio: '', target: '', met: null },
      },
    ];
    for (const as of ['pdf', 'png'] as const) {
      const rounds = [];
      for (let round = 0; round < ROUNDS; round++) rounds.push(await drawn(sheets, sheet, as));
      rows.push(timeRow(`sheet as ${as.toUpperCase()}`, rounds, yardstickMs));
    }
    return [...rows, await stallRow(sheets, sheet)];
  } finally {
    await sheets.stop();
    await rm(folder, { recursive: true, force: true });
  }
}

/** @param gain Of the light, so that the two pictures differ. */
async function plate(folder: string, name: string, gain: number): Promise<SheetPicture> {
  const platePath = join(folder, `${name}.png`);
  await sharp(PHOTO).resize(SIDE_PX, SIDE_PX, { fit: 'inside' }).linear(gain, 0).png().toFile(platePath);
  return { platePath, photo: null, box: null };
}

function crowded(painting: SheetPicture, reference: SheetPicture): CritiqueSheet {
  const words = 'The far ridge is as dark as the wood in front of it, so it comes forward.';
  const remarks = Array.from({ length: 9 }, (_, at) =>
    aRemark(at + 1, words, [0.1 + at * 0.09, 0.2 + (at % 3) * 0.2]),
  );
  return { ...aCritique(painting, reference), remarks };
}

interface Drawn {
  tookMs: number;
  sizeBytes: number;
}

async function drawn(sheets: Sheets, content: CritiqueSheet, as: SheetKind): Promise<Drawn> {
  const began = performance.now();
  const { byteLength } = await sheets.draw({ content, paper: 'a4', as });
  return { tookMs: performance.now() - began, sizeBytes: byteLength };
}

async function yardstick(pictures: readonly SheetPicture[]): Promise<number> {
  const rounds: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const began = performance.now();
    for (const { platePath } of pictures)
      await sharp(platePath).resize(1280, 1280, { fit: 'inside' }).jpeg({ quality: 88 }).toBuffer();
    rounds.push(performance.now() - began);
  }
  return median(rounds);
}

function timeRow(name: string, rounds: readonly Drawn[], yardstickMs: number): BenchRow {
  const tookMs = median(rounds.map((round) => round.tookMs));
  const sizeBytes = Math.max(...rounds.map((round) => round.sizeBytes));
  return {
    name,
    measured: `${tookMs.toFixed(0)} ms, ${(sizeBytes / 1e6).toFixed(2)} MB`,
    yardstick: `libvips, both pictures: ${yardstickMs.toFixed(0)} ms`,
    ratio: times(tookMs / yardstickMs),
    target: `≤ ${TARGET_MS} ms, ≤ ${TARGET_BYTES / 1e6} MB`,
    met: tookMs <= TARGET_MS && sizeBytes <= TARGET_BYTES,
  };
}

/** A message from the thread and the handing over of a page's bytes are all that the main process does. */
async function stallRow(sheets: Sheets, sheet: CritiqueSheet): Promise<BenchRow> {
  const delay = monitorEventLoopDelay({ resolution: 5 });
  delay.enable();
  await drawn(sheets, sheet, 'png');
  delay.disable();
  const longestMs = delay.max / 1e6;
  return {
    name: 'main process while a sheet is drawn as PNG, longest wait',
    measured: `${longestMs.toFixed(0)} ms`,
    yardstick: '',
    ratio: '',
    target: '≤ 50 ms',
    met: longestMs <= 50,
  };
}
