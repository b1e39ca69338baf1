'use client';
/**
 * Whose marks and which remarks this screen shows, folded behind one word.
 *
 * In the flow: remarks -> [remark-filter] -> mark desk. Nobody else's screen changes with it.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useMarkDesk } from '#app/_marks/mark-desk.tsx';
import { personShown, withEveryone, withNoOne, withOnly, withPerson } from '#app/_marks/mark-filter.ts';
import { LETTER_KEYS } from '#app/_workspace/key-map.ts';
import { MARK_STATES } from '#server/core/live/layout.ts';
import { markWords } from '#words/marks.ts';
import styles from './filter.module.css';
import type { Threads } from './use-threads.ts';

const { filter: words, states } = markWords;

interface FilterProps {
  id: string;
  authors: Threads['authors'];
}

export function RemarkFilter({ id, authors }: FilterProps) {
  const { planes } = useBoardLive();
  const { filter, setFilter, sketchesShown, setSketchesShown } = useMarkDesk();
  const planeIds = new Set(planes.map((plane) => plane.id));
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would draw its own frame.
    <div id={id} className={styles.filter} role="group" aria-label={words.label}>
      <Whose authors={authors} />
      <label className={styles.row}>
        {words.plane}
        <select
          value={planeIds.has(filter.plane) || filter.plane === 'none' ? filter.plane : 'any'}
          onChange={(event) => setFilter({ ...filter, plane: event.target.value })}
        >
          <option value="any">{words.anyPlane}</option>
          {planes.map((plane) => (
            <option key={plane.id} value={plane.id}>
              {plane.name}
            </option>
          ))}
          <option value="none">{words.noPlane}</option>
        </select>
      </label>
      <label className={styles.row}>
        {words.state}
        <select
          value={filter.state}
          onChange={(event) => {
            const state = MARK_STATES.find((name) => name === event.target.value) ?? 'any';
            setFilter({ ...filter, state });
          }}
        >
          <option value="any">{words.anyState}</option>
          {MARK_STATES.map((state) => (
            <option key={state} value={state}>
              {states[state]}
            </option>
          ))}
        </select>
      </label>
      <label className={styles.tick}>
        <input
          type="checkbox"
          checked={sketchesShown}
          aria-keyshortcuts={LETTER_KEYS.sketches}
          onChange={(event) => setSketchesShown(event.target.checked)}
        />
        {words.sketches}
      </label>
    </div>
  );
}

function Whose({ authors }: Pick<FilterProps, 'authors'>) {
  const { filter, setFilter } = useMarkDesk();
  return (
    <fieldset className={styles.whose}>
      <legend>{words.whose}</legend>
      {authors.length === 0 ? <p className={styles.note}>{words.nobody}</p> : null}
      <ul>
        {authors.map(({ id, name }) => (
          <li key={id} className={styles.person}>
            <label className={styles.tick}>
              <input
                type="checkbox"
                checked={personShown(filter, id)}
                onChange={(event) => setFilter(withPerson(filter, id, event.target.checked))}
              />
              {name}
            </label>
            <button
              type="button"
              className={styles.word}
              aria-label={words.onlyLabel(name)}
              onClick={() => setFilter(withOnly(filter, id))}
            >
              {words.only}
            </button>
          </li>
        ))}
      </ul>
      <div className={styles.acts}>
        <button type="button" className={styles.word} onClick={() => setFilter(withEveryone(filter))}>
          {words.everyone}
        </button>
        <button type="button" className={styles.word} onClick={() => setFilter(withNoOne(filter))}>
          {words.noOnes}
        </button>
      </div>
    </fieldset>
  );
}
