'use client';
/** Says in a sentence that this screen shows not every remark, with the way back. In the flow: mark desk -> [filter-now] -> remarks. */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useMarkDesk } from '#app/_marks/mark-desk.tsx';
import { EVERYTHING, isNarrowed, type MarkFilter } from '#app/_marks/mark-filter.ts';
import { markWords } from '#words/marks.ts';
import styles from './filter.module.css';
import type { Threads } from './use-threads.ts';

const { filter: words, states } = markWords;

/** What is shown while it is not everything, so that nobody misses a remark without knowing. */
export function FilterNow({ authors }: Pick<Threads, 'authors'>) {
  const { planes } = useBoardLive();
  const { filter, setFilter } = useMarkDesk();
  if (!isNarrowed(filter)) return null;
  const plane = planes.find(({ id }) => id === filter.plane)?.name ?? words.noPlane;
  const parts = [
    ...peopleWords(filter, authors),
    ...(filter.plane === 'any' ? [] : [plane]),
    ...(filter.state === 'any' ? [] : [states[filter.state]]),
  ];
  return (
    <p className={styles.note}>
      {words.now(parts)}{' '}
      <button
        type="button"
        className={styles.word}
        onClick={() => setFilter({ ...EVERYTHING, pictures: filter.pictures })}
      >
        {words.clear}
      </button>
    </p>
  );
}

function peopleWords(filter: MarkFilter, authors: Threads['authors']): string[] {
  const names = authors.filter(({ id }) => filter.except.has(id)).map(({ name }) => name);
  if (filter.people === 'none') return [words.people(names)];
  return names.length > 0 ? [words.but(names)] : [];
}
