/**
 * Two small pictures with a known answer for the browser tests: four level bands, sky to meadow, in flat colours
 * with a little grain. In the painting the far hills are darker and warmer on purpose. Invented; no one's data.
 */
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { converter } from 'culori';
import sharp from 'sharp';

const OUT = fileURLToPath(new URL('../.out/scenes/', import.meta.url));
const toRgb = converter('rgb');

/** Where one band ends and the next begins, 0..1 from the top. */
export const RIDGES = [0.3, 0.5, 0.72] as const;

type Lab = readonly [L: number, a: number, b: number];
export const REFERENCE_BANDS: readonly Lab[] = [
  [86, -2, -8],
  [66, -1, -12],
  [42, -8, 16],
  [52, -18, 34],
];
/** The far hills stand 20 L* darker and 16 b* warmer than in the reference; the rest holds. */
export const PAINTING_BANDS: readonly Lab[] = [
  [86, -2, -8],
  [46, -1, 4],
  [42, -8, 16],
  [52, -18, 34],
];

interface SceneFile {
  name: string;
  bands: readonly Lab[];
  /** Where the bands end; as `RIDGES` unless given. */
  ridges?: readonly number[];
  widthPx?: number;
  heightPx?: number;
}

/** Writes a scene as a PNG and returns its path. */
export async function sceneFile({
  name,
  bands,
  ridges = RIDGES,
  widthPx = 1500,
  heightPx = 1000,
}: SceneFile): Promise<string> {
  const colours = bands.map(([l, a, b]) => toRgb({ mode: 'lab65', l, a, b }));
  const pixels = Buffer.alloc(widthPx * heightPx * 3);
  let grain = 12345;
  for (let pixel = 0; pixel < widthPx * heightPx; pixel++) {
    const height = Math.floor(pixel / widthPx) / heightPx;
    const colour = colours[ridges.filter((ridge) => height >= ridge).length];
    grain = (Math.imul(grain, 1664525) + 1013904223) >>> 0;
    const shift = ((grain >>> 24) / 255 - 0.5) * 6;
    pixels[pixel * 3] = clamp((colour?.r ?? 0) * 255 + shift);
    pixels[pixel * 3 + 1] = clamp((colour?.g ?? 0) * 255 + shift);
    pixels[pixel * 3 + 2] = clamp((colour?.b ?? 0) * 255 + shift);
  }
  await mkdir(OUT, { recursive: true });
  const path = join(OUT, `${name}.png`);
  await sharp(pixels, { raw: { width: widthPx, height: heightPx, channels: 3 } })
    .png()
    .toFile(path);
  return path;
}

function clamp(code: number): number {
  return Math.max(0, Math.min(255, Math.round(code)));
}
