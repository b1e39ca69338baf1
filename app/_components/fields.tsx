'use client';
/** A line, a choice, a longer text, ticks and an amount: at rest, with a hint, in trouble, not to be had. */
import { useId, useState } from 'react';
import { ChoiceField, TextField } from '#app/_ui/field.tsx';
import { componentWords as words } from '#words/components.ts';
import styles from './components.module.css';

export function Fields() {
  const [from, setFrom] = useState<string>(words.either[0]);
  const longer = useId();
  return (
    <div className={styles.fields}>
      <TextField label={words.field} defaultValue={words.written} />
      <TextField label={words.field} hint={words.hint} />
      <TextField label={words.field} defaultValue={words.written} trouble={words.trouble} />
      <TextField label={words.field} defaultValue={words.written} disabled />
      <ChoiceField label={words.kind}>
        {words.kinds.map((kind) => (
          <option key={kind}>{kind}</option>
        ))}
      </ChoiceField>
      <div className={styles.state}>
        <label htmlFor={longer}>{words.longer}</label>
        <textarea id={longer} rows={3} />
      </div>
      <fieldset className={styles.ticks} aria-label={words.one}>
        {words.either.map((either) => (
          <label key={either}>
            <input type="radio" name="either" checked={from === either} onChange={() => setFrom(either)} />{' '}
            {either}
          </label>
        ))}
      </fieldset>
      <div className={styles.ticks}>
        <label>
          <input type="checkbox" defaultChecked /> {words.tick}
        </label>
        <label>
          <input type="checkbox" disabled /> {words.tick}
        </label>
        <label>
          {words.amount} <input type="range" defaultValue={40} />
        </label>
      </div>
    </div>
  );
}
