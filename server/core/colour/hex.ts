/** Linear sRGB as a hex colour for drawing. Pure. */
import { codeOfLinear } from './transfer.ts';

/** `#rrggbb` of a linear colour, clipped to sRGB. */
export function hexFromLinear(red: number, green: number, blue: number): string {
  const pair = (linear: number): string => codeOfLinear(linear).toString(16).padStart(2, '0');
  return `#${pair(red)}${pair(green)}${pair(blue)}`;
}
