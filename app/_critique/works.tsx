'use client';
import { useTools } from '#app/_workspace/tools-here.tsx';
/** What works, always said; under it what is neither good nor bad. In the flow: measured document -> [works]. */
import { critiqueWords } from '#words/critique.ts';
import styles from './critique.module.css';
import { useChoosePlane, useDesk } from './desk.tsx';

const { works: words } = critiqueWords;

export function Works() {
  const { measures, planeIdOf } = useDesk();
  const { planeId } = useTools();
  const choosePlane = useChoosePlane();
  const { document } = measures;
  if (!document) return null;
  const { works } = document;
  // That colour is withheld is said beside the cards already.
  const observations = (document.observations ?? []).filter(({ id }) => id !== 'withheld');
  const id = works && planeIdOf(works.plane);
  return (
    <div className={styles.part}>
      <h2 className={styles.title}>{words.title}</h2>
      {works && id ? (
        <button
          type="button"
          className={`${styles.sentence} ${styles.works}`}
          aria-pressed={planeId === id}
          onClick={() => choosePlane(id)}
        >
          {works.sentence}
        </button>
      ) : (
        <p className={styles.works}>{works?.sentence ?? words.nothing[document.target]}</p>
      )}
      {observations.length > 0 ? (
        <ul className={styles.observations} aria-label={words.also}>
          {observations.map(({ sentence }) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}
