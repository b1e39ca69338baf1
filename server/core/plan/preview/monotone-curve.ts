/**
 * A smooth rising curve through a few points, read off at even steps.
 *
 * In the flow: photograph's and planned figures -> [monotone-curve] -> relight. Pure.
 * Source: Fritsch & Carlson (1980), "Monotone piecewise cubic interpolation", SIAM J. Numer. Anal. 17(2); the three-point
 * formula for slopes is Fritsch & Butland's (1984) harmonic mean. It never overshoots and never falls.
 */
export type CurvePoint = readonly [from: number, to: number];

function slopesOf(points: readonly CurvePoint[]): number[] {
  const steps = points.slice(1).map(([x, y], at) => {
    const [x0, y0] = points[at] as CurvePoint;
    return { width: x - x0, slope: (y - y0) / (x - x0) };
  });
  return points.map((_, at) => {
    const [before, after] = [steps[at - 1], steps[at]];
    if (!before || !after) return (before ?? after)?.slope ?? 1;
    if (before.slope <= 0 || after.slope <= 0) return 0;
    const [heavy, light] = [2 * after.width + before.width, after.width + 2 * before.width];
    return (heavy + light) / (heavy / before.slope + light / after.slope);
  });
}

/** Hermite's cubic between two points. */
function between([x0, y0]: CurvePoint, [x1, y1]: CurvePoint, [m0, m1]: [number, number], x: number): number {
  const width = x1 - x0;
  const t = (x - x0) / width;
  const [t2, t3] = [t * t, t * t * t];
  return (
    (2 * t3 - 3 * t2 + 1) * y0 +
    (t3 - 2 * t2 + t) * width * m0 +
    (3 * t2 - 2 * t3) * y1 +
    (t3 - t2) * width * m1
  );
}

/**
 * @param points at least two, rising in `from` and not falling in `to`.
 * @param most the steps run evenly from 0 to this. @returns `steps` values; beyond the points as at the nearest one.
 */
export function monotoneCurve(points: readonly CurvePoint[], most: number, steps: number): Float32Array {
  const slopes = slopesOf(points);
  const [first, last] = [points[0] as CurvePoint, points.at(-1) as CurvePoint];
  let piece = 0;
  return Float32Array.from({ length: steps }, (_, step) => {
    const x = (step / (steps - 1)) * most;
    if (x <= first[0]) return first[1];
    if (x >= last[0]) return last[1];
    while (piece + 2 < points.length && x > (points[piece + 1] as CurvePoint)[0]) piece++;
    const ends: [number, number] = [slopes[piece] as number, slopes[piece + 1] as number];
    return between(points[piece] as CurvePoint, points[piece + 1] as CurvePoint, ends, x);
  });
}
