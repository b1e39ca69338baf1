/**
 * The figures of a plane that a plan speaks of, from its colours. Definitions: those of `measure/plane-figures.ts`. Pure.
 *
 * In the flow: colours of a plane -> [light-figures] -> fit-light.
 */
import { warmCoolKernel } from '../../colour/temperature.ts';
import { labPlanesFromLinear } from '../../image/light-tables.ts';
import { COLOUR_RANGE, LIGHTNESS_RANGE, percentiles } from '../../image/percentiles.ts';
import { chromaOfCells } from '../../measure/plane-figures.ts';

export const FITTED = ['dark', 'mid', 'light', 'chroma', 'strong', 'warmCool'] as const;
export type LightFigures = Record<(typeof FITTED)[number], number>;

export interface SeenFigures extends LightFigures {
  /** Medians. */
  readonly a: number;
  readonly b: number;
}

/** @param linear interleaved linear RGB of at least one cell. */
export function lightFigures(linear: Float32Array): SeenFigures {
  const { lightness, a, b } = labPlanesFromLinear(linear);
  const [dark, mid, light] = percentiles(lightness, [0.05, 0.5, 0.95], LIGHTNESS_RANGE);
  const [chroma, strong] = percentiles(chromaOfCells(a, b), [0.5, 0.9], COLOUR_RANGE);
  const [medianA, medianB] = [a, b].map((values) => percentiles(values, [0.5], COLOUR_RANGE)[0] as number);
  const seen = { dark, mid, light, chroma, strong, a: medianA, b: medianB } as Record<string, number>;
  return {
    ...(seen as unknown as SeenFigures),
    warmCool: warmCoolKernel(seen.a as number, seen.b as number),
  };
}
