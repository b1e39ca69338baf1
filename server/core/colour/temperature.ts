/**
 * Warm and cool, and how heavy a colour looks. Pure.
 *
 * Source: Ou, Luo, Woodcock & Wright (2004), "A study of colour emotion and colour preference. Part I",
 * Color Research & Application 29(3), doi 10.1002/col.20010.
 */

/** Hue angle of the warmest colours, degrees. */
const WARMEST_HUE_DEG = 50;

/** C^1.07 · cos(h − 50°): + warm, − cool, 0 for neutral. The kernel of `warmCoolScale`, in units near C*ab. */
export function warmCoolKernel(a: number, b: number): number {
  const chroma = Math.sqrt(a * a + b * b);
  if (chroma === 0) return 0;
  return chroma ** 1.07 * Math.cos(Math.atan2(b, a) - (WARMEST_HUE_DEG * Math.PI) / 180);
}

/** The published scale; a neutral grey gives −0.5. */
export function warmCoolScale(a: number, b: number): number {
  return -0.5 + 0.02 * warmCoolKernel(a, b);
}

/** The published heavy–light scale: + heavy, − light. */
export function heaviness(lightness: number): number {
  return -2.1 + 0.05 * (100 - lightness);
}
