/**
 * What a frame holds, and how well it does as a picture.
 *
 * In the flow: crop scene + frame -> [judge] -> search, reasons. Rules: what matters is large; nothing is cut; the sky
 * and an empty foreground stay under a third each, but there is ground to enter by and air over the land; nothing idle
 * lies along the sides; the horizon and the focus keep out of the middle; weight is answered.
 * Sources: Poore 1903, chs. III, IV; Harrison 1909, pp. 89-97; thirds, air and idle sides: common practice, no source.
 * How much each counts is an own estimate, set on rendered scenes kept for tuning. Pure.
 */
import { type Balance, heavierSide, leverOf, type WeighedPatch } from '../weight/balance.ts';
import { type Box, type CropScene, shareIn } from './crop-scene.ts';

const THIRD = 1 / 3;
/** Share of a thing beyond the frame from which it is cut, and from which it is simply left out. */
const CUT = { least: 0.04, most: 0.96 };
/** Share of the frame's sides that a thing keeps away from its edge, else it is crowded. */
const ROOM = 0.03;
const CENTRED = 0.06;
const AT_EDGE = 0.08;
/** Strong places of a side: its thirds. */
const THIRDS_REACH = 0.07;

/** Least share of the nearest plane to enter by, and of sky as air over the land, where the picture has them. */
const ENTRANCE = 0.2;
const AIR = 0.25;
/** Share of the frame's width that may lie empty along a side before it does nothing. */
const IDLE = 0.15;

/** What each trait counts in the score. */
const COUNTS = {
  kept: 3,
  large: 0.5,
  cut: 2,
  /** For each thing that is cut, however little it weighs. */
  cutEach: 0.04,
  crowded: 0.8,
  emptySky: 3,
  emptyFront: 4,
  noEntrance: 3.7,
  noAir: 2.2,
  idle: 0.6,
  halved: 0.35,
  horizonThird: 0.2,
  lever: 0.3,
  centred: 0.5,
  edge: 1.5,
  outside: 3.3,
  strongPlace: 0.25,
} as const;

export interface Judged {
  readonly box: Box;
  /** Share of the sky and of the nearest plane in the frame, 0..1. */
  readonly sky: number;
  readonly foreground: number;
  /** Median height of the skyline in the frame, 0 (top) to 1; null where there is none. */
  readonly horizon: number | null;
  /** About the frame's own middle, of what lies inside. */
  readonly lever: number;
  readonly heavier: Balance['heavier'];
  /** Share of the weight of all things that lies wholly inside. */
  readonly kept: number;
  /** Things cut by the frame, and their share of the weight of all things. */
  readonly cut: readonly WeighedPatch[];
  readonly cutShare: number;
  /** Share of the weight of all things that stands inside but close to the frame. */
  readonly crowdedShare: number;
  /** Place of the focus in the frame, 0..1; null where there is none. */
  readonly focus: readonly [x: number, y: number] | null;
  readonly score: number;
}

interface Held {
  kept: number;
  cutWeight: number;
  crowded: number;
  readonly cut: WeighedPatch[];
  /** How far the outermost things keep from the frame's sides, in frames; below 0 where one is cut. */
  left: number;
  right: number;
}

/** Share of a thing's own box that lies in the frame. */
function insideShare(thing: Box, [x0, y0, x1, y1]: Box): number {
  const across = Math.min(thing[2], x1) - Math.max(thing[0], x0);
  const down = Math.min(thing[3], y1) - Math.max(thing[1], y0);
  if (across <= 0 || down <= 0) return 0;
  return (across * down) / ((thing[2] - thing[0]) * (thing[3] - thing[1]));
}

/** Whether a thing stands close to a side of the frame that is not the picture's own. */
function isCrowded(thing: Box, box: Box): boolean {
  const [roomX, roomY] = [ROOM * (box[2] - box[0]), ROOM * (box[3] - box[1])];
  return (
    (box[0] > 0 && thing[0] - box[0] < roomX) ||
    (box[1] > 0 && thing[1] - box[1] < roomY) ||
    (box[2] < 1 && box[2] - thing[2] < roomX) ||
    (box[3] < 1 && box[3] - thing[3] < roomY)
  );
}

