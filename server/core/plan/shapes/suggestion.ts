/**
 * The shape of a suggestion about the shapes of a picture: something to look at, and where; never a fault.
 *
 * In the flow: shape scene -> rules -> [suggestion] -> plan. Types, and what all rules have in common. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';

/** K1 to K6 of the trade's list; K7 (one level) and K8 (equal divisions) are of the same family. */
export type SuggestionId = `K${1 | 2 | 3 | 4 | 5 | 6 | 7 | 8}`;

export type SuggestionKind =
  | 'horizon-halves'
  | 'focus-centred'
  | 'focus-at-edge'
  | 'contours-touch'
  | 'straight-ridge'
  | 'repeated-ridge'
  | 'stacked-peaks'
  | 'lopsided'
  | 'two-rivals'
  | 'one-level'
  | 'equal-divisions';

export interface Suggestion {
  readonly id: SuggestionId;
  readonly kind: SuggestionKind;
  /** Planes it is about, far to near; empty = the whole picture. */
  readonly planes: readonly string[];
  /** 1 (just so) to 3 (plainly so): how far beyond its threshold. */
  readonly severity: number;
  /** At most 30 words. */
  readonly sentence: string;
  readonly why: string;
  /** Author and year, or "common practice, no source". */
  readonly source: string;
  /** Why it is not to be shown, or null. */
  readonly muted: string | null;
  /** The place on the picture: a line, or single points, in 0..1. */
  readonly at: readonly FractionPoint[];
}

/** What a rule finds; muting comes after. */
export type Seen = Omit<Suggestion, 'muted'>;

/** @param share 0 at the threshold, 1 where it could not be plainer. */
export function severityOf(share: number): number {
  return 1 + 2 * Math.min(1, Math.max(0, share));
}
