/**
 * What the hand may hold and what the eye may be shown on one screen: the words for it, and the shape of it all.
 *
 * Nothing here is seen by other people (that lives in the live documents). The easel reads `tool`, `planeId`,
 * `markId`, `referenceId`, `paintingId`, `arrange` and `side`; its pictures are seen without colour where the page says
 * `data-grey`, which the workspace sets from `squint`. In the flow: tools-provider -> tools-here -> every part.
 */
import type { OwnHand } from '#app/_together/own-hand.ts';

/**
 * look = move about; outline = planes; mark = marks of every kind; photo = the photo's corners;
 * patch = take patches of colour; guess = guess the value of a spot; air, focus = point at the air colour, at the
 * focus; carry = place planes that are carried over (these three are taken in hand by buttons elsewhere).
 */
export const TOOLS = ['look', 'outline', 'mark', 'photo', 'patch', 'guess', 'air', 'focus', 'carry'] as const;
export type Tool = (typeof TOOLS)[number];

/** Grey round the pictures: mid is L* 55, dark L* 25, light L* 85. */
export const SURROUNDS = ['mid', 'dark', 'light'] as const;
export type Surround = (typeof SURROUNDS)[number];

/** off = as it is; blur = half-closed eyes; grey = value alone; both = both. */
export const SQUINTS = ['off', 'blur', 'grey', 'both'] as const;
export type Squint = (typeof SQUINTS)[number];

/** beside = the two pictures next to each other; over = one over the other with an edge to drag. */
export type Arrange = 'beside' | 'over';

/** What the hand does to an outline: draws or pulls its line, adds to the plane, takes away from it, splits it. */
export const OUTLININGS = ['line', 'add', 'away', 'split'] as const;
export type Outlining = (typeof OUTLININGS)[number];

export interface Tools {
  /** Told of every change of what is looked at: pictures, arrangement, squint, view. */
  hand: OwnHand;
  tool: Tool;
  setTool(tool: Tool): void;
  /** How often a tool was taken: taking the one in hand again brings back the leaf that goes with it. */
  taken: number;
  outlining: Outlining;
  setOutlining(outlining: Outlining): void;
  /** The plane being outlined or pointed at in the ladder; null = none. */
  planeId: string | null;
  setPlaneId(planeId: string | null): void;
  /** The mark opened on picture and in the talk at once; null = none. */
  markId: string | null;
  setMarkId(markId: string | null): void;
  /** Pictures on the easel; null = the board has none of that kind. */
  referenceId: string | null;
  setReferenceId(pictureId: string | null): void;
  paintingId: string | null;
  setPaintingId(pictureId: string | null): void;
  arrange: Arrange;
  setArrange(arrange: Arrange): void;
  /** Which of the two a narrow screen shows. */
  side: 'reference' | 'painting';
  setSide(side: 'reference' | 'painting'): void;
  surround: Surround;
  setSurround(surround: Surround): void;
  squint: Squint;
  setSquint(squint: Squint): void;
  /** Outlines and plane numbers drawn over the pictures. */
  linesShown: boolean;
  setLinesShown(shown: boolean): void;
  /** Pins and strokes drawn over the pictures. */
  marksShown: boolean;
  setMarksShown(shown: boolean): void;
  /** The ladder as a text table. */
  tableShown: boolean;
  setTableShown(shown: boolean): void;
}
