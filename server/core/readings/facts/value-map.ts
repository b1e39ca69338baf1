/**
 * Ends of the range, and the three-value map of a squinted picture with its spots.
 *
 * In the flow: Lab grid -> [value map] -> V8, V9, V12, V13. The cuts lie at thirds of the picture's own range
 * L2..L98, so that exposure and key leave the map as it is. Pure. Source: Poore 1903, ch. X, for the three values.
 */
import { gaussianBlur } from '../../image/gaussian.ts';
import { LIGHTNESS_RANGE, percentiles } from '../../image/percentiles.ts';
import type { LightnessEnds, ValueMapFacts } from '../picture-facts.ts';
import type { LabGrid } from './lab-grid.ts';
import { middleOf, type Patch, patchesOf } from './patches.ts';

/** Squint before the cuts, as a share of the long side: that of fine detail. */
const SQUINT = 0.004;
/** On a small grid: in cells. */
const LEAST_SQUINT = 0.5;
/** Patches under this share of the picture are spots. */
const SPOT = 0.005;
/** The map is drawn on about this many cells along the long side: spots of 0.5 % are 36 cells across at least. */
const MAP_SIDE = 512;
const NONE = 255;

/** @returns null when the picture has no cell. */
export function lightnessEnds(L: Float32Array): LightnessEnds | null {
  if (L.length === 0) return null;
  const [L1, L2, L98, L99] = percentiles(L, [0.01, 0.02, 0.98, 0.99], LIGHTNESS_RANGE) as [
    number,
    number,
    number,
    number,
  ];
  return { L1, L2, L98, L99 };
}

interface ValueMap {
  columns: number;
  rows: number;
  /** 0 dark, 1 middle, 2 light. */
  classes: Uint8Array;
}

function squintedMap({ L, columns, rows }: LabGrid, ends: LightnessEnds): ValueMap {
  const longSide = Math.max(columns, rows);
  const blurred = gaussianBlur(
    { columns, rows, channels: 1, samples: L },
    Math.max(LEAST_SQUINT, SQUINT * longSide),
  );
  const stride = Math.max(1, Math.floor(longSide / MAP_SIDE));
  const third = (ends.L98 - ends.L2) / 3;
  const [mapColumns, mapRows] = [Math.ceil(columns / stride), Math.ceil(rows / stride)];
  const classes = Uint8Array.from({ length: mapColumns * mapRows }, (_, at) => {
    const y = Math.floor(at / mapColumns) * stride;
    const lightness = blurred[y * columns + (at % mapColumns) * stride] as number;
    if (lightness < ends.L2 + third) return 0;
    return lightness < ends.L98 - third ? 1 : 2;
  });
  return { columns: mapColumns, rows: mapRows, classes };
}

const VALUES = ['dark', 'middle', 'light'] as const;

function mostSpotted(spots: Patch[]): ValueMapFacts['spotValue'] {
  const sizes = VALUES.map((_, value) =>
    spots.filter((spot) => spot.value === value).reduce((sum, spot) => sum + spot.size, 0),
  );
  const most = sizes.indexOf(Math.max(...sizes));
  return spots.length === 0 ? null : (VALUES[most] ?? null);
}

/** Middle of the ninth of the picture with most spotted cells. */
function densest(spots: Patch[], columns: number, rows: number): [number, number] | null {
  if (spots.length === 0) return null;
  const counts = new Array<number>(9).fill(0);
  for (const spot of spots) {
    const [x, y] = middleOf(spot, columns, rows);
    const ninth = Math.min(2, Math.floor(y * 3)) * 3 + Math.min(2, Math.floor(x * 3));
    counts[ninth] = (counts[ninth] ?? 0) + spot.size;
  }
  const ninth = counts.indexOf(Math.max(...counts));
  return [((ninth % 3) + 0.5) / 3, (Math.floor(ninth / 3) + 0.5) / 3];
}

/** @returns null when the picture has no range to cut. */
export function valueMapOf(grid: LabGrid): ValueMapFacts | null {
  const ends = lightnessEnds(grid.L);
  if (!ends || ends.L98 - ends.L2 < 1) return null;
  const { classes, columns, rows } = squintedMap(grid, ends);
  const patches = patchesOf(classes, columns, NONE);
  const shareOf = (value: number) =>
    patches.filter((patch) => patch.value === value).reduce((sum, patch) => sum + patch.size, 0) /
    classes.length;
  const spots = patches.filter(({ size }) => size < SPOT * classes.length);
  return {
    dark: shareOf(0),
    middle: shareOf(1),
    light: shareOf(2),
    spots: spots.reduce((sum, { size }) => sum + size, 0) / classes.length,
    spotValue: mostSpotted(spots),
    spotAt: densest(spots, columns, rows),
  };
}
