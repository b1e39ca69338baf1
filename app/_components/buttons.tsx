'use client';
/** Each weight of button in each of its states; a state that a hand makes is drawn by `data-as`. */
import type { ReactNode } from 'react';
import { Button, type ButtonWeight } from '#app/_ui/button.tsx';
import small from '#app/_ui/small-words.module.css';
import { componentWords as words } from '#words/components.ts';
import styles from './components.module.css';

const WEIGHTS: readonly ButtonWeight[] = ['main', 'quiet', 'word'];
const BY_HAND = ['hover', 'focus', 'held'] as const;

export function Buttons() {
  return (
    <div className={styles.table}>
      {WEIGHTS.map((weight) => (
        <div key={weight} className={styles.row}>
          <State name={words.states.rest}>
            <Button weight={weight}>{words.weights[weight]}</Button>
          </State>
          {BY_HAND.map((state) => (
            <State key={state} name={words.states[state]}>
              <Button weight={weight} data-as={state}>
                {words.weights[weight]}
              </Button>
            </State>
          ))}
          <State name={words.states.off}>
            <Button weight={weight} disabled>
              {words.weights[weight]}
            </Button>
          </State>
          <State name={words.states.busy}>
            <Button weight={weight} busy busyWord={words.busy}>
              {words.weights[weight]}
            </Button>
          </State>
        </div>
      ))}
      <p className={small.acts}>
        <button type="button" className={small.word}>
          {words.smallWord}
        </button>
        <button type="button" className={small.word} disabled>
          {words.smallWord}
        </button>
      </p>
    </div>
  );
}

function State({ name, children }: { name: string; children: ReactNode }) {
  return (
    <div className={styles.state}>
      {children}
      <span className={styles.note}>{name}</span>
    </div>
  );
}
