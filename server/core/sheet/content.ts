/**
 * What stands on a sheet to take away: everything decided, nothing drawn yet.
 *
 * In the flow: access/sheet -> [content] -> worker -> server/sheet. Types only; everything here survives structured
 * cloning. Places on the painting are 0..1 of the squared painting.
 */
import type { FractionPoint, PhotoCorrection } from '../contract/setup.ts';
import type { LadderGeometry } from '../ladder/geometry.ts';
import type { ValueNumber } from '../look/value-numbers.ts';

export const PAPERS = ['a4', 'letter'] as const;
export type Paper = (typeof PAPERS)[number];
export const SHEET_KINDS = ['pdf', 'png'] as const;
export type SheetKind = (typeof SHEET_KINDS)[number];

/** A stored picture: the plate's file, and how the photo of a painting is put right. */
export interface SheetPicture {
  platePath: string;
  photo: PhotoCorrection | null;
  /** Only this part of it: x0, y0, x1, y1 in 0..1 of the upright picture; null = whole. */
  box: readonly [number, number, number, number] | null;
}

/** A picture, or a sentence that says why it is not there. */
export type PictureOrWhy = { picture: SheetPicture; caption: string } | { picture: null; why: string };

/** A remark with its number, and what is drawn of it. */
export interface SheetRemark {
  /** Null where it is drawn without words. */
  number: number | null;
  at: FractionPoint;
  kind: 'pin' | 'stroke' | 'arrow' | 'outline' | 'text' | 'patch';
  points: readonly (readonly number[])[];
  who: string;
  words: string;
  /** What became of it; empty while it is open. */
  state: string;
}

export interface SheetCard {
  /** A, B or C. */
  letter: string;
  /** Where on the painting its plane lies; null = the whole picture or the photo. */
  at: FractionPoint | null;
  headline: string;
  how: string;
  check: string;
  /** True where the health line belongs beside it. */
  healthLine: boolean;
  /** What the painter said to it; empty while nothing was said. */
  answer: string;
}

export interface SheetLadder {
  geometry: LadderGeometry;
  /** Name, and how it stands to the target in words, far to near. */
  planes: { name: string; words: string }[];
  /** What is held against what. */
  against: string;
  /** Names of the two kinds of bar; null = there is one kind alone. */
  key: { target: string; painting: string } | null;
}

/** One card, remark, figure or sentence missing is said in words of its own, never left open. */
export interface CritiqueSheet {
  about: 'critique';
  title: string;
  byline: string;
  board: string;
  /** Upright width / height of the squared painting as it stands on the page is read off the picture itself. */
  painting: SheetPicture;
  reference: PictureOrWhy;
  intention: string;
  conditions: string;
  capture: { headline: string; sentence: string };
  works: string;
  cards: SheetCard[];
  /** Said where there is no card. */
  noCards: string;
  remarks: SheetRemark[];
  /** Said under the numbered remarks: what is not on the page. */
  moreRemarks: string;
  ladder: SheetLadder | null;
  /** Said where there is no ladder. */
  noLadder: string;
  /** Foot of the page: where and when it was made. */
  foot: string;
}

/** A frame that was kept of the photograph, or the whole of it, with its value plan. */
export interface SheetFrame {
  name: string;
  /** Format and canvas, and how many values, in words. */
  words: string;
  picture: SheetPicture;
  values: {
    count: ValueNumber;
    /** L* at which one value ends and the next begins, dark to light; null = where they begin by themselves. */
    cuts: readonly number[] | null;
  };
}

export interface PlanSheet {
  about: 'plan';
  title: string;
  byline: string;
  board: string;
  /** Empty where the photograph may not be taken along. */
  frames: SheetFrame[];
  /** Said under the frames: what is not there, and whose photograph it is. */
  framesNote: string;
  ladder: SheetLadder | null;
  noLadder: string;
  /** The air colour in words. */
  air: string;
  /** From plane to plane, far to near, in words. */
  steps: string[];
  foot: string;
}

export type SheetContent = CritiqueSheet | PlanSheet;

export interface SheetOrder {
  content: SheetContent;
  paper: Paper;
  as: SheetKind;
}
