/**
 * What is asked of a worker and what it answers. Types only; everything here survives structured cloning.
 *
 * In the flow: runner → [jobs] → worker → [jobs] → runner.
 */
import type { MeasureDocument } from '../core/contract/measures.ts';
import type { Setup } from '../core/contract/setup.ts';
import type { ProblemCode } from '../core/problem.ts';
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
  /** True where `painting` is a reference looked at alone: taken as exact, without a capture grade. */
  readonly ofReference: boolean;
  /** Whether the paint was wet when it was photographed; null where its painter noted nothing. */
  readonly wet: boolean | null;
  /** Outlines of the painting and `focus` in 0..1 of its upright original. */
  readonly setup: Setup;
}

/** A document, and which planes were left out of it, each with a whole sentence. */
export interface Measured {
  readonly document: MeasureDocument;
  readonly leftOut: readonly string[];
}

export type Job = TakeInJob | MeasureJob;
export type Answer<J extends Job> = J extends TakeInJob ? TakenIn : Measured;

/** What comes back over the port. */
export type Reply =
  | { readonly ok: true; readonly answer: TakenIn | Measured }
  | { readonly ok: false; readonly code: ProblemCode | null; readonly message: string };
