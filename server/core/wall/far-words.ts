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
import { say } from '../say/say.ts';

export interface Far {
  /** Name of the plane that is spoken of. */
  plane: string;
  /** One for each part that could be compared; empty where none could. */
  sentences: string[];
}

type Grade = MeasureDocument['capture']['grade'];
type Target = MeasureDocument['target'];
type Part = 'darks' | 'chroma' | 'air';

const TARGET: Record<Exclude<Target, 'none'>, { as: string; way: string }> = {
  reference: { as: say`in the reference`, way: say`the reference’s way` },
  plan: { as: say`planned`, way: say`the planned way` },
};

type PartWay = 'a quarter' | 'half' | 'three quarters';

/** How much of a way. */
const PART_OF: Record<PartWay, (way: string) => string> = {
  'a quarter': (way) => say`a quarter of ${way}`,
  half: (way) => say`half of ${way}`,
  'three quarters': (way) => say`three quarters of ${way}`,
};

/** What each part does when a plane goes back. @param as As what. @param stretch Of the target's way. */
const DOES: Record<
  Part,
  {
    as: Record<'as far' | 'farther' | 'less far', (as: string) => string>;
    alone: Record<'forward' | 'hardly', string>;
    part: (stretch: string) => string;
  }
> = {
  darks: {
    as: {
      'as far': (as) => say`Its darks lift as far as ${as}.`,
      farther: (as) => say`Its darks lift farther than ${as}.`,
      'less far': (as) => say`Its darks lift less far than ${as}.`,
    },
    alone: {
      forward: say`Its darks are heavier than those in front of it.`,
      hardly: say`Its darks hardly lift.`,
    },
    part: (stretch) => say`Its darks lift about ${stretch}.`,
  },
  chroma: {
    as: {
      'as far': (as) => say`Its colour greys as far as ${as}.`,
      farther: (as) => say`Its colour greys farther than ${as}.`,
      'less far': (as) => say`Its colour greys less far than ${as}.`,
    },
    alone: {
      forward: say`Its colour grows stronger instead of greying.`,
      hardly: say`Its colour hardly greys.`,
    },
    part: (stretch) => say`Its colour greys about ${stretch}.`,
  },
  air: {
    as: {
      'as far': (as) => say`It nears the colour of the air as far as ${as}.`,
      farther: (as) => say`It nears the colour of the air farther than ${as}.`,
      'less far': (as) => say`It nears the colour of the air less far than ${as}.`,
    },
    alone: {
      forward: say`It leaves the colour of the air instead of nearing it.`,
      hardly: say`It hardly nears the colour of the air.`,
    },
    part: (stretch) => say`It goes about ${stretch} toward the colour of the air.`,
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

function againstTarget(
  { recession, doubt }: PlaneResult,
  target: Exclude<Target, 'none'>,
  grade: Grade,
): string[] {
  const parts: readonly Part[] = speaksOfAmounts(grade) ? ['darks', 'chroma', 'air'] : ['darks'];
  return parts.flatMap((part) => {
    const figure = recession?.[part] ?? null;
    if (figure === null) return [];
    const extent = extentOf({ figure, interval: doubt?.recession[part] ?? null }, grade);
    return [filled(part, extent, target)];
  });
}

function filled(part: Part, extent: Extent, target: Exclude<Target, 'none'>): string {
  const words = DOES[part];
  const { as, way } = TARGET[target];
  switch (extent) {
    case 'a quarter':
    case 'half':
    case 'three quarters':
      return words.part(PART_OF[extent](way));
    case 'forward':
    case 'hardly':
      return words.alone[extent];
    default:
      return words.as[extent](as);
  }
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
    words.push(colourWords(apart, least));
  }
  return words;
}

function colourWords(apart: number, least: number): string {
  if (Math.abs(apart) < least) return say`Its colour is about as strong as the nearest plane’s.`;
  return apart < 0
    ? say`Its colour is greyer than the nearest plane’s.`
    : say`Its colour is stronger than the nearest plane’s.`;
}

function darksWords(apart: number, least: number, grade: Grade): string {
  if (Math.abs(apart) < least) return say`Its darks are about as dark as the nearest plane’s.`;
  if (!speaksOfAmounts(grade)) {
    return apart > 0
      ? say`Its darks are lighter than the nearest plane’s.`
      : say`Its darks are darker than the nearest plane’s.`;
  }
  const amount = stepsInWords(apart, grade === 'A' ? 0.25 : 0.5);
  return apart > 0
    ? say`Its darks are ${amount} lighter than the nearest plane’s.`
    : say`Its darks are ${amount} darker than the nearest plane’s.`;
}
