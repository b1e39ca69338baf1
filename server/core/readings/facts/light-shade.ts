/**
 * Light and shade inside each plane: the colour of its lights, of its shadows, and how much of it is dead black.
 *
 * In the flow: Lab grid -> [light and shade] -> C6, C7. Pure.
 */
import { chromaOf } from '../../colour/lab.ts';
import { warmCoolKernel } from '../../colour/temperature.ts';
import { COLOUR_RANGE, LIGHTNESS_RANGE, percentiles, type Range } from '../../image/percentiles.ts';
import { cellsByPlane, valuesOf } from '../../measure/plane-cells.ts';
import type { LightShadeFacts, PartColour } from '../picture-facts.ts';
import type { LabGrid } from './lab-grid.ts';

/** Cells a plane needs before its parts are spoken of. */
const FEWEST_CELLS = 200;
const SHADOWS = 0.3;
const LIGHTS = 0.7;
const DARKEST = 0.1;
/** Percentiles of many cells are read from bins: this much either way, L*. */
const BIN = 0.01;
const DEAD_CHROMA = 3;
const DEAD_L = 22;

function medianOf(values: Float32Array, range: Range): number {
  return percentiles(values, [0.5], range)[0] ?? 0;
}

function partColour(grid: LabGrid, cells: Int32Array): PartColour {
  const L = medianOf(valuesOf(grid.L, cells), LIGHTNESS_RANGE);
  const a = medianOf(valuesOf(grid.a, cells), COLOUR_RANGE);
  const b = medianOf(valuesOf(grid.b, cells), COLOUR_RANGE);
  return { L, a, b, chroma: chromaOf(a, b), warmCool: warmCoolKernel(a, b) };
}

function chromaAt({ a, b }: LabGrid, cell: number): number {
  return chromaOf(a[cell] as number, b[cell] as number);
}

function lightShadeOf(grid: LabGrid, name: string, cells: Int32Array, share: number): LightShadeFacts {
  const dead = cells.filter(
    (cell) => (grid.L[cell] as number) < DEAD_L && chromaAt(grid, cell) < DEAD_CHROMA,
  );
  const deadShare = cells.length === 0 ? 0 : (dead.length / cells.length) * share;
  if (cells.length < FEWEST_CELLS) return { name, lights: null, shadows: null, deadShare, darkChroma: null };
  const lightness = valuesOf(grid.L, cells);
  const [darkest, shade, light] = percentiles(lightness, [DARKEST, SHADOWS, LIGHTS], LIGHTNESS_RANGE) as [
    number,
    number,
    number,
  ];
  const upTo = (limit: number) => cells.filter((cell) => (grid.L[cell] as number) <= limit + BIN);
  const darks = upTo(darkest);
  return {
    name,
    lights: partColour(
      grid,
      cells.filter((cell) => (grid.L[cell] as number) >= light - BIN),
    ),
    shadows: partColour(grid, upTo(shade)),
    deadShare,
    darkChroma: medianOf(
      Float32Array.from(darks, (cell) => chromaAt(grid, cell)),
      COLOUR_RANGE,
    ),
  };
}

/**
 * One entry a plane, far to near.
 * @param shares of the picture that each plane covers, its rim included: what is dead counts for the rim as well.
 */
export function lightShadeFacts(grid: LabGrid, shares: readonly number[]): LightShadeFacts[] {
  const cells = cellsByPlane(grid.labels, grid.names.length);
  return grid.names.map((name, label) =>
    lightShadeOf(grid, name, cells[label] ?? new Int32Array(), shares[label] ?? 0),
  );
}
