/**
 * Colour differences: CIE 1976 and CIEDE2000 (kL = kC = kH = 1). Pure.
 *
 * Source: ISO/CIE 11664-4:2019; ISO/CIE 11664-6:2022, steps and edge cases as in Sharma, Wu & Dalal (2005),
 * doi 10.1002/col.20070, equations 2 to 22.
 */
import type { LabColour } from '../contract/setup.ts';

const DEG = Math.PI / 180;
/** 25^7, where chroma stops mattering to a*. */
const CHROMA_KNEE = 25 ** 7;

/** dE*ab: plain distance in CIELAB. */
export function difference1976(p: LabColour, q: LabColour): number {
  return Math.hypot(p.L - q.L, p.a - q.a, p.b - q.b);
}

/** Difference of two angles in degrees, wrapped to −180..180. */
export function hueDifferenceDeg(to: number, from: number): number {
  const turned = (((to - from) % 360) + 360) % 360;
  return turned > 180 ? turned - 360 : turned;
}

function chromaWeight(chroma: number): number {
  const seventh = chroma ** 7;
  return Math.sqrt(seventh / (seventh + CHROMA_KNEE));
}

function hueOf(a: number, b: number): number {
  return a === 0 && b === 0 ? 0 : (Math.atan2(b, a) / DEG + 360) % 360;
}

/** Equations 10 and 14: hue step and mean hue, where a neutral has no hue of its own. */
function hueStepAndMean(h1: number, h2: number, neutral: boolean): [number, number] {
  if (neutral) return [0, h1 + h2];
  const raw = h2 - h1;
  if (Math.abs(raw) <= 180) return [raw, (h1 + h2) / 2];
  const sum = h1 + h2;
  return [raw > 180 ? raw - 360 : raw + 360, sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2];
}

function hueFactor(meanHue: number): number {
  return (
    1 -
    0.17 * Math.cos((meanHue - 30) * DEG) +
    0.24 * Math.cos(2 * meanHue * DEG) +
    0.32 * Math.cos((3 * meanHue + 6) * DEG) -
    0.2 * Math.cos((4 * meanHue - 63) * DEG)
  );
}

/** CIEDE2000 between two CIELAB colours. */
export function difference2000(p: LabColour, q: LabColour): number {
  const stretch = 1.5 - 0.5 * chromaWeight((Math.hypot(p.a, p.b) + Math.hypot(q.a, q.b)) / 2);
  const [a1, a2] = [p.a * stretch, q.a * stretch];
  const [c1, c2] = [Math.hypot(a1, p.b), Math.hypot(a2, q.b)];
  const [step, meanHue] = hueStepAndMean(hueOf(a1, p.b), hueOf(a2, q.b), c1 * c2 === 0);
  const meanChroma = (c1 + c2) / 2;
  const fromMiddle = ((p.L + q.L) / 2 - 50) ** 2;
  const lightness = (q.L - p.L) / (1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle));
  const chroma = (c2 - c1) / (1 + 0.045 * meanChroma);
  const hue =
    (2 * Math.sqrt(c1 * c2) * Math.sin((step / 2) * DEG)) / (1 + 0.015 * meanChroma * hueFactor(meanHue));
  const turn = 30 * Math.exp(-(((meanHue - 275) / 25) ** 2));
  const rotation = -Math.sin(2 * turn * DEG) * 2 * chromaWeight(meanChroma);
  return Math.sqrt(lightness ** 2 + chroma ** 2 + hue ** 2 + rotation * chroma * hue);
}
