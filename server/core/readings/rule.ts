/**
 * The shape of a reading: what each rule declares about itself and what it finds.
 *
 * In the flow: scene -> rules -> findings -> readings, cards, priorities. Types only.
 */
import type { CardDirection, CardPart, ReadingForm, ReadingId } from '../contract/critique.ts';
import type { Condition } from '../contract/setup.ts';
import type { Scene } from './scene.ts';

/**
 * 1 capture; 2 V1-V3; 3 V4-V7 and C2; 4 V10-V13, C1, C4, C5; 5 composition (K1-K3, K6);
 * 6 D1-D3, C3, C6-C8; 7 V8, V9 (and K4, K5).
 */
export type RankGroup = 1 | 2 | 3 | 4 | 5 | 6 | 7;

/** One thing to do, before it is put into words. */
export interface Lever {
  /** The plane to work on; null = the whole picture or the photo. */
  plane: string | null;
  part: CardPart;
  direction: CardDirection;
  /** How far, in L*; null where the amount is not a matter of lightness. */
  amountL: number | null;
}

export interface Finding {
  /** Planes it is about, far to near; empty = the whole picture. */
  planes: string[];
  /** Size of the departure and what it is compared with, in one unit; both above 0. */
  difference: number;
  threshold: number;
  form: ReadingForm;
  /** At most 30 words; no amounts at grade C. */
  sentence: string;
  /** Planes whose target figures it rests on. */
  restsOn: string[];
  /** Conditions of the rule that do not mute this finding, because it points the other way. */
  immuneTo?: Condition[];
  /** What to do about it; the first leads. Empty for questions. */
  levers: Lever[];
}

export interface Rule {
  id: ReadingId;
  /** What the trade calls the fault. */
  name: string;
  group: RankGroup;
  /** V4, V7, C1 and C2 are one family: how much of the target's step back the paint took. */
  family: 'recession' | null;
  /** Figures it looks at, in the names of the measure document or of the picture facts. */
  inputs: string;
  /** The thresholds with their reason. */
  threshold: string;
  /** Where its deviation comes from. */
  noise: string;
  /** Conditions that mute it, each with the reason given to the painter. */
  mutedBy: Partial<Record<Condition, string>>;
  /** True where it speaks of colour, which is withheld at capture grade C. */
  colour: boolean;
  /** One sentence. */
  why: string;
  /** Author and year, or "common practice, no source". */
  source: string;
  find(scene: Scene): Finding[];
}
