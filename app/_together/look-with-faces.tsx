'use client';
/** The faces of those who are here: one tap looks with them, another lets go. In the flow: header -> [faces] -> together. */
import { Monogram } from '#app/_ui/monogram.tsx';
import type { BoardRole } from '#server/core/contract/roles.ts';
import { togetherWords as words } from '#words/together.ts';
import styles from './look-with-faces.module.css';
import { useTogether } from './together.tsx';

/** @param people Others who are here now. */
export function LookWithFaces({
  people,
}: {
  people: readonly { id: string; name: string; role: BoardRole }[];
}) {
  const { following, lookWith, letGo } = useTogether();
  return people.map((person) => {
    const on = following?.personId === person.id;
    return (
      <button
        key={person.id}
        type="button"
        className={styles.face}
        aria-label={words.lookWith(person.name)}
        title={words.lookWith(person.name)}
        aria-pressed={on}
        onClick={() => (on ? letGo() : lookWith(person))}
      >
        <Monogram name={person.name} guide={person.role === 'teacher' || person.role === 'host'} />
      </button>
    );
  });
}
