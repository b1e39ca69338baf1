/**
 * Proposes planes, far to near, for a photograph or a painting.
 *
 * In the flow: plate -> [propose] -> a person chooses, corrects, accepts. One tree of merged tiers gives the
 * proposals for two to seven planes; a coarser one leaves out the ridge that least speaks for, and the others
 * settle anew. Pure: runs in a worker of the browser and on the server alike.
 */
import type { FractionPoint, PlaneKind } from '../../contract/setup.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { type Columns, columnsOf } from './columns.ts';
import { describePlanes } from './describe.ts';
import { type Lines, linesOf } from './lines.ts';
import { outlineBelow } from './outlines.ts';
import { reasonFor, shortfall, toneDeviation } from './reasons.ts';
import { refineRidges } from './ridges.ts';
import { type Ridge, type Tiers, type TierTree, tierTree, weakestOf } from './tier-tree.ts';
import { type WorkingCopy, workingCopy } from './working-copy.ts';

export const FEWEST_PLANES = 2;
export const MOST_PLANES = 7;

/** Weight of a ridge (dE² times size, `tier-tree.ts`) that a plane needs to be proposed when asked for. */
const WEAKEST_ASKED = 0.25;
/** And to count when the program chooses the number: more from the sixth plane on, for a painter groups. */
const WEAKEST_CHOSEN = { few: 0.8, six: 8, seven: 20 };
/** Rows of the copy by which a simplified outline may leave a clear ridge, and a faint one. */
const TOLERANCE_PX = { clear: 0.8, faint: 2.2 };
/** Rows of the copy by which a ridge may still move when all columns are looked at. */
const LAST_REACH_PX = 12;
/** Weight per share from which a ridge is clear. */
const CLEAR = 30;

export interface ProposedPlane {
  readonly name: string;
  readonly kind: PlaneKind;
  /** 0..1 of the picture; nearer planes cover it. */
  readonly outline: readonly FractionPoint[];
}

export interface Proposal {
  /** Number of planes asked for, 2..7. */
  readonly asked: number;
  /** Far to near; fewer than asked where `note` says why. */
  readonly planes: readonly ProposedPlane[];
  /** One sentence where fewer planes than asked were found, else null. */
  readonly note: string | null;
}

export interface PlaneProposals {
  readonly widthPx: number;
  readonly heightPx: number;
  /** For 2, 3, … 7 planes. Several may hold the same planes where fewer can be told apart. */
  readonly alternatives: readonly Proposal[];
  /** The one the program would choose. */
  readonly chosen: Proposal;
  /** One sentence why. */
  readonly reason: string;
}

/** The most tiers, up to `asked`, of which every ridge weighs what `leastFor` that number demands. */
function tiersUpTo({ tiers }: TierTree, asked: number, leastFor: (planes: number) => number): Tiers {
  const enough = tiers
    .slice(0, asked)
    .filter(({ tops, ridges }) => ridges.length === 0 || weakestOf(ridges).weight >= leastFor(tops.length));
  return enough.at(-1) as Tiers; // one tier has no ridge, so it is always there
}

function weakestChosen(planes: number): number {
  if (planes < 6) return WEAKEST_CHOSEN.few;
  return planes === 6 ? WEAKEST_CHOSEN.six : WEAKEST_CHOSEN.seven;
}

/** What is seen in every column, for the last search, and lines for the kinds. */
interface Everywhere {
  readonly all: Columns;
  readonly lines: Lines;
}

/** The planes of some tiers, their ridges searched once more in every column. */
function planesOf(
  copy: WorkingCopy,
  { all, lines }: Everywhere,
  tree: TierTree,
  { tops, ridges }: Tiers,
): ProposedPlane[] {
  const { columns, rows } = copy;
  const wide = tops.map((top) =>
    Int16Array.from({ length: columns }, (_, x) => top[Math.floor(x / tree.columns.every)] as number),
  );
  const fine = refineRidges(all, wide, LAST_REACH_PX);
  const described = describePlanes(tree.columns, lines, tops);
  return described.flatMap((plane, k) => {
    const clear = k === 0 || (ridges[k - 1] as Ridge).weight >= CLEAR;
    const outline = outlineBelow(
      fine[k] as Int16Array,
      k === 0 ? undefined : fine[k + 1], // the farthest lies behind everything
      rows,
      clear ? TOLERANCE_PX.clear : TOLERANCE_PX.faint,
    );
    return outline ? [{ ...plane, outline }] : [];
  });
}

/** Proposals for 2 to 7 planes and the one to start from. @param raster a plate of any size. */
export function proposePlanes(raster: EncodedRaster): PlaneProposals {
  const copy = workingCopy(raster);
  const tree = tierTree(copy);
  const everywhere: Everywhere = {
    all: columnsOf(tree.cues, copy.dark, copy.edge, copy.columns, copy.rows, 1),
    lines: linesOf(copy, tree.columns.every),
  };
  const planesByTiers = new Map<Tiers, ProposedPlane[]>();
  const planesFor = (tiers: Tiers): ProposedPlane[] => {
    const known = planesByTiers.get(tiers) ?? planesOf(copy, everywhere, tree, tiers);
    planesByTiers.set(tiers, known);
    return known;
  };
  const deviation = toneDeviation(copy);
  const proposalOf = (asked: number, tiers: Tiers): Proposal => {
    const planes = planesFor(tiers);
    const onlySky = planes.every(({ kind }) => kind === 'sky');
    const finer = tree.tiers[planes.length]?.ridges ?? [];
    const next = finer.length > 0 ? weakestOf(finer) : null;
    const grounds = { toneDeviation: deviation, onlySky, next };
    return { asked, planes, note: planes.length < asked ? shortfall(asked, planes.length, grounds) : null };
  };
  const alternatives = Array.from({ length: MOST_PLANES - FEWEST_PLANES + 1 }, (_, at) =>
    proposalOf(
      FEWEST_PLANES + at,
      tiersUpTo(tree, FEWEST_PLANES + at, () => WEAKEST_ASKED),
    ),
  );
  const chosenTiers = tiersUpTo(tree, MOST_PLANES, weakestChosen);
  const chosen = proposalOf(Math.max(FEWEST_PLANES, chosenTiers.tops.length), chosenTiers);
  return {
    widthPx: raster.widthPx,
    heightPx: raster.heightPx,
    alternatives,
    chosen,
    reason: reasonFor(chosen.planes.length, chosen.planes.length < MOST_PLANES),
  };
}
