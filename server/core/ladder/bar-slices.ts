/**
 * The colours of a ladder's bar from its lights down to its darks as flat slices, for paper: a page that mixes colours by
 * itself does so in another space than the eye's, and not every printer's program does it alike.
 *
 * In the flow: measures -> [bar-slices] -> sheet. Mixed in CIELAB (D65), so that at every height the colour has the
 * lightness that the axis shows there. Pure. Colour formulas: culori.
 */
import { formatHex, interpolate } from 'culori';
import type { LadderBar } from './geometry.ts';

/** @returns sRGB of each slice, from the top; empty where the bar has no colours of its own. */
export function barSlices(
  { colours, middleWithin }: Pick<LadderBar, 'colours' | 'middleWithin'>,
  count: number,
): string[] {
  if (!colours) return [];
  const { light, mid, dark } = colours;
  const at = Math.min(1 - 1e-6, Math.max(1e-6, middleWithin));
  const mixed = interpolate([light, [mid, at], dark], 'lab65');
  return Array.from({ length: count }, (_, slice) => formatHex(mixed((slice + 0.5) / count)));
}
