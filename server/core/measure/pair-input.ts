/**
 * What measuring a pair needs: two plates and a setup. Types only.
 *
 * `measurePair(input: PairInput): MeasureDocument` in `measure-pair.ts` takes it.
 */
import type { Setup } from '../contract/setup.ts';
import type { MeasurablePlate } from '../image/raster.ts';

export interface PairInput {
  /** Null when the board has no reference (painted from life). */
  readonly reference: MeasurablePlate | null;
  /** The corrected (squared) painting; outlines of `setup.planes[].painting` are fractions of it. */
  readonly painting: MeasurablePlate;
  readonly setup: Setup;
}
