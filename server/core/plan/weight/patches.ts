/**
 * Connected patches of a picture: what the eye takes for one thing or one ground.
 *
 * In the flow: small picture -> [patches] -> surround, balance. Touching cells are joined, the likest first, as long as
 * the step between two patches is no greater than what either holds inside. Superpixels (`planes/propose`) would not
 * do: their seeds lie on a grid that mirroring shifts, and the mirrored picture must weigh the mirrored way. Pure.
 * Source: Felzenszwalb & Huttenlocher (2004), "Efficient graph-based image segmentation", IJCV 59(2), section 3.
 */
import { coreCells, giveAwayRims } from './rims.ts';
import type { SmallPicture } from './small-picture.ts';

/** k of the paper, dE times cells: how much a small patch may differ inside before it is left alone. */
const SCALE = 90;
/** Share of the picture under which a patch is given to those around it. */
const SMALLEST = 0.0004;

export interface PatchMap {
  /** Number of each cell's patch, 0..count − 1, in the order in which they are first met. */
  readonly labels: Int32Array;
  readonly count: number;
  /** 1 for each cell that has its own patch all around it. */
  readonly core: Uint8Array;
}

interface Joins {
  readonly parent: Int32Array;
  readonly size: Int32Array;
  /** Greatest step that a patch holds inside, dE. */
  readonly inside: Float32Array;
}

/** Pairs of touching cells with the step between them, dE*ab. */
interface Pairs {
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly step: Float32Array;
  /** Indices by rising step. */
  readonly order: Uint32Array;
}

function pairsOf({ columns, rows, lab }: SmallPicture): Pairs {
  const { lightness, a, b } = lab;
  const count = 2 * columns * rows - columns - rows;
  const [from, to, step] = [new Int32Array(count), new Int32Array(count), new Float32Array(count)];
  let at = 0;
  const add = (one: number, two: number): void => {
    from[at] = one;
    to[at] = two;
    step[at++] = Math.hypot(
      (lightness[one] as number) - (lightness[two] as number),
      (a[one] as number) - (a[two] as number),
      (b[one] as number) - (b[two] as number),
    );
  };
  for (let y = 0, cell = 0; y < rows; y++) {
    for (let x = 0; x < columns; x++, cell++) {
      if (x + 1 < columns) add(cell, cell + 1);
      if (y + 1 < rows) add(cell, cell + columns);
    }
  }
  const order = Uint32Array.from({ length: count }, (_, pair) => pair);
  order.sort((one, two) => (step[one] as number) - (step[two] as number));
  return { from, to, step, order };
}

function rootOf(parent: Int32Array, cell: number): number {
  let root = cell;
  while (parent[root] !== root) {
    parent[root] = parent[parent[root] as number] as number;
    root = parent[root] as number;
  }
  return root;
}

function join({ parent, size, inside }: Joins, one: number, two: number, step: number): void {
  const [root, other] = (size[one] as number) >= (size[two] as number) ? [one, two] : [two, one];
  parent[other] = root;
  size[root] = (size[root] as number) + (size[other] as number);
  inside[root] = Math.max(step, inside[root] as number, inside[other] as number);
}

/** Joins along all pairs, the least step first, where `may` allows it for the two patches. */
function joinWhere(joins: Joins, pairs: Pairs, may: (one: number, two: number, step: number) => boolean) {
  for (const pair of pairs.order) {
    const one = rootOf(joins.parent, pairs.from[pair] as number);
    const two = rootOf(joins.parent, pairs.to[pair] as number);
    const step = pairs.step[pair] as number;
    if (one !== two && may(one, two, step)) join(joins, one, two, step);
  }
}

/** Roots numbered in the order in which they are first met. */
function numbered({ columns, rows }: SmallPicture, roots: Int32Array): PatchMap {
  const numbers = new Map<number, number>();
  const labels = roots.map((root) => {
    const known = numbers.get(root) ?? numbers.size;
    numbers.set(root, known);
    return known;
  });
  return { labels, count: numbers.size, core: coreCells(columns, rows, labels) };
}

/** The patches of a picture. Cells on a rim between two belong to the one they are more like. */
export function patchMap(picture: SmallPicture): PatchMap {
  const cells = picture.columns * picture.rows;
  const joins: Joins = {
    parent: Int32Array.from({ length: cells }, (_, cell) => cell),
    size: new Int32Array(cells).fill(1),
    inside: new Float32Array(cells),
  };
  const pairs = pairsOf(picture);
  const { size, inside } = joins;
  const bears = (patch: number): number => (inside[patch] as number) + SCALE / (size[patch] as number);
  joinWhere(joins, pairs, (one, two, step) => step <= Math.min(bears(one), bears(two)));
  const roots = joins.parent.map((_, cell) => rootOf(joins.parent, cell));
  giveAwayRims(picture, roots, SMALLEST * cells);
  return numbered(picture, roots);
}
