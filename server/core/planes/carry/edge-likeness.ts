/**
 * How much a step from one side of a ridge to the other looks like the edge that was carried over. Pure.
 *
 * In the flow: find-moves, ridge-costs -> [edge-likeness]. A step counts by its height and by whether it goes the way
 * that it went in the first picture: painters change colours, but mostly keep which side is lighter.
 */

/** Heights of a step, in CIELAB units: lower ones are grain, higher ones are as good as any. */
const GRAIN = 1;
const FULL = 10;
/** Share of an edge's worth that hangs on its going the right way. */
const BY_WAY = 0.5;
/** A carried step this high is sure of its way. */
const SURE_WAY = 4;
/** Hue and chroma count less than lightness: they are changed more freely. */
const COLOUR = 0.6;

/** @param L, a, b the step found. @param way L*, a*, b* of the step expected, at `from`. @returns 0..1. */
export function edgeLikeness(L: number, a: number, b: number, way: Float32Array, from: number): number {
  const [ca, cb] = [COLOUR * a, COLOUR * b];
  const height = Math.sqrt(L * L + ca * ca + cb * cb);
  if (height <= GRAIN) return 0;
  const worth = Math.min(1, (height - GRAIN) / FULL);
  const [wl, wa, wb] = [
    way[from] as number,
    COLOUR * (way[from + 1] as number),
    COLOUR * (way[from + 2] as number),
  ];
  const long = Math.sqrt(wl * wl + wa * wa + wb * wb);
  if (long === 0) return worth * (1 - BY_WAY / 2);
  const along = (L * wl + ca * wa + cb * wb) / (height * long);
  const sure = long / (long + SURE_WAY);
  return worth * (1 - BY_WAY * (sure * (0.5 - 0.5 * along) + (1 - sure) * 0.5));
}
