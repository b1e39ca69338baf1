/**
 * Where the ladders of several paintings run in one chart, and how each line is drawn so that it needs no hue.
 *
 * In the flow: measures of each painting -> [ladder-lines] -> chart. x runs 0 (far) to 1 (near), y 0 (white) to 1
 * (black), as on the ladder. Pure.
 */
import type { MeasureDocument, PlaneResult } from '#server/core/contract/measures.ts';
import { heightOfLightness } from '#server/core/ladder/geometry.ts';

export const LADDER_PARTS = ['light', 'mid', 'dark'] as const;
export type LadderPart = (typeof LADDER_PARTS)[number];

export interface Point {
  x: number;
  y: number;
}

export interface LadderLine {
  letter: string;
  /** Runs of neighbouring planes; a plane that was not measured breaks the line. */
  runs: Point[][];
  /** Where its letter stands beside the near end of its line, shares of the chart; null where nothing was measured. */
  letterX: number | null;
  letterY: number | null;
}

export interface Ladders {
  /** Names of the planes, far to near. */
  planes: string[];
  lines: LadderLine[];
  /** What all are held against; empty where there is nothing. */
  target: Point[][];
}

interface Measured {
  letter: string;
  document: MeasureDocument;
}

/** Letters nearer to one another than this would cover each other, share of the height. */
const LETTER_APART = 0.075;

export function laddersOf(measured: readonly Measured[], part: LadderPart): Ladders {
  const planes = measured
    .map(({ document }) => document.planes.map(({ name }) => name))
    .reduce((longest, names) => (names.length > longest.length ? names : longest), []);
  const at = (document: MeasureDocument) =>
    planes.map((name) => document.planes.find((plane) => plane.name === name));
  const lines = measured.map(({ letter, document }) => {
    const runs = runsOf(at(document).map((plane) => plane?.painting[part] ?? null));
    const end = runs.at(-1)?.at(-1);
    return { letter, runs, letterX: end?.x ?? null, letterY: end?.y ?? null };
  });
  const whole = measured.find(({ document }) => document.planes.length === planes.length)?.document;
  const target = whole
    ? runsOf(at(whole).map((plane) => (plane ? targetOf(plane, whole.target, part) : null)))
    : [];
  return { planes, lines: lettersApart(lines), target };
}

/** L* of what a plane is held against; against a plan the painting's own without its gap. */
export function targetOf(
  { reference, painting, gap }: PlaneResult,
  target: MeasureDocument['target'],
  part: LadderPart,
): number | null {
  if (target === 'reference') return reference?.[part] ?? null;
  const [own, apart] = [painting[part], gap?.[part] ?? null];
  return target === 'plan' && own !== null && apart !== null ? own - apart : null;
}

/** @param lightness L* by plane, far to near. */
function runsOf(lightness: readonly (number | null)[]): Point[][] {
  const runs: Point[][] = [[]];
  lightness.forEach((each, index) => {
    if (each === null) runs.push([]);
    else runs.at(-1)?.push({ x: (index + 0.5) / lightness.length, y: heightOfLightness(each) });
  });
  return runs.filter((run) => run.length > 0);
}

/** Letters moved down, and up again where they ran out of the chart, until none covers another. */
function lettersApart(lines: readonly LadderLine[]): LadderLine[] {
  const placed = lines.filter(({ letterY }) => letterY !== null).sort(byLetterY);
  const places = placed.map(({ letterY }) => letterY ?? 0);
  for (let at = 1; at < places.length; at++) {
    places[at] = Math.max(places[at] as number, (places[at - 1] as number) + LETTER_APART);
  }
  for (let at = places.length - 1; at >= 0; at--) {
    const below = at === places.length - 1 ? 1 : (places[at + 1] as number) - LETTER_APART;
    places[at] = Math.min(places[at] as number, below);
  }
  const yOf = new Map(placed.map(({ letter }, at) => [letter, places[at] as number]));
  return lines.map((line) => ({ ...line, letterY: yOf.get(line.letter) ?? null }));
}

function byLetterY(one: LadderLine, other: LadderLine): number {
  return (one.letterY ?? 0) - (other.letterY ?? 0) || (one.letter < other.letter ? -1 : 1);
}

export interface LineStyle {
  /** SVG dash array in CSS pixels; empty = unbroken. */
  dashes: string;
  tone: 'dark' | 'light';
}

const DASHES = ['', '9 5', '2 4', '14 4 2 4', '20 6', '5 3 1 3 1 3'];

/** @param index Place on the wall, from 0: dark and light by turns, six patterns of each. */
export function lineStyle(index: number): LineStyle {
  return {
    dashes: DASHES[Math.floor(index / 2) % DASHES.length] ?? '',
    tone: index % 2 === 0 ? 'dark' : 'light',
  };
}
