/** Steps between ways of looking: squint and grey are two switches that make one state. Pure. */
import { type Squint, SURROUNDS, type Surround } from './tools.ts';

export function withBlur(squint: Squint): Squint {
  return ({ off: 'blur', blur: 'off', grey: 'both', both: 'grey' } as const)[squint];
}

export function withGrey(squint: Squint): Squint {
  return ({ off: 'grey', grey: 'off', blur: 'both', both: 'blur' } as const)[squint];
}

export function isBlurred(squint: Squint): boolean {
  return squint === 'blur' || squint === 'both';
}

export function isGrey(squint: Squint): boolean {
  return squint === 'grey' || squint === 'both';
}

/** mid, dark, light and round again. */
export function nextSurround(surround: Surround): Surround {
  return SURROUNDS[(SURROUNDS.indexOf(surround) + 1) % SURROUNDS.length] ?? 'mid';
}
