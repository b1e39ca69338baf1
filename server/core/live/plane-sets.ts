/**
 * Sets of planes: of several that were taken, one stands.
 *
 * Planes that are taken together carry the name of their set, and a set that had seen others is named after all of
 * them. Of two taken at the same moment every reader picks the same one, by name alone, so that nobody ever sees the
 * planes of both; when the one that stands is taken back, the other comes up. In the flow: planes -> [plane-sets].
 * Pure. Source of the counting: Lamport (1978), "Time, clocks, and the ordering of events in a distributed system".
 */

/** A plane as far as sets go. */
interface InSet {
  set?: string | undefined;
}

/** The set that stands among these planes; null for planes that were never taken together, and where there are none. */
export function newestSet(planes: readonly InSet[]): string | null {
  return planes.reduce<string | null>((newest, { set }) => {
    if (set === undefined) return newest;
    return newest === null || set > newest ? set : newest;
  }, null);
}

export function ofSet<P extends InSet>(planes: readonly P[], set: string | null): P[] {
  return planes.filter((plane) => (plane.set ?? null) === set);
}

/** A name that stands against `newest`. @param token Of this taking alone. */
export function setAfter(newest: string | null, token: string): string {
  const seen = newest === null ? 0 : Number(newest.slice(0, 6));
  return `${String(Math.min(seen + 1, 999_999)).padStart(6, '0')}-${token}`;
}
