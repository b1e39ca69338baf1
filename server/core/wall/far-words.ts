/**
 * How a painting says "far", in words: the farthest plane that is not the sky, part by part, against the reference or the
 * plan; against its own nearest plane where there is neither.
 *
 * No figure and no rank: words of order at grade C, and no word on colour there, as everywhere. In the flow: measures ->
 * [far-words] -> wall. Pure.
 */
import type { MeasureDocument, PlaneResult, Recession } from '../contract/measures.ts';
import { speaksOfAmounts } from '../gaps/gap-words.ts';
import { stepsInWords } from '../look/nine-steps.ts';
import { Noise } from '../readings/noise.ts';
import { type Extent, extentOf } from '../readings/recession-words.ts';

export interface Far {
  /** Name of the plane that is spoken of. */
  plane: string;
  /** One for each part that could be compared; empty where none could. */
  sentences: string[];
}

type Grade = MeasureDocument['capture']['grade'];
type Target = MeasureDocument['target'];
type Part = 'darks' | 'chroma' | 'air';

const TARGET: Record<Target, { in: string; way: string }> = {
  reference: { in: 'in the reference', way: 'the reference’s way' },
  plan: { in: 'planned', way: 'the planned way' },
  none: { in: 'meant', way: 'the way' },
};

/** What each part does when a plane goes back. */
const DOES: Record<
  Part,
  Record<Exclude<Extent, 'a quarter' | 'half' | 'three quarters'> | 'part', string>
> = {
  darks: {
    'as far': 'Its darks lift as far as %in.',
    farther: 'Its darks lift farther than %in.',
    'less far': 'Its darks lift less far than %in.',
    forward: 'Its darks are heavier than those in front of it.',
    hardly: 'Its darks hardly lift.',
    part: 'Its darks lift about %part of %way.',
  },
  chroma: {
    'as far': 'Its colour greys as far as %in.',
    farther: 'Its colour greys farther than %in.',
    'less far': 'Its colour greys less far than %in.',
    forward: 'Its colour grows stronger instead of greying.',
    hardly: 'Its colour hardly greys.',
    part: 'Its colour greys about %part of %way.',
  },
  air: {
    'as far': 'It nears the colour of the air as far as %in.',
    farther: 'It nears the colour of the air farther than %in.',
    'less far': 'It nears the colour of the air less far than %in.',
    forward: 'It leaves the colour of the air instead of nearing it.',
    hardly: 'It hardly nears the colour of the air.',
    part: 'It goes about %part of %way toward the colour of the air.',
  },
};

/**
 * Null where nothing but the sky and the nearest plane was measured.
 *
 * @param skies Names of the planes that are sky: they are the air itself.
 */
export function farWords(
  { planes, target, capture }: MeasureDocument,
  skies: ReadonlySet<string>,
): Far | null {
  const { grade } = capture;
  const near = planes.findLast(({ painting }) => painting.mid !== null);
  const far =
    target === 'none' ? ownFar(planes, near, skies) : planes.find(({ recession }) => anyOf(recession));
  if (!far || !near) return null;
  const sentences = target === 'none' ? againstNearest(far, near, grade) : againstTarget(far, target, grade);
  return { plane: far.name, sentences };
}

function anyOf(recession: Recession | null): boolean {
  return recession !== null && (['darks', 'chroma', 'air'] as const).some((part) => recession[part] !== null);
}

/** Painted from life there is no recession to go by. */
function ownFar(
  planes: readonly PlaneResult[],
  near: PlaneResult | undefined,
  skies: ReadonlySet<string>,
): PlaneResult | undefined {
  return planes.find((plane) => plane !== near && plane.painting.dark !== null && !skies.has(plane.name));
}

function againstTarget({ recession, doubt }: PlaneResult, target: Target, grade: Grade): string[] {
  const parts: readonly Part[] = speaksOfAmounts(grade) ? ['darks', 'chroma', 'air'] : ['darks'];
  return parts.flatMap((part) => {
    const figure = recession?.[part] ?? null;
    if (figure === null) return [];
    const extent = extentOf({ figure, interval: doubt?.recession[part] ?? null }, grade);
    return [filled(part, extent, target)];
  });
}

function filled(part: Part, extent: Extent, target: Target): string {
  const words = DOES[part];
  const isPart = extent === 'a quarter' || extent === 'half' || extent === 'three quarters';
  return (isPart ? words.part : words[extent])
    .replace('%in', TARGET[target].in)
    .replace('%way', TARGET[target].way)
    .replace('%part', extent);
}

/** Differences smaller than this are none: L*, and units of C*ab. */
const SAME_L = 2;
const SAME_AB = 3;
/** Deviations that a difference must exceed. */
const SURE = 2;

function againstNearest(far: PlaneResult, near: PlaneResult, grade: Grade): string[] {
  const noise = new Noise(grade ?? 'C');
  const [back, front] = [far.painting, near.painting];
  const words: string[] = [];
  if (back.dark !== null && front.dark !== null) {
    words.push(darksWords(back.dark - front.dark, Math.max(SAME_L, SURE * noise.relationL), grade));
  }
  if (speaksOfAmounts(grade) && back.strong !== null && front.strong !== null) {
    const apart = back.strong - front.strong;
    const least = Math.max(SAME_AB, SURE * noise.relationAb);
    const how = Math.abs(apart) < least ? 'about as strong as' : apart < 0 ? 'greyer than' : 'stronger than';
    words.push(`Its colour is ${how} the nearest plane’s.`);
  }
  return words;
}

function darksWords(apart: number, least: number, grade: Grade): string {
  if (Math.abs(apart) < least) return 'Its darks are about as dark as the nearest plane’s.';
  const how = apart > 0 ? 'lighter' : 'darker';
  if (!speaksOfAmounts(grade)) return `Its darks are ${how} than the nearest plane’s.`;
  const amount = stepsInWords(apart, grade === 'A' ? 0.25 : 0.5);
  return `Its darks are ${amount} ${how} than the nearest plane’s.`;
}
