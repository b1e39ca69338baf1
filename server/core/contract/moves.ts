/**
 * What became of advice, and what changed from one state of a painting to the next: as it travels to screens.
 *
 * In the flow: core/states/moves fills these -> own-time and states carry them. Types only.
 */
import type { GapKey } from './measures.ts';

/**
 * `none`: no change beyond the doubt; `small`: nor could there be one, the doubt is larger than what was advised;
 * `that-way`: it went there, and how far cannot be told.
 */
export type MoveVerdict = 'all' | 'half' | 'little' | 'past' | 'that-way' | 'other-way' | 'none' | 'small';

/** One piece of advice and what became of it. */
export interface ActionMove {
  /** As the card said it. */
  words: string;
  verdict: MoveVerdict;
  /** The figure behind it; null where the photo's grade or the whole picture tells. */
  key: GapKey | null;
  from: number;
  /** What it moved by, in the light of the earlier photo. */
  by: number;
  /** What was advised, signed; null where only the way was said. */
  advised: number | null;
  /** Twice the deviation of `by`. */
  doubt: number;
}

/** Figures whose change is told, in the order in which a painter wants to hear of them. */
export const TOLD = ['mid', 'dark', 'light', 'strong', 'warmCool', 'airDistance', 'detail'] as const;
type ToldKey = (typeof TOLD)[number] & GapKey;

/** One figure of one plane that changed beyond the doubt of both photographs. */
export interface StateChange {
  plane: string;
  key: ToldKey;
  from: number;
  by: number;
}
