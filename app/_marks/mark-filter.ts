/**
 * Which marks one screen shows: whose, on which pictures, in which plane, in which state; and their order in the talk.
 *
 * In the flow: marks + what became of them -> [mark-filter] -> pictures and talk. Nothing is ordered by people's
 * agreement. Pure.
 */
import { MARK_STATES, type MarkState } from '#server/core/live/layout.ts';

export interface MarkFilter {
  pictures: 'these' | 'all';
  /** Everybody's marks but those of `except`, or nobody's but those. */
  people: 'all' | 'none';
  except: ReadonlySet<string>;
  /** Id of a plane; `none` = marks about no plane. */
  plane: string | 'any' | 'none';
  state: MarkState | 'any';
}

export const EVERYTHING: MarkFilter = {
  pictures: 'these',
  people: 'all',
  except: new Set(),
  plane: 'any',
  state: 'any',
};

export function personShown({ people, except }: MarkFilter, personId: string): boolean {
  return (people === 'all') !== except.has(personId);
}

/** The filter with one person's marks shown or not. */
export function withPerson(filter: MarkFilter, personId: string, shown: boolean): MarkFilter {
  const except = new Set(filter.except);
  if (shown === (filter.people === 'all')) except.delete(personId);
  else except.add(personId);
  return { ...filter, except };
}

export const withEveryone = (filter: MarkFilter): MarkFilter => ({
  ...filter,
  people: 'all',
  except: new Set(),
});
export const withNoOne = (filter: MarkFilter): MarkFilter => ({
  ...filter,
  people: 'none',
  except: new Set(),
});
export const withOnly = (filter: MarkFilter, personId: string): MarkFilter => ({
  ...filter,
  people: 'none',
  except: new Set([personId]),
});

/** Whether the first mark of a thread is as the filter wants it, whatever its picture. */
export function passes(
  filter: MarkFilter,
  mark: { author: string; planeId: string | null },
  state: MarkState,
): boolean {
  if (!personShown(filter, mark.author)) return false;
  if (filter.state !== 'any' && filter.state !== state) return false;
  return filter.plane === 'any' || filter.plane === (mark.planeId ?? 'none');
}

/** Whether anything but the usual is asked for. */
export function isNarrowed({ people, except, plane, state }: MarkFilter): boolean {
  return people === 'none' || except.size > 0 || plane !== 'any' || state !== 'any';
}

/** Open ones first, then tried, done and declined; within each as they came. */
export function byState<T>(items: readonly T[], stateOf: (item: T) => MarkState): T[] {
  return MARK_STATES.flatMap((state) => items.filter((item) => stateOf(item) === state));
}
