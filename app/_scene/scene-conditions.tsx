'use client';
/**
 * The light and weather of the scene as switches, each with what it does to the readings; seen by all, at once.
 *
 * In the flow: live `conditions` <-> [scene-conditions]; the server measures anew and keeps readings quiet.
 */
import { useId } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { CONDITIONS, type Condition } from '#server/core/contract/setup.ts';
import { CONDITION_REASONS } from '#server/core/readings/conditions.ts';
import { sceneWords } from '#words/scene.ts';
import styles from './scene.module.css';

export function SceneConditions() {
  const { conditions, may, ready, planes } = useBoardLive();
  if (!ready || planes.length === 0) return null;
  return (
    <section className={styles.scene} aria-labelledby="scene-title">
      <h2 id="scene-title" className={styles.title}>
        {sceneWords.title}
      </h2>
      <p className={styles.quiet}>{sceneWords.about}</p>
      {may.setup ? (
        <>
          <p className={styles.held} role="status">
            {conditions.map((condition) => sceneWords.names[condition]).join(', ') || sceneWords.nothing}
          </p>
          <details className={styles.more}>
            <summary>{sceneWords.more}</summary>
            <ul className={styles.list}>
              {CONDITIONS.map((condition) => (
                <li key={condition}>
                  <Switch condition={condition} />
                </li>
              ))}
            </ul>
          </details>
        </>
      ) : (
        <Held conditions={conditions} />
      )}
    </section>
  );
}

/** What holds, for those who do not say it themselves. */
function Held({ conditions }: { conditions: readonly Condition[] }) {
  return (
    <>
      {conditions.length === 0 ? <p className={styles.held}>{sceneWords.nothing}</p> : null}
      <dl className={styles.list}>
        {conditions.map((condition) => (
          <div key={condition}>
            <dt className={styles.held}>{sceneWords.names[condition]}</dt>
            <dd className={styles.why}>{CONDITION_REASONS[condition]}</dd>
          </div>
        ))}
      </dl>
      <p className={styles.quiet}>{sceneWords.onlyLook}</p>
    </>
  );
}

function Switch({ condition }: { condition: Condition }) {
  const { conditions, may, write } = useBoardLive();
  const id = useId();
  return (
    <div className={styles.switch}>
      <input
        type="checkbox"
        id={id}
        checked={conditions.includes(condition)}
        disabled={!may.setup}
        aria-describedby={`${id}-why`}
        onChange={({ target }) => write.setCondition(condition, target.checked)}
      />
      <label htmlFor={id}>{sceneWords.names[condition]}</label>
      <p id={`${id}-why`} className={styles.why}>
        {CONDITION_REASONS[condition]}
      </p>
    </div>
  );
}
