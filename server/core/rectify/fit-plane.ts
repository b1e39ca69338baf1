/**
 * Slopes of a plane through samples, each group of which may lie at its own height.
 *
 * In the flow: log gains -> [fit-plane] -> light-field. Least squares around each group's middle. Pure.
 */

export interface HeightSample {
  readonly x: number;
  readonly y: number;
  readonly value: number;
  /** Samples of one group share one unknown height. */
  readonly group: number;
}

interface Sums {
  xx: number;
  xy: number;
  yy: number;
  xv: number;
  yv: number;
}

function sumsOf(samples: readonly HeightSample[]): Sums {
  const sums: Sums = { xx: 0, xy: 0, yy: 0, xv: 0, yv: 0 };
  for (const group of new Set(samples.map((sample) => sample.group))) {
    const members = samples.filter((sample) => sample.group === group);
    const mean = (of: (sample: HeightSample) => number): number =>
      members.reduce((sum, sample) => sum + of(sample), 0) / members.length;
    const [mx, my, mv] = [mean(({ x }) => x), mean(({ y }) => y), mean(({ value }) => value)];
    for (const { x, y, value } of members) {
      const [dx, dy, dv] = [x - mx, y - my, value - mv];
      sums.xx += dx * dx;
      sums.xy += dx * dy;
      sums.yy += dy * dy;
      sums.xv += dx * dv;
      sums.yv += dy * dv;
    }
  }
  return sums;
}

/** [per x, per y]: the plane of least squares, and of least slope where the samples leave it open. */
export function fitPlane(samples: readonly HeightSample[]): [number, number] {
  const { xx, xy, yy, xv, yv } = sumsOf(samples);
  const determinant = xx * yy - xy * xy;
  if (determinant > 1e-3 * (xx + yy) ** 2) {
    return [(yy * xv - xy * yv) / determinant, (xx * yv - xy * xv) / determinant];
  }
  // Samples on one line tell nothing across it: the slope runs along the line.
  const spread = xx + yy;
  if (spread < 1e-6) return [0, 0];
  const [ux, uy] = xx >= yy ? [xx, xy] : [xy, yy];
  const length = Math.hypot(ux, uy);
  const along = (ux * xv + uy * yv) / length / spread;
  return [(along * ux) / length, (along * uy) / length];
}
