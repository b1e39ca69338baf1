'use client';
/** A few things of which one holds, in one row. */
import styles from './choice.module.css';

interface ChoiceProps<T> {
  label: string;
  options: readonly { value: T; name: string }[];
  chosen: T;
  onChoose(value: T): void;
}

export function Choice<T extends string | number | boolean>({
  label,
  options,
  chosen,
  onChoose,
}: ChoiceProps<T>) {
  return (
    <fieldset className={styles.choice} aria-label={label}>
      {options.map(({ value, name }) => (
        <button key={name} type="button" aria-pressed={value === chosen} onClick={() => onChoose(value)}>
          {name}
        </button>
      ))}
    </fieldset>
  );
}
