/**
 * How far a photograph can be trusted: grade A, B or C, and every reason.
 *
 * In the flow: photo facts + plane capture -> [grade] -> document, doubt, readings. Pure. Definitions: the measuring
 * rules, section 1.
 */
import type { PhotoFacts } from './photo-facts.ts';
import type { PlaneCapture } from './plane-capture.ts';
import type { CaptureReason } from './reasons.ts';

export type Grade = 'A' | 'B' | 'C';

/** What takes a grade away. */
const UNEVEN = 0.08;
const GLARE = 0.01;
const MIXED_AB = 5;
/** What is said, but takes nothing away. */
const CLIPPED_SKY = 0.005;
const CLIPPED_DARKS = 0.02;
const CROOKED_DEG = 5;
const SIDE_RATIO = 0.03;
const SHORT_SIDE_PX = 1200;

export interface Graded {
  readonly grade: Grade;
  /** In the order of the list of reasons. */
  readonly reasons: readonly CaptureReason[];
}

/** Seen in the pair, beside the photograph itself. */
export interface SeenInPair {
  /** Whether every plane moved alike in a*, b*. */
  readonly cast: boolean;
  /** Whether the reference shows halos between sky and land. */
  readonly toneMapped: boolean;
}

type Facts = PhotoFacts | null;

const LOWERING: readonly ((facts: PhotoFacts) => boolean)[] = [
  ({ unevenness }) => (unevenness ?? 0) > UNEVEN,
  ({ glareShare }) => glareShare > GLARE,
  ({ cardsApart }) => (cardsApart ?? 0) > MIXED_AB,
  ({ clippedCards }) => clippedCards > 0,
];

function gradeOf(facts: Facts): Grade {
  if (!facts || facts.cards === 0) return 'C';
  // A clipped card still stood there: it costs its one grade below, not two.
  const start = facts.cards + facts.clippedCards >= 2 ? 0 : 1;
  const lowered = LOWERING.filter((lowers) => lowers(facts)).length;
  return (['A', 'B', 'C'] as const)[Math.min(2, start + lowered)] as Grade; // within the list
}

function isClipped(facts: Facts, planes: PlaneCapture | null): boolean {
  return (
    (facts?.clippedCards ?? 0) > 0 ||
    (planes?.clippedSky ?? 0) > CLIPPED_SKY ||
    (planes?.clippedDarks ?? 0) > CLIPPED_DARKS
  );
}

/** The one word for every reason, whether it holds. */
function holding(
  facts: Facts,
  planes: PlaneCapture | null,
  seen: SeenInPair,
): Record<CaptureReason, boolean> {
  const plane = Math.max(0, ...(planes?.glare ?? []));
  return {
    'no neutral': !facts || facts.cards === 0,
    clipping: isClipped(facts, planes),
    glare: (facts?.glareShare ?? 0) > GLARE || plane > GLARE,
    'uneven light': (facts?.unevenness ?? 0) > UNEVEN,
    crooked: (facts?.crookedDeg ?? 0) > CROOKED_DEG || (facts?.sideRatioError ?? 0) > SIDE_RATIO,
    'too small or soft': facts !== null && (facts.shortSidePx < SHORT_SIDE_PX || facts.soft === true),
    'mixed light': (facts?.cardsApart ?? 0) > MIXED_AB,
    wet: facts?.wet === true,
    'reference looks tone-mapped': seen.toneMapped,
    'one cast over everything': seen.cast,
  };
}

/** @param facts null where nothing is known about the photograph: grade C. */
export function gradeCapture(facts: Facts, planes: PlaneCapture | null, seen: SeenInPair): Graded {
  const holds = holding(facts, planes, seen);
  // Keys stand in the order of the list of reasons.
  const reasons = (Object.keys(holds) as CaptureReason[]).filter((reason) => holds[reason]);
  return { grade: gradeOf(facts), reasons };
}
