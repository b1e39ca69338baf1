/**
 * Munsell value <-> luminance factor. Pure.
 *
 * Source: ASTM D1535, luminance relative to the perfect diffuser (Newhall, Nickerson & Judd 1943, × 0.975).
 */
const COEFFICIENTS = [1.1914, -0.22533, 0.23352, -0.020484, 0.00081939] as const;

/** @param munsellValue 0..10. @returns luminance factor Y in percent, 0..100. */
export function luminancePercentFromMunsell(munsellValue: number): number {
  return COEFFICIENTS.reduceRight((sum, coefficient) => (sum + coefficient) * munsellValue, 0);
}

/**
 * Inverse by bisection (the polynomial rises strictly over 0..10), to 1e-12.
 * @param luminancePercent Y in percent; outside 0..100 the nearer end is given.
 */
export function munsellFromLuminancePercent(luminancePercent: number): number {
  let [low, high] = [0, 10];
  if (luminancePercent <= 0) return low;
  if (luminancePercent >= 100) return high;
  while (high - low > 1e-12) {
    const middle = (low + high) / 2;
    if (luminancePercentFromMunsell(middle) < luminancePercent) low = middle;
    else high = middle;
    if (middle === low && middle === high) break;
  }
  return (low + high) / 2;
}
