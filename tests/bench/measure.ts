/**
 * Measuring against libvips' bare decode and shrink of the same files, in the same run.
 *
 * The pair is 24 megapixels each, drawn from a fixture photograph enlarged with seeded noise, five planes across.
 * Each figure is the best of several runs: what a run takes beyond it is the machine's other work.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { type FractionPoint, Setup } from '#server/core/contract/setup.ts';
import { measurePair, measurePrepared } from '#server/core/measure/measure-pair.ts';
import { prepareMeasurable } from '#server/core/measure/prepare.ts';
import { readPlate } from '#server/imaging/plate.ts';
import type { BenchRow } from './row.ts';

const PHOTO = fileURLToPath(new URL('../fixtures/photos/canyon-river.jpg', import.meta.url));
const RUNS = 4;
const KINDS = ['sky', 'land', 'land', 'wood', 'land'] as const;
const TARGET_MS = 1500;
const TARGET_MEMORY_MB = 600;
const TARGET_LADDER_MS = 500;

/** The rows of design.md §5 about measuring. */
export async function measureRows(): Promise<BenchRow[]> {
  const folder = await mkdtemp(join(tmpdir(), 'veilstep-bench-'));
  try {
    const [reference, painting] = [join(folder, 'reference.jpg'), join(folder, 'painting.jpg')];
    await enlarged(6000, 4000, 1, reference);
    await enlarged(6000, 4000, 1.15, painting);
    return [
      ...(await pairRows(reference, painting)),
      await ladderRow(reference, painting),
      await growthRow(folder),
    ];
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function pairRows(reference: string, painting: string): Promise<BenchRow[]> {
  const yardstick = await best(() => Promise.all([reference, painting].map(bareDecode)));
  const idle = process.memoryUsage().rss;
  let peak = idle;
  const watch = setInterval(() => {
    peak = Math.max(peak, process.memoryUsage().rss);
  }, 5);
  const taken = await best(() => measureFiles(reference, painting));
  peak = Math.max(peak, process.memoryUsage().rss);
  clearInterval(watch);
  const rise = (peak - idle) / 1e6;
  return [
    {
      name: 'measure a pair of 24-megapixel JPEGs, five planes',
      measured: ms(taken),
      yardstick: `libvips decode + shrink of both ${ms(yardstick)}`,
      ratio: `× ${(taken / yardstick).toFixed(1)}`,
      target: `≤ ${TARGET_MS} ms`,
      met: taken <= TARGET_MS,
    },
    {
      name: 'memory rise while measuring that pair',
      measured: `${rise.toFixed(0)} MB`,
      yardstick: `the two decoded pictures ${((2 * 6000 * 4000 * 3) / 1e6).toFixed(0)} MB`,
      ratio: `× ${(rise / 144).toFixed(1)}`,
      target: `≤ ${TARGET_MEMORY_MB} MB`,
      met: rise <= TARGET_MEMORY_MB,
    },
  ];
}

/** What the server does when an outline moved: both plates are prepared already. */
async function ladderRow(reference: string, painting: string): Promise<BenchRow> {
  const [left, right] = await Promise.all([readPlate(reference), readPlate(painting)]);
  const [first, second] = [prepareMeasurable(left), prepareMeasurable(right)];
  let shift = 0;
  const again = await best(async () => {
    shift += 0.002;
    return measurePrepared(first, second, fivePlanes(shift));
  });
  const whole = await best(async () =>
    measurePair({ reference: left, painting: right, setup: fivePlanes(0) }),
  );
  return {
    name: 'outline dragged → new ladder at 2048 px',
    measured: ms(again),
    yardstick: `measuring both plates afresh ${ms(whole)}`,
    ratio: `× ${(again / whole).toFixed(2)}`,
    target: `≤ ${TARGET_LADDER_MS} ms`,
    met: again <= TARGET_LADDER_MS,
  };
}

/** Linear growth: four times the pixels should take about four times as long, whatever the constant. */
async function growthRow(folder: string): Promise<BenchRow> {
  const small = join(folder, 'small.jpg');
  const large = join(folder, 'large.jpg');
  await enlarged(3000, 2000, 1, small);
  await enlarged(6000, 4000, 1, large);
  const [shortMs, longMs] = [await best(() => readPlate(small)), await best(() => readPlate(large))];
  return {
    name: 'file → plate, 24 against 6 megapixels',
    measured: ms(longMs),
    yardstick: `6 megapixels ${ms(shortMs)}`,
    ratio: `× ${(longMs / shortMs).toFixed(1)} for × 4 pixels`,
    target: 'at most × 4 (linear)',
    met: longMs / shortMs <= 4.4,
  };
}

async function measureFiles(reference: string, painting: string): Promise<unknown> {
  const [left, right] = await Promise.all([readPlate(reference), readPlate(painting)]);
  return measurePair({ reference: left, painting: right, setup: fivePlanes(0) });
}

function bareDecode(path: string): Promise<Buffer> {
  return sharp(path).resize(2048, 2048, { fit: 'inside' }).raw().toBuffer();
}

/** Five bands from the sky down, with wavy ridges. */
function fivePlanes(shift: number): Setup {
  const planes = KINDS.map((kind, index) => {
    const ridge = Array.from({ length: 41 }, (_, step): FractionPoint => {
      const wave = index === 0 ? 0 : 0.02 * Math.sin(step * 0.7 + index);
      return [step / 40, index === 0 ? 0 : index / 5 + wave + shift];
    });
    return { name: `plane ${index + 1}`, kind, reference: [...ridge, [1, 1], [0, 1]] };
  });
  return Setup.parse({ planes });
}

async function enlarged(width: number, height: number, brightness: number, path: string): Promise<void> {
  const noise = { type: 'gaussian', mean: 128, sigma: 12 } as const;
  const grain = await sharp({ create: { width: 1000, height: 1000, channels: 3, noise, background: '#000' } })
    .png({ compressionLevel: 0 })
    .toBuffer();
  await sharp(PHOTO)
    .resize(width, height, { fit: 'fill' })
    .modulate({ brightness })
    .composite([{ input: grain, tile: true, blend: 'soft-light' }])
    .jpeg({ quality: 90, chromaSubsampling: '4:2:0' })
    .toFile(path);
}

async function best(run: () => Promise<unknown>): Promise<number> {
  let least = Number.POSITIVE_INFINITY;
  for (let index = 0; index < RUNS; index++) {
    const started = performance.now();
    await run();
    least = Math.min(least, performance.now() - started);
  }
  return least;
}

function ms(value: number): string {
  return `${value.toFixed(0)} ms`;
}
