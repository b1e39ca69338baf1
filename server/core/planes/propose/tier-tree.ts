/**
 * From many tiers to one: the ridge for which least speaks goes first.
 *
 * In the flow: superpixels -> merged regions -> [tier-tree] -> alternatives. Ridges that are left are found anew
 * after each step, since what lies above and below them has changed. Pure.
 */
import { apartness } from './apart.ts';
import { type Columns, columnsOf } from './columns.ts';
import { cueGrids, darkCue } from './cues.ts';
import { type Evidence, evidenceFor } from './evidence.ts';
import { joinRegions, mergeRegions, rootsAfter } from './merge.ts';
import { type Patch, type Region, regionGraph } from './region-graph.ts';
import { refineRidges } from './ridges.ts';
import { skyOf } from './sky.ts';
import { type Superpixels, superpixels } from './superpixels.ts';
import { skiesAmong, tierLook } from './tier-look.ts';
import { borderOnTop, tierPatches } from './tier-patches.ts';
import { farToNear, type Tops, tiersOf } from './tiers.ts';
import type { WorkingCopy } from './working-copy.ts';

/** Superpixels wanted on a large picture, and fewest pixels in one on a small picture. */
const SUPERPIXELS = 1200;
const SMALLEST_SUPERPIXEL_PX = 36;
/** Regions that merging leaves, of which tiers are made. */
const FIRST_TIERS = 12;
/** Columns of the copy skipped from one that is looked at to the next, while tiers are still merged. */
const EVERY = 3;
/** From this many tiers on, ridges are found anew after each step; before, single steps change little. */
const REFINED_FROM = 8;
/** dE² that an edge twice as strong as those beside it counts as, and the strongest that counts, as a ratio less 1. */
const EDGE_WEIGHT = 6;
const STRONGEST_EDGE = 2;
/** dE² that two planes count as which look wholly unlike in one cue, once something changes at their ridge. */
const UNLIKE_WEIGHT = 6;
/** What counts of a ridge between two tiers of sky: a cloud, not a plane. */
const SKY_FROM_SKY = 0.1;
/** Share of the picture below which a plane is none: it could not be measured. */
export const SMALLEST_SHARE = 0.01;
/** Squared step, dE², from which more hardly counts. */
const FULL_STEP = 100;
/** Unlikeness under which a change at the ridge counts less: noise changes somewhere, yet looks the same all over. */
const UNLIKE_ENOUGH = 0.2;
/** Squared step, dE², at which half of that counts. */
const HALF_STEP = 6;

/** What a unit of the learned log odds does to a weight, as an exponent, and the log odds beyond which it does no more. */
const ODDS_POWER = 0.7;
const ODDS_LIMIT = 6;
/** Weight, before the odds, below which they raise it no more. */
const FAINT = 0.25;

/** How much speaks for a ridge. */
export interface Ridge {
  /** One figure for all of it. */
  readonly weight: number;
  /** What changes across it, dE. */
  readonly step: number;
  /** Shares, 0..1: of the picture's width where its two planes meet, and of the picture that the smaller one fills. */
  readonly width: number;
  readonly share: number;
}

/** Tiers of one number, far to near, and the ridge on top of each but the first (index 0: that of tier 1). */
export interface Tiers {
  readonly tops: Tops;
  readonly ridges: readonly Ridge[];
}

/** The ridge that least speaks for. @param ridges at least one. */
export function weakestOf(ridges: readonly Ridge[]): Ridge {
  return ridges.reduce((weakest, ridge) => (ridge.weight < weakest.weight ? ridge : weakest));
}

export interface TierTree {
  readonly columns: Columns;
  /** All columns of the copy, for the last search. */
  readonly cues: readonly Float32Array[];
  /** By number of tiers less 1: one tier, two tiers, … */
  readonly tiers: readonly Tiers[];
}

/** One figure for all that speaks for a ridge, dE² times size. */
function weightOf({ step, edge, unlike, width, share }: Evidence): number {
  if (share < SMALLEST_SHARE) return 0;
  const edgeSquared = Math.min(edge, STRONGEST_EDGE) ** 2;
  const change = step / HALF_STEP + edgeSquared;
  const apart =
    step / (1 + step / FULL_STEP) +
    EDGE_WEIGHT * edgeSquared +
    (UNLIKE_WEIGHT * unlike * change) / (1 + change);
  return apart * Math.min(1, unlike / UNLIKE_ENOUGH) * width * Math.sqrt(share);
}

