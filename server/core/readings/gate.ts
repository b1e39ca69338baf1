/**
 * The gate every reading passes: shown only when the difference exceeds the threshold and twice its deviation.
 *
 * In the flow: a rule measures a trait in the painting and in the target -> [gate] -> finding, question, check or
 * silence. Pure. Source: measure.md section 5.
 */
import type { ReadingForm } from '../contract/critique.ts';

/** Deviations a difference must exceed. */
const SIGMAS = 2;

/** Whether a difference is large enough to be spoken of. All in one unit. */
export function shows(difference: number, threshold: number, sigma: number): boolean {
  return difference > Math.max(threshold, SIGMAS * sigma);
}

export interface Trait {
  /** How strongly the painting shows the trait; positive = shows it. */
  painting: number;
  /** The same in the target; null = nothing to compare with. */
  target: number | null;
  threshold: number;
  /** Deviation of the painting's figure. */
  sigma: number;
  /** How far the painting must stand from the target besides, in the same unit; 0 unless told. */
  apart?: number;
}

/**
 * What a trait of the painting comes to. The target shows the same: a question. No target: a check. Else a finding,
 * if the painting also stands apart from the target by more than `apart` and the noise; otherwise null.
 */
export function formOf({ painting, target, threshold, sigma, apart = 0 }: Trait): ReadingForm | null {
  if (!shows(painting, threshold, sigma)) return null;
  if (target === null) return 'check';
  if (target > threshold) return 'question';
  return shows(painting - target, apart, sigma) ? 'finding' : null;
}
