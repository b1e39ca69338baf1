/**
 * A ridge bent up or down: every column is stretched above and pressed below it, or the other way round, softly.
 *
 * In the flow: picture -> [bend-ridge] -> rearrange. Pure. Along the ridge the bend falls off as a raised cosine; above and
 * below it the shift falls off likewise over at least twice its own length, so that no column ever folds over itself.
 */
import type { Bend } from '../../contract/rearranging.ts';
import type { FractionPoint } from '../../contract/setup.ts';

/** Least reach above and below the ridge, share of the height; and in lengths of the bend. */
const LEAST_REACH = 0.08;
const REACH_PER_SHIFT = 2.2;
/** A column folds where the reach is under π/2 lengths of the shift; this keeps a margin. */
const FOLDS = 1.8;
/** A ridge is never bent farther than this share of the way to the border. */
const MOST_OF_ROOM = 0.6;

function eased(t: number): number {
  return Math.abs(t) >= 1 ? 0 : 0.5 * (1 + Math.cos(Math.PI * t));
}

/** Height of the ridge above a place, 0..1; beyond its ends as at the nearest one. */
export function ridgeAt(line: readonly FractionPoint[], x: number): number {
  const [first] = line;
  if (!first || x <= first[0]) return first?.[1] ?? 0.5;
  for (let at = 1; at < line.length; at++) {
    const [x0, y0] = line[at - 1] as FractionPoint;
    const [x1, y1] = line[at] as FractionPoint;
    if (x <= x1) return x1 === x0 ? y1 : y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
  }
  return (line.at(-1) as FractionPoint)[1];
}

/** The ridge as the bend shows it, but for what the picture's border takes from it. */
export function bentLine({ line, at, reach, lift }: Bend): FractionPoint[] {
  return line.map(([x, y]): FractionPoint => [x, y - lift * eased((x - at) / reach)]);
}

/** Where each row of one column comes from, in rows; null where the column stays as it is. */
export type ColumnSource = Float32Array | null;

/** Sources of all columns for one bend. */
export function bendSources(bend: Bend, widthPx: number, heightPx: number): ColumnSource[] {
  return Array.from({ length: widthPx }, (_, column) => {
    const x = (column + 0.5) / widthPx;
    const wanted = bend.lift * heightPx * eased((x - bend.at) / bend.reach);
    if (Math.abs(wanted) < 0.01) return null;
    const ridge = ridgeAt(bend.line, x) * heightPx;
    const reach = Math.max(LEAST_REACH * heightPx, REACH_PER_SHIFT * Math.abs(wanted));
    return columnSource(ridge, wanted, reach, heightPx);
  });
}

/** @param lift rows, + up. */
function columnSource(ridge: number, lift: number, reach: number, rows: number): Float32Array {
  // Near the picture's border there is less room, and so less of a bend.
  const [before, behind] = lift > 0 ? [ridge, rows - ridge] : [rows - ridge, ridge];
  const most = Math.max(0, Math.min(MOST_OF_ROOM * before, behind / (FOLDS - 1)));
  const shift = Math.sign(lift) * Math.min(Math.abs(lift), most);
  const target = ridge - shift;
  const above = Math.max(FOLDS * Math.abs(shift), Math.min(reach, target));
  const below = Math.max(FOLDS * Math.abs(shift), Math.min(reach, rows - target));
  return Float32Array.from({ length: rows }, (_, row) => {
    const away = row + 0.5 - target;
    const from = row + shift * eased(away / (away < 0 ? above : below));
    return Math.min(rows - 1, Math.max(0, from));
  });
}
