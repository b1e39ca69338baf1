'use client';
/**
 * The talk beside the pictures: what a class asks for now, what the painter wanted, what to try first and what works,
 * what people remarked and answered, who is here.
 *
 * In the flow: live board -> [talk] -> writers. The chosen mark is shared with the pins on the pictures.
 */
import { ClassOrder, ClassTask } from '#app/_class/class-part.tsx';
import { Critique } from '#app/_critique/critique.tsx';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Monogram } from '#app/_ui/monogram.tsx';
import { words } from '#words/easel.ts';
import { Intention } from './intention.tsx';
import { IntentionFirst } from './intention-first.tsx';
import { Remarks } from './remarks.tsx';
import styles from './talk.module.css';

export function Talk() {
  const { veiled, silentId, known } = useBoardLive().class;
  const silent = silentId !== null || (veiled && !known);
  return (
    <section className={styles.talk} aria-label={words.talk.title}>
      <ClassTask />
      {silent ? null : <Intention />}
      {veiled ? null : (
        <IntentionFirst>
          <Critique />
        </IntentionFirst>
      )}
      {silent ? null : <Remarks />}
      <ClassOrder />
      <Here />
    </section>
  );
}

function Here() {
  const { people } = useBoardLive();
  return (
    <div className={styles.part}>
      <h2 className={styles.title}>{words.talk.here}</h2>
      <ul className={styles.here}>
        {people.map((person) => (
          <li key={person.id}>
            <Monogram name={person.name} guide={person.role === 'teacher' || person.role === 'host'} />
            <span>
              {person.name}
              {person.self ? ` (${words.talk.you})` : ''}
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}
