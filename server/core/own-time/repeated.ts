/**
 * The same reading on several paintings of one person, so that a teacher need not say it a fourth time.
 *
 * In the flow: measured documents of the newest state of each painting -> [repeated] -> queue. It counts paintings, never
 * people, and orders nobody. Pure.
 */
import type { MeasureDocument } from '../contract/measures.ts';
import type { Repeated } from '../contract/own-time.ts';
import { RULES } from '../readings/rules.ts';

/** On fewer paintings than this nothing is repeated yet. */
const FROM = 3;

type Read = Pick<MeasureDocument, 'readings'>;

/**
 * @param paintings One document for each painting; readings that a condition or the painter muted, questions and checks
 *   do not count. @returns In the order of the trade's list.
 */
export function repeatedReadings(paintings: readonly Read[]): Repeated[] {
  const counts = new Map<string, number>();
  for (const { readings } of paintings) {
    const standing = readings.filter(
      ({ form, muted }) => muted === null && (form ?? 'finding') === 'finding',
    );
    for (const id of new Set(standing.map((reading) => reading.id)))
      counts.set(id, (counts.get(id) ?? 0) + 1);
  }
  return RULES.flatMap(({ id, name }) => {
    const count = counts.get(id) ?? 0;
    return count >= FROM ? [{ id, name, paintings: count }] : [];
  });
}
