/**
 * The way a colour takes as more and more air lies before it.
 *
 * Mixed in linear light by Koschmieder's law, the same share for every channel, so that in CIELAB the way is a curve.
 * In the flow: colour of a near plane + air colour -> [air-path] -> air view. Pure.
 * Source: Koschmieder (1924), as in `air-law.ts`; Romero et al. (2011) describe the hook that such ways make.
 */
import type { LabColour } from '../contract/setup.ts';
import type { Triple } from '../geometry/matrix3.ts';
import { seenThroughAir } from './air-law.ts';
import { labFromRgb, rgbFromLab } from './lab.ts';

/** A colour seen through air. @param through Share of its own light that comes through, 1 (no air) to 0 (air alone). */
export function labThroughAir(thing: LabColour, air: LabColour, through: number): LabColour {
  const [own, veil] = [rgbFromLab(thing), rgbFromLab(air)];
  const seen = own.map((channel, at) => seenThroughAir(channel, veil[at] as number, through));
  return labFromRgb(seen as unknown as Triple); // Three channels in, three out.
}

/** From the thing itself (first) to the air (last), in even steps of air. @param steps at least 1. */
export function airPath(thing: LabColour, air: LabColour, steps: number): LabColour[] {
  return Array.from({ length: steps + 1 }, (_, step) => labThroughAir(thing, air, 1 - step / steps));
}