function heldIn({ things }: CropScene, box: Box): Held {
  const held: Held = { kept: 0, cutWeight: 0, crowded: 0, cut: [], left: 1, right: 1 };
  const wide = box[2] - box[0];
  for (const thing of things) {
    const inside = insideShare(thing.box, box);
    if (inside > 0) {
      held.left = Math.min(held.left, (thing.box[0] - box[0]) / wide);
      held.right = Math.min(held.right, (box[2] - thing.box[2]) / wide);
    }
    if (inside <= 1 - CUT.most) continue;
    if (inside < 1 - CUT.least) {
      held.cut.push(thing);
      held.cutWeight += thing.weight;
      continue;
    }
    held.kept += thing.weight;
    if (isCrowded(thing.box, box)) held.crowded += thing.weight;
  }
  return held;
}

function horizonIn({ skyline }: CropScene, [x0, y0, x1, y1]: Box): number | null {
  const places = skyline.length;
  const inside = skyline.slice(Math.round(x0 * places), Math.max(1, Math.round(x1 * places))).sort();
  const middle = inside[Math.floor(inside.length / 2)];
  if (middle === undefined || middle <= y0 || middle >= y1) return null;
  return (middle - y0) / (y1 - y0);
}

/** 1 where two figures meet, falling to 0 over `reach`. */
function nearness(value: number, wanted: number, reach: number): number {
  return Math.max(0, 1 - Math.abs(value - wanted) / reach);
}

const nearThird = (value: number): number =>
  Math.max(nearness(value, THIRD, THIRDS_REACH), nearness(value, 2 * THIRD, THIRDS_REACH));

function focusScore(focus: readonly [number, number] | null): number {
  if (!focus) return 0;
  const [x, y] = focus;
  const edge = Math.min(x, 1 - x, y, 1 - y);
  if (edge < 0) return -COUNTS.outside;
  const centred = Math.max(Math.abs(x - 0.5), Math.abs(y - 0.5)) < CENTRED ? COUNTS.centred : 0;
  const close = edge < AT_EDGE ? COUNTS.edge : 0;
  const strong = (COUNTS.strongPlace * (nearThird(x) + nearThird(y))) / 2;
  return strong - centred - close;
}

function horizonScore(horizon: number | null): number {
  if (horizon === null) return 0;
  return COUNTS.horizonThird * nearThird(horizon) - COUNTS.halved * nearness(horizon, 0.5, 0.07);
}

const beyond = (share: number, most: number): number => Math.max(0, share - most);

/** What too much or too little of sky and of the nearest plane costs. */
function shareCost(sky: number, foreground: number): number {
  return (
    COUNTS.emptySky * beyond(sky, THIRD) ** 1.5 +
    COUNTS.emptyFront * beyond(foreground, THIRD) ** 1.5 +
    COUNTS.noEntrance * beyond(ENTRANCE, foreground) +
    COUNTS.noAir * beyond(AIR, sky)
  );
}

/** What things at the frame cost: cut, crowded, or so far in that a side lies idle. @param all weight of all things. */
function thingCost({ cutWeight, crowded, cut, left, right }: Held, all: number): number {
  const share = (weight: number): number => (all > 0 ? weight / all : 0);
  return (
    COUNTS.cut * share(cutWeight) +
    COUNTS.cutEach * cut.length +
    COUNTS.crowded * share(crowded) +
    COUNTS.idle * (beyond(left, IDLE) + beyond(right, IDLE))
  );
}

/** @param box inside the picture. */
export function judge(scene: CropScene, box: Box): Judged {
  const [x0, y0, x1, y1] = box;
  const [wide, high] = [x1 - x0, y1 - y0];
  const held = heldIn(scene, box);
  const all = scene.things.reduce((sum, { weight }) => sum + weight, 0);
  const share = (weight: number): number => (all > 0 ? weight / all : 0);
  const inside = scene.patches.filter(
    ({ middle }) => middle[0] > x0 && middle[0] < x1 && middle[1] > y0 && middle[1] < y1,
  );
  const lever = leverOf(inside, (x0 + x1) / 2, wide / 2);
  const sky = shareIn(scene, scene.sky, box);
  const foreground = shareIn(scene, scene.foreground, box);
  const horizon = horizonIn(scene, box);
  const focus: Judged['focus'] = scene.focus && [(scene.focus[0] - x0) / wide, (scene.focus[1] - y0) / high];
  const score =
    COUNTS.kept * share(held.kept) -
    COUNTS.large * Math.log(wide * high) -
    thingCost(held, all) -
    shareCost(sky, foreground) -
    COUNTS.lever * Math.abs(lever) +
    horizonScore(horizon) +
    focusScore(focus);
  return {
    box,
    sky,
    foreground,
    horizon,
    lever,
    heavier: heavierSide(lever),
    kept: share(held.kept),
    cut: held.cut,
    cutShare: share(held.cutWeight),
    crowdedShare: share(held.crowded),
    focus,
    score,
  };
}
