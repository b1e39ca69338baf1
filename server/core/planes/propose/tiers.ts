/**
 * Planes as tiers: in every column, from the top down, far before near.
 *
 * In the flow: merged regions -> [tiers] -> ridges. A plane lies in front of what is seen above it; that is the
 * order of a landscape seen from the ground, and the reason why an outline may run on below the next ridge.
 * Pure.
 */
import type { Columns } from './columns.ts';
import type { Region } from './region-graph.ts';

/** What a row of height counts beside a pixel pair. */
const TOUCHLESS = 1e-4;

/** `tops[k][column]`: the row where tier k begins; a tier ends where the next begins. `tops[0]` is all 0. */
export type Tops = readonly Int16Array[];

/** Row below the last of tier `k` in a column. */
export function bottomOf(tops: Tops, k: number, column: number, rows: number): number {
  return tops[k + 1]?.[column] ?? rows;
}

/** For each pair of regions: pixel pairs with the first above the second, less those with it below. */
function aboveness(regions: readonly Region[]): number[][] {
  return regions.map((region, p) =>
    regions.map((_, q) => {
      const border = region.borders.get(q);
      if (!border) return 0;
      return p < q ? border.above : -border.above;
    }),
  );
}

/** Members of a set written as bits. */
function membersOf(set: number): number[] {
  const members: number[] = [];
  for (let place = 0; set >> place > 0; place++) if (set & (1 << place)) members.push(place);
  return members;
}

/**
 * The order, far to near, that most pixel pairs one above the other agree with.
 * Best sums over sets of regions (dynamic programming), so at most about 14 regions.
 */
export function farToNear(regions: readonly Region[]): number[] {
  const above = aboveness(regions);
  const heights = regions.map(({ sumY, pixels }) => sumY / pixels);
  const best = new Float64Array(1 << regions.length).fill(Number.NEGATIVE_INFINITY);
  const last = new Int8Array(best.length);
  best[0] = 0;
  for (let set = 1; set < best.length; set++) {
    const members = membersOf(set);
    for (const p of members) {
      let gain = best[set ^ (1 << p)] as number;
      for (const q of members) if (q !== p) gain += (above[q] as number[])[p] as number;
      // Regions that do not touch: the lower in the picture is the nearer.
      gain += TOUCHLESS * (heights[p] as number) * (members.length - 1);
      if (gain > (best[set] as number)) {
        best[set] = gain;
        last[set] = p;
      }
    }
  }
  const order: number[] = [];
  for (let set = best.length - 1; set > 0; set ^= 1 << (order[0] as number))
    order.unshift(last[set] as number);
  return order;
}

/**
 * In one column: the tier before each row's that leaves the fewest misfits, and the tier at the bottom.
 * `came[y * count + k]`: the tier that holds row y − 1 when tier k holds row y.
 */
function fewestMisfits(ranks: Uint8Array, start: number, rows: number, count: number) {
  const least = new Float64Array(count);
  const came = new Uint8Array(rows * count);
  for (let y = 0; y < rows; y++) {
    let source = 0;
    let before = y === 0 ? 0 : (least[0] as number);
    for (let k = 0; k < count; k++) {
      if (y > 0 && (least[k] as number) < before) {
        before = least[k] as number;
        source = k;
      }
      came[y * count + k] = source;
      least[k] = before + (ranks[start + y] === k ? 0 : 1);
    }
  }
  return { came, lowest: least.indexOf(Math.min(...least)) };
}

/** In one column: where each tier begins so that the fewest pixels get another rank than their own. */
function topsOfColumn(ranks: Uint8Array, start: number, rows: number, count: number): Int16Array {
  const { came, lowest } = fewestMisfits(ranks, start, rows, count);
  const tops = new Int16Array(count).fill(rows);
  for (let y = rows - 1, tier = lowest; y >= 0; y--) {
    tops[tier] = y;
    tier = came[y * count + tier] as number;
  }
  for (let k = count - 2; k >= 0; k--) tops[k] = Math.min(tops[k] as number, tops[k + 1] as number);
  tops[0] = 0;
  return tops;
}

/** @param ranks place in the order of each place's region. @param count of tiers. */
export function tiersOf(columns: Columns, ranks: Uint8Array, count: number): Int16Array[] {
  const tops = Array.from({ length: count }, () => new Int16Array(columns.count));
  for (let column = 0; column < columns.count; column++) {
    const found = topsOfColumn(ranks, column * columns.rows, columns.rows, count);
    tops.forEach((top, k) => {
      top[column] = found[k] as number;
    });
  }
  return tops;
}
