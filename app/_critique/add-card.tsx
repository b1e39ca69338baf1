'use client';
/** Opens the form for a card of a teacher's own. In the flow: cards -> [add-card] -> card-form, loaded late. */
import { useState } from 'react';
import { late } from '#app/_ui/late.tsx';
import { critiqueWords } from '#words/critique.ts';
import styles from './critique.module.css';
import { useDesk } from './desk.tsx';

const NewCard = late(() => import('./card-form.tsx').then((module) => module.NewCard));

export function AddCard() {
  const { mayChange } = useDesk();
  const [adding, setAdding] = useState(false);
  if (!mayChange) return null;
  if (adding) return <NewCard close={() => setAdding(false)} />;
  return (
    <button type="button" className={styles.act} onClick={() => setAdding(true)}>
      {critiqueWords.teacher.add}
    </button>
  );
}
