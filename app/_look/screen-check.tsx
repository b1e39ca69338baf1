'use client';
/**
 * The check of the screen: can the two darkest and the two lightest half steps be told apart?
 *
 * In each field one of four squares is half a step (5 L*) apart from the ground; which one is drawn by lot, so that it is
 * seen and not known. Offered, never asked for; what it found is remembered in this browser. Common practice, no source.
 */
import { useState } from 'react';
import { Button } from '#app/_ui/button.tsx';
import { Dialog } from '#app/_ui/dialog.tsx';
import { greyOf } from '#server/core/look/nine-steps.ts';
import { lookWords } from '#words/look.ts';
import { keepScreen } from './kept.ts';
import { useLooking } from './look-state.tsx';
import styles from './screen-check.module.css';

const { check: words } = lookWords;

/** L* of the ground and of the square that is apart. */
const ENDS = {
  dark: { ground: 0, apart: 5 },
  light: { ground: 100, apart: 95 },
} as const;
type End = keyof typeof ENDS;
const SQUARES = 4;

export function ScreenCheck() {
  const { checkOpen, setCheckOpen } = useLooking();
  return (
    <Dialog open={checkOpen} onClose={() => setCheckOpen(false)} title={words.title}>
      <Check onDone={() => setCheckOpen(false)} />
    </Dialog>
  );
}

const drawn = () => Math.floor(Math.random() * SQUARES);

/** Whether each end was told apart; missing = not answered yet. */
type Found = Partial<Record<End, boolean>>;

function Check({ onDone }: { onDone(): void }) {
  const [places, setPlaces] = useState(() => ({ dark: drawn(), light: drawn() }));
  const [found, setFound] = useState<Found>({});
  const answer = (end: End, told: boolean) => {
    const next = { ...found, [end]: told };
    setFound(next);
    const { dark, light } = next;
    if (dark !== undefined && light !== undefined) keepScreen({ at: new Date().toISOString(), dark, light });
  };
  const again = () => {
    setPlaces({ dark: drawn(), light: drawn() });
    setFound({});
  };
  const { dark, light } = found;
  if (dark !== undefined && light !== undefined) {
    return <Result dark={dark} light={light} onAgain={again} onDone={onDone} />;
  }
  return (
    <>
      <p>{words.lead}</p>
      <div className={styles.ends}>
        <Field end="dark" place={places.dark} answered={dark !== undefined} onAnswer={answer} />
        <Field end="light" place={places.light} answered={light !== undefined} onAnswer={answer} />
      </div>
    </>
  );
}

interface FieldProps {
  end: End;
  place: number;
  answered: boolean;
  onAnswer(end: End, told: boolean): void;
}

function Field({ end, place, answered, onAnswer }: FieldProps) {
  const { ground, apart } = ENDS[end];
  return (
    <fieldset className={styles.field} disabled={answered} data-answered={answered || undefined}>
      <legend>{words[end]}</legend>
      <div className={styles.squares} style={{ background: greyOf(ground) }}>
        {words.squares.map((name, at) => (
          <button
            key={name}
            type="button"
            data-end={end}
            style={{ background: greyOf(at === place ? apart : ground) }}
            aria-label={words.square(name)}
            onClick={() => onAnswer(end, at === place)}
          />
        ))}
      </div>
      <Button onClick={() => onAnswer(end, false)}>{words.none}</Button>
    </fieldset>
  );
}

function Result({
  dark,
  light,
  onAgain,
  onDone,
}: {
  dark: boolean;
  light: boolean;
  onAgain(): void;
  onDone(): void;
}) {
  return (
    <div className={styles.result} role="status">
      {dark && light ? <p className={styles.said}>{words.good}</p> : null}
      {dark ? null : <p className={styles.said}>{words.lostDark}</p>}
      {light ? null : <p className={styles.said}>{words.lostLight}</p>}
      {dark && light ? null : (
        <ul>
          {words.todo.map((hint) => (
            <li key={hint}>{hint}</li>
          ))}
        </ul>
      )}
      <p>
        {words.measures} {words.kept}
      </p>
      <p className={styles.buttons}>
        <Button weight="main" onClick={onDone}>
          {words.done}
        </Button>
        <Button weight="word" onClick={onAgain}>
          {words.again}
        </Button>
      </p>
    </div>
  );
}
