/**
 * K5: weight that lies on one side; K6: two places that compete; K7: things that stand on one level.
 *
 * In the flow: weighed patches -> [pull] -> suggestions. Sources: Poore 1903, ch. III (steelyard), Appendix (equal
 * interests); Harrison 1909, p. 89 (two pictures on one canvas); one level: common practice, no source. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import { placeInWords } from '../../readings/words.ts';
import { say } from '../../say/say.ts';
import type { WeighedPatch } from '../weight/balance.ts';
import type { ShapeScene } from './shape-scene.ts';
import { type Seen, severityOf } from './suggestion.ts';

/** Lever from which a picture is lopsided: about 1.6 deviations of 32 real landscapes, whose levers spread by 0.107. */
const LOPSIDED = 0.17;
/** How far out, from the middle, a small thing answers the heavier side, and how far it must stand out, L*. */
const FAR_OUT = 0.6;
const ANSWERS_L = 25;
/** Share of the picture that such a small thing may take, and must. */
const SMALL = { least: 0.0015, most: 0.02 };

/** Share of the picture that a thing takes, and how far it stands out, L*: own estimates. */
const THING = { least: 0.0008, most: 0.06, contrast: 10 };
/** Share of the width within which things pull together. */
const TOGETHER = 0.08;
/** The second place beside the first, the third beside the second, their distance in widths, the first's share. */
const RIVAL = { second: 0.85, third: 0.6, apart: 0.35, share: 0.25 };

/** Share of the picture's height between the feet of things on one level; greatest size over least; least apart. */
const LEVEL = { feet: 0.012, sizes: 1.6, apart: 0.06, spread: 0.3, things: 3 };

/** A counter-spot: small, far out on the lighter side, and plain to see. */
function isAnswered(patches: readonly WeighedPatch[], lever: number): boolean {
  return patches.some(({ area, contrast, middle }) => {
    const x = (2 * middle[0] - 1) * -Math.sign(lever);
    return x >= FAR_OUT && area >= SMALL.least && area <= SMALL.most && contrast >= ANSWERS_L;
  });
}

/** K5. */
export function lopsidedWeight({ weighed }: ShapeScene): Seen[] {
  const { lever } = weighed.balance;
  if (Math.abs(lever) <= LOPSIDED || isAnswered(weighed.patches, lever)) return [];
  const heaviest = weighed.patches
    .filter(({ middle }) => Math.sign(middle[0] - 0.5) === Math.sign(lever))
    .toSorted((one, two) => two.weight - one.weight)[0];
  return [
    {
      id: 'K5',
      kind: 'lopsided',
      planes: [],
      severity: severityOf(Math.abs(lever) / LOPSIDED - 1),
      sentence:
        lever < 0
          ? say`Look at the balance: most of the pull is on the left. A small accent on the right would answer it.`
          : say`Look at the balance: most of the pull is on the right. A small accent on the left would answer it.`,
      why: say`A large weight near the middle is answered by a small one far out, as on a steelyard.`,
      source: say`Poore 1903, ch. III`,
      at: heaviest ? [[heaviest.middle[0], heaviest.middle[1]]] : [],
    },
  ];
}

/** Patches that read as things: small, and standing out of their ground. */
export function thingsOf(patches: readonly WeighedPatch[]): WeighedPatch[] {
  return patches.filter(
    ({ area, contrast }) => area >= THING.least && area <= THING.most && contrast >= THING.contrast,
  );
}

export interface Pull {
  readonly at: FractionPoint;
  /** Weight of the things that pull together there. */
  readonly weight: number;
}

/** Places that pull, the strongest first: each thing with what lies close to it. @param side height / width. */
export function pullsOf(things: readonly WeighedPatch[], side: number): Pull[] {
  const left = things.toSorted((one, two) => two.weight - one.weight);
  const pulls: Pull[] = [];
  while (left.length > 0) {
    const [first] = left as [WeighedPatch];
    const close = left.filter(
      ({ middle }) =>
        Math.hypot(middle[0] - first.middle[0], (middle[1] - first.middle[1]) * side) <= TOGETHER,
    );
    const weight = close.reduce((sum, thing) => sum + thing.weight, 0);
    const mean = (axis: 0 | 1): number =>
      close.reduce((sum, thing) => sum + thing.weight * thing.middle[axis], 0) / weight;
    pulls.push({ at: [mean(0), mean(1)], weight });
    for (const thing of close) left.splice(left.indexOf(thing), 1);
  }
  return pulls.sort((one, two) => two.weight - one.weight);
}

/** K6. */
export function twoRivals(scene: ShapeScene): Seen[] {
  const side = scene.rows / scene.columns;
  const pulls = pullsOf(thingsOf(scene.weighed.patches), side);
  const [first, second, third] = pulls;
  if (!first || !second) return [];
  const all = pulls.reduce((sum, { weight }) => sum + weight, 0);
  const apart = Math.hypot(first.at[0] - second.at[0], (first.at[1] - second.at[1]) * side);
  const ratio = second.weight / first.weight;
  const spread = third !== undefined && third.weight > RIVAL.third * second.weight;
  if (ratio < RIVAL.second || apart < RIVAL.apart || spread || first.weight < RIVAL.share * all) return [];
  return [
    {
      id: 'K6',
      kind: 'two-rivals',
      planes: [],
      severity: severityOf((ratio - RIVAL.second) / (1 - RIVAL.second)),
      sentence: say`Look at the two places that compete: ${placeInWords(first.at)} and ${placeInWords(second.at)}. Choose one, and calm the other.`,
      why: say`Two equal attractions make two pictures on one canvas.`,
      source: say`Harrison 1909, p. 89; Poore 1903, Appendix`,
      at: [first.at, second.at],
    },
  ];
}

/** Things like the first whose feet stand on its level, apart from one another. */
function onLevelWith(first: WeighedPatch, things: readonly WeighedPatch[]): WeighedPatch[] {
  const alike = (one: number, two: number): boolean => Math.max(one / two, two / one) <= LEVEL.sizes;
  const tall = ({ box }: WeighedPatch): number => box[3] - box[1];
  return things
    .filter(
      (thing) =>
        Math.abs(thing.box[3] - first.box[3]) <= LEVEL.feet &&
        alike(tall(thing), tall(first)) &&
        alike(thing.area, first.area),
    )
    .sort((one, two) => one.middle[0] - two.middle[0])
    .filter((thing, at, all) => at === 0 || thing.middle[0] - (all[at - 1]?.middle[0] ?? 0) >= LEVEL.apart);
}

/** K7: at least three things of one size that stand on one level across the picture. */
export function oneLevel({ weighed }: ShapeScene): Seen[] {
  const things = thingsOf(weighed.patches).filter(({ box }) => box[3] < 0.98);
  const most = things
    .map((thing) => onLevelWith(thing, things))
    .reduce<WeighedPatch[]>((best, found) => (found.length > best.length ? found : best), []);
  const [first, last] = [most[0], most.at(-1)];
  if (!first || !last || most.length < LEVEL.things) return [];
  if (last.middle[0] - first.middle[0] < LEVEL.spread) return [];
  return [
    {
      id: 'K7',
      kind: 'one-level',
      planes: [],
      severity: severityOf((most.length - LEVEL.things) / LEVEL.things),
      sentence: say`Look at these things: they stand on one level and are of one size. Try moving one nearer or farther.`,
      why: say`Equal things on one level make a row; standing at different heights they make depth.`,
      source: say`common practice, no source`,
      at: most.map(({ middle, box }): FractionPoint => [middle[0], box[3]]),
    },
  ];
}
