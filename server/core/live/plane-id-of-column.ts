/** Which plane of the live board a column of the measure document speaks of. Pure. */

/**
 * The document knows planes by name and order only. The plane at the same place is taken when the name fits,
 * else the only one of that name; null when renamed or deleted since it was measured.
 *
 * @param planes Far to near.
 */
export function planeIdOfColumn(
  planes: readonly { id: string; name: string }[],
  name: string,
  index: number,
): string | null {
  const samePlace = planes[index];
  if (samePlace?.name === name) return samePlace.id;
  const named = planes.filter((plane) => plane.name === name);
  return named.length === 1 ? (named[0]?.id ?? null) : null;
}
