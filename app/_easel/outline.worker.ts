/**
 * Follows ridges and edits outlines beside the page, so that the hand never waits for it.
 *
 * In the flow: outline-line -> [outline worker] -> outline-line. Edges and patches of a picture are worked out once, on
 * its lossless small copy. IO: messages; HTTP.
 */
import { answerQuestions } from '#app/_workers/answer-questions.ts';
import { copyAt } from '#app/_workers/copies.ts';
import type { FractionPoint, Outline, PlaneKind } from '#server/core/contract/setup.ts';
import { gridOf } from '#server/core/planes/edit/grid.ts';
import type { Ring } from '#server/core/planes/edit/layers.ts';
import { mergedRing } from '#server/core/planes/edit/merge.ts';
import { type Patches, patchesOf } from '#server/core/planes/edit/patches.ts';
import { patchesUnder, shapeOf } from '#server/core/planes/edit/patches-under.ts';
import { type Edited, type EditTrouble, paintedOver } from '#server/core/planes/edit/regions.ts';
import { type SplitOff, splitOff } from '#server/core/planes/edit/split.ts';
import { betterLine } from '#server/core/planes/follow/better-line.ts';
import { type EdgeCosts, edgeCosts } from '#server/core/planes/follow/edge-cost.ts';
import { FollowTree } from '#server/core/planes/follow/follow-tree.ts';
import { simplified } from './outline-edit.ts';

/** A followed line is kept within this share of the picture's width. */
const TIDY = 0.0015;
/** Stops whose lines are kept: of two pictures, and the one before. */
const TREES_KEPT = 3;

interface OnPicture {
  /** Whole address of the small copy. */
  address: string;
}
/** Planes far to near; null where one has no outline on the picture. */
interface OnPlanes {
  rings: readonly (Ring | null)[];
}
/** How many patches the picture is looked at in, about. */
interface InPatches extends OnPicture {
  wanted: number;
  trail: readonly FractionPoint[];
}

export type OutlineQuestion =
  | ({ ask: 'edges' } & OnPicture)
  | ({ ask: 'line'; from: FractionPoint; to: FractionPoint } & OnPicture)
  | ({ ask: 'better'; stretches: readonly (readonly [FractionPoint, FractionPoint])[] } & OnPicture)
  | ({ ask: 'under' } & InPatches)
  | ({ ask: 'paint'; plane: number; way: 'add' | 'away' } & InPatches & OnPlanes)
  | ({
      ask: 'split';
      size: [number, number];
      plane: number;
      kind: PlaneKind;
      line: FractionPoint[];
    } & OnPlanes)
  | ({ ask: 'merge'; size: [number, number]; one: number; other: number } & OnPlanes);

export interface OutlineAnswer {
  line?: FractionPoint[];
  better?: (FractionPoint[] | null)[];
  /** What the patches under the hand look like together. */
  shape?: Outline[];
  edited?: Edited | EditTrouble;
  split?: SplitOff | null;
  merged?: Ring | null;
}

const costsOf = kept((address: string) => copyAt(address).then(edgeCosts));
const patchesAt = kept((key: string) => {
  const [wanted = '', address = ''] = key.split(' ');
  return copyAt(address).then((raster) => patchesOf(raster, Number(wanted)));
});
const trees = new Map<string, FollowTree>();

/** Works out something once for a key; what failed is tried again next time. */
function kept<T>(make: (key: string) => Promise<T>): (key: string) => Promise<T> {
  const all = new Map<string, Promise<T>>();
  return (key) => {
    const known = all.get(key);
    if (known) return known;
    const coming = make(key);
    all.set(key, coming);
    coming.catch(() => all.delete(key));
    return coming;
  };
}

function treeFrom(costs: EdgeCosts, address: string, from: FractionPoint): FollowTree {
  const key = `${from.join()} ${address}`;
  const tree = trees.get(key) ?? new FollowTree(costs, from);
  trees.delete(key);
  trees.set(key, tree);
  for (const old of [...trees.keys()].slice(0, -TREES_KEPT)) trees.delete(old);
  return tree;
}

const tidied = (line: readonly FractionPoint[], { columns, rows }: EdgeCosts) =>
  simplified(line, TIDY, rows / columns);

async function followed(
  question: Extract<OutlineQuestion, { ask: 'edges' | 'line' | 'better' }>,
): Promise<OutlineAnswer> {
  const costs = await costsOf(question.address);
  if (question.ask === 'edges') return {};
  if (question.ask === 'line') {
    const { address, from, to } = question;
    return { line: tidied(treeFrom(costs, address, from).lineTo(to), costs) };
  }
  const better = question.stretches.map(([from, to]) => {
    const line = betterLine(costs, from, to);
    return line && tidied(line, costs);
  });
  return { better };
}

async function painted(
  question: Extract<OutlineQuestion, { ask: 'under' | 'paint' }>,
): Promise<OutlineAnswer> {
  const patches: Patches = await patchesAt(`${question.wanted} ${question.address}`);
  const picked = patchesUnder(patches, question.trail);
  const shape = shapeOf(patches, picked);
  if (question.ask === 'under') return { shape };
  const { plane, way, rings } = question;
  return { shape, edited: paintedOver(rings, patches, { plane, way, picked }) };
}

answerQuestions((question: OutlineQuestion): OutlineAnswer | Promise<OutlineAnswer> => {
  switch (question.ask) {
    case 'under':
    case 'paint':
      return painted(question);
    case 'split': {
      const { rings, size, plane, kind, line } = question;
      return { split: splitOff(rings, gridOf(...size), plane, kind, line) };
    }
    case 'merge': {
      const { rings, size, one, other } = question;
      return { merged: mergedRing(rings, gridOf(...size), one, other) };
    }
    default:
      return followed(question);
  }
});
