/**
 * What is asked of a worker and what it answers. Types only; everything here survives structured cloning.
 *
 * In the flow: runner → [jobs] → worker → [jobs] → runner.
 */
import type { MeasureDocument } from '../core/contract/measures.ts';
import type { Rearranging } from '../core/contract/rearranging.ts';
import type { PhotoCorrection, Setup } from '../core/contract/setup.ts';
import type { ComparedFacts } from '../core/contract/states.ts';
import type { Box } from '../core/plan/crops/crop-scene.ts';
import type { PlanGround, PlanWish } from '../core/plan/ladder/plan-ground.ts';
import type { PicturePlan } from '../core/plan/plan-picture.ts';
import type { ProblemCode } from '../core/problem.ts';
import type { SheetOrder } from '../core/sheet/content.ts';
import type { StateAlignment } from '../core/states/align/align-states.ts';
import type { TakenIn } from '../imaging/take-in.ts';

/** Where a worker finds a stored picture. */
export interface PictureSource {
  readonly pictureId: string;
  readonly originalPath: string;
  readonly originalHash: string;
  readonly mediaType: 'image/jpeg' | 'image/png' | 'image/webp';
  /** EXIF orientation 1..8. */
  readonly orientation: number;
  /** Long side of the original, pixels. */
  readonly longSidePx: number;
  readonly platePath: string;
  readonly clipMapPath: string;
}

export interface TakeInJob {
  readonly kind: 'take-in';
  readonly path: string;
  /** The sender's name for the file; for sentences only. */
  readonly name: string;
}

export interface MeasureJob {
  readonly kind: 'measure';
  readonly reference: PictureSource | null;
  readonly painting: PictureSource;
  /** The frame of the reference that it is measured in; null = the whole of it. */
  readonly frame: Box | null;
  /** True where `painting` is a reference looked at alone: taken as exact, without a capture grade. */
  readonly ofReference: boolean;
  /** Whether the paint was wet when it was photographed; null where its painter noted nothing. */
  readonly wet: boolean | null;
  /** Outlines of the painting and `focus` in 0..1 of its upright original; those of the reference in 0..1 of the frame. */
  readonly setup: Setup;
}

/** The whole plan of one photograph. */
export interface PlanJob {
  readonly kind: 'plan';
  readonly photograph: PictureSource;
  /** Planes as outlined on the photograph; null = they are proposed. */
  readonly setup: Setup | null;
}

/** The planned picture of one photograph: rearranged, and in the planned light where there are wishes. */
export interface RelightJob {
  readonly kind: 'relight';
  readonly photograph: PictureSource;
  readonly ground: PlanGround;
  readonly steps: Rearranging;
  readonly wish: PlanWish | null;
}

/** A stored state of a painting and how its photo is put right. */
export interface StateSource {
  readonly picture: PictureSource;
  readonly photo: PhotoCorrection;
}

/** A later state laid on an earlier one. */
export interface CompareJob {
  readonly kind: 'compare';
  readonly earlier: StateSource;
  readonly later: StateSource;
}

/** How they lie, and pictures to look at: JPEG, JPEG and PNG; null where they do not belong together. */
export interface Compared {
  readonly alignment: StateAlignment;
  readonly pictures:
    | (NonNullable<ComparedFacts['shown']> & Readonly<Record<'before' | 'after' | 'change', Uint8Array>>)
    | null;
}

/** A document, and which planes were left out of it, each with a whole sentence. */
export interface Measured {
  readonly document: MeasureDocument;
  readonly leftOut: readonly string[];
}

export type Job = TakeInJob | MeasureJob | PlanJob | CompareJob | RelightJob;
/** A sheet has a thread of its own; see `sheet-worker.ts`. */
export interface SheetJob {
  readonly kind: 'sheet';
  readonly order: SheetOrder;
}

/** Has the sheets' thread read its typeface and lay out and draw a page of nothing, before anybody waits for one. */
export interface WarmJob {
  readonly kind: 'warm';
}

export type AnyJob = Job | SheetJob | WarmJob;
export type Answer<J extends AnyJob> = J extends SheetJob | RelightJob | WarmJob
  ? Uint8Array
  : J extends TakeInJob
    ? TakenIn
    : J extends PlanJob
      ? PicturePlan
      : J extends CompareJob
        ? Compared
        : Measured;

/** What comes back over the port. */
export type Reply =
  | { readonly ok: true; readonly answer: TakenIn | Measured | PicturePlan | Compared | Uint8Array }
  | { readonly ok: false; readonly code: ProblemCode | null; readonly message: string };
