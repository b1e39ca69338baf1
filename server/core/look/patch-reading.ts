/**
 * A sample of colour in figures, each no finer than the photo it comes from allows.
 *
 * In the flow: sample + trust -> [patch-reading] -> talk. At grade C there are none. Pure. Source: CIE 15 for C*ab and
 * hab; the deviations are those of `readings/noise.ts`; a hue's doubt is the angle that the doubt of a*, b* spans.
 */
import { chromaOf, hueDegOf } from '../colour/lab.ts';
import type { LabColour } from '../contract/setup.ts';
import { Noise } from '../readings/noise.ts';
import { STEP_L } from './nine-steps.ts';
import { jointTrust, type Trust } from './trust.ts';

/** @param off Half a 90 % interval in the same unit; 0 = as exact as the picture. */
export interface ReadFigure {
  readonly amount: number;
  readonly off: number;
}

export interface PatchReading {
  /** Steps, 0..10. */
  readonly value: ReadFigure;
  /** L*. */
  readonly lightness: ReadFigure;
  /** C*ab. */
  readonly chroma: ReadFigure;
  /** Degrees, 0..360; null where the chroma is within its own doubt or too small to have a hue. */
  readonly hueDeg: ReadFigure | null;
}

/** Half a 90 % interval of a normal distribution, in standard deviations. */
const HALF_90 = 1.645;
/** C*ab below which nobody names a hue. Common practice, no source. */
const NEUTRAL = 4;
/** Degrees to which a hue is rounded: what is off by more has no single degrees. */
const HUE_STEPS = { exact: 1, A: 5, B: 10 } as const;

/** @returns Null at grade C: such a photo says nothing of colour in figures. */
export function patchReading(lab: LabColour, trust: Trust): PatchReading | null {
  if (trust === 'C') return null;
  const noise = trust === 'exact' ? null : new Noise(trust);
  const offL = HALF_90 * (noise?.absoluteL ?? 0);
  const offAb = HALF_90 * (noise?.absoluteAb ?? 0);
  const chroma = chromaOf(lab.a, lab.b);
  return {
    value: { amount: lab.L / STEP_L, off: offL / STEP_L },
    lightness: { amount: lab.L, off: offL },
    chroma: { amount: chroma, off: offAb },
    hueDeg: chroma > Math.max(NEUTRAL, offAb) ? hueOf(lab, chroma, offAb, HUE_STEPS[trust]) : null,
  };
}

function hueOf({ a, b }: LabColour, chroma: number, offAb: number, step: number): ReadFigure {
  const rounded = Math.round(hueDegOf(a, b) / step) * step;
  const off = (Math.asin(Math.min(1, offAb / chroma)) * 180) / Math.PI;
  return { amount: rounded % 360, off: offAb === 0 ? 0 : Math.ceil(off / step) * step };
}

/**
 * How far a sample can be trusted now: no farther than when it was taken, and no farther than its photo is today.
 *
 * @param now Null where it is not known.
 */
export function trustNow(taken: Trust, now: Trust | null): Trust {
  return now === null ? taken : jointTrust(taken, now);
}