/** What the learned odds make of each weight: more where the tiers above and below are likely two planes. */
function oddsOf(columns: Columns, tops: Tops): number[] {
  const patches = tierPatches(columns, tops);
  const total = columns.count * columns.every * columns.rows;
  return tops.slice(1).map((_, at) => {
    const [far, near] = [patches[at] as Patch, patches[at + 1] as Patch];
    const border = borderOnTop(columns, tops, at + 1);
    if (border.length === 0) return 0;
    const odds = apartness(far, near, border, total, columns.rows);
    return Math.exp(ODDS_POWER * Math.max(-ODDS_LIMIT, Math.min(ODDS_LIMIT, odds)));
  });
}

/** What speaks for each ridge; little for one that only parts sky from sky. */
function ridgesOf(columns: Columns, tops: Tops): Ridge[] {
  const skies = skiesAmong(tops.map((_, k) => tierLook(columns, tops, k)));
  return oddsOf(columns, tops).map((factor, at): Ridge => {
    const evidence = evidenceFor(columns, tops, at + 1);
    const own = weightOf(evidence);
    // The odds were learned on landscapes: in noise they find planes where nothing changes at the ridge.
    const weight = own * (own < FAINT ? Math.min(1, factor) : factor);
    const { width, share } = evidence;
    const step = Math.sqrt(evidence.step);
    return { weight: at + 1 < skies ? weight * SKY_FROM_SKY : weight, step, width, share };
  });
}

/** The regions still there after merging, their borders renumbered to their places in the list. */
function survivors(
  regions: readonly Region[],
  gone: ReadonlySet<number>,
): { alive: number[]; left: Region[] } {
  const alive = regions.map((_, at) => at).filter((at) => !gone.has(at));
  const places = new Map(alive.map((at, place) => [at, place]));
  const left = alive.map((at) => {
    const region = regions[at] as Region;
    const borders = new Map(
      [...region.borders].map(([other, border]) => [places.get(other) as number, border]),
    );
    return { ...region, borders };
  });
  return { alive, left };
}

/** The rank, far to near, of the region that each superpixel went into. */
function ranksOf(copy: WorkingCopy, cues: readonly Float32Array[], found: Superpixels) {
  const regions = regionGraph(copy, cues, found);
  const joined = joinRegions(regions, skyOf(regions, found.labels.subarray(0, copy.columns)));
  const pixels = copy.columns * copy.rows;
  const merges = [
    ...joined,
    ...mergeRegions(regions, pixels, copy.rows, found.count - joined.length, FIRST_TIERS),
  ];
  const { alive, left } = survivors(regions, new Set(merges.map(({ from }) => from)));
  const rankOf = new Map(farToNear(left).map((place, rank) => [alive[place] as number, rank]));
  const roots = rootsAfter(found.count, merges);
  return { ranks: roots.map((root) => rankOf.get(root) as number), count: left.length };
}

function firstTiers(
  copy: WorkingCopy,
  columns: Columns,
  ranks: Int32Array,
  labels: Int32Array,
  count: number,
) {
  const rankAt = new Uint8Array(columns.count * columns.rows);
  for (let column = 0, to = 0; column < columns.count; column++) {
    const x = Math.min(copy.columns - 1, column * EVERY + (EVERY >> 1));
    for (let y = 0; y < columns.rows; y++, to++) {
      rankAt[to] = ranks[labels[y * copy.columns + x] as number] as number;
    }
  }
  return refineRidges(columns, tiersOf(columns, rankAt, count));
}

/** All numbers of tiers of a picture. */
export function tierTree(copy: WorkingCopy): TierTree {
  const pixels = copy.columns * copy.rows;
  const wanted = Math.max(1, Math.min(SUPERPIXELS, Math.floor(pixels / SMALLEST_SUPERPIXEL_PX)));
  const found = superpixels(copy.lab, copy.edge, copy.columns, copy.rows, wanted);
  const cues = cueGrids(copy, found);
  const dark = darkCue(copy);
  const { ranks, count } = ranksOf(copy, [...cues, dark], found);
  const columns = columnsOf(cues, dark, copy.edge, copy.columns, copy.rows, EVERY);
  const tiers: Tiers[] = [];
  let tops: Tops = firstTiers(copy, columns, ranks, found.labels, count);
  for (;;) {
    const ridges = ridgesOf(columns, tops);
    tiers.unshift({ tops, ridges });
    if (ridges.length === 0) break;
    const weakest = ridges.indexOf(weakestOf(ridges)) + 1;
    tops = tops.filter((_, k) => k !== weakest);
    if (tops.length < REFINED_FROM + 1) tops = refineRidges(columns, tops);
  }
  return { columns, cues, tiers };
}
