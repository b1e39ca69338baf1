/**
 * Readings that come back on several paintings of one person, and on which: in the order of the trade's list, with nothing
 * counted. In the flow: measured documents of each painting's states -> [recurring] -> path. Pure.
 */
import type { MeasureDocument } from '../contract/measures.ts';
import { RULES } from '../readings/rules.ts';

/** On fewer paintings than this nothing comes back. */
const FROM = 2;

/** One painting: the readings of its states, oldest first; null where one was never measured. */
export interface PaintingRead<Painting> {
  readonly painting: Painting;
  readonly states: readonly (Pick<MeasureDocument, 'readings'> | null)[];
}

export interface Recurring<Painting> {
  /** Id of the reading, such as `V4`. */
  readonly id: string;
  /** What the trade calls it. */
  readonly name: string;
  readonly why: string;
  /** Where it came; `stands` says whether the newest state still shows it. */
  readonly on: { readonly painting: Painting; readonly stands: boolean }[];
}

/** Findings that neither a condition nor the painter muted; questions and checks are none. */
const spoken = (document: Pick<MeasureDocument, 'readings'> | null | undefined, id: string): boolean =>
  document?.readings.some(
    (reading) => reading.id === id && reading.muted === null && (reading.form ?? 'finding') === 'finding',
  ) ?? false;

export function recurringReadings<Painting>(
  paintings: readonly PaintingRead<Painting>[],
): Recurring<Painting>[] {
  return RULES.flatMap(({ id, name, why }) => {
    const on = paintings.flatMap(({ painting, states }) =>
      states.some((state) => spoken(state, id)) ? [{ painting, stands: spoken(states.at(-1), id) }] : [],
    );
    return on.length >= FROM ? [{ id, name, why, on }] : [];
  });
}
