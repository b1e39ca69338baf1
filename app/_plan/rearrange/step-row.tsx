'use client';
/** One step of rearranging in its list: done or put off, earlier or later, taken away; chosen, its details open under it. */
import type { ReactNode } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import type { RearrangeStep } from '#server/core/live/plan/rearranging.ts';
import { rearrangeWords as words } from '#words/plan-rearrange.ts';
import styles from './rearrange.module.css';
import { useRearranging } from './rearranging.tsx';

interface StepRowProps {
  step: RearrangeStep;
  isFirst: boolean;
  isLast: boolean;
  children: ReactNode;
}

export function StepRow({ step, isFirst, isLast, children }: StepRowProps) {
  const { may } = useBoardLive();
  const { chosen, choose, change, remove, shift } = useRearranging();
  const isChosen = chosen?.id === step.id;
  if (!may.setup) return <li className={styles.step}>{step.name}</li>;
  return (
    <li className={styles.step} data-chosen={isChosen || undefined}>
      <div className={styles.row}>
        <input
          type="checkbox"
          checked={!step.off}
          aria-label={words.does(step.name)}
          onChange={({ target }) => change(step, { off: !target.checked })}
        />
        <button
          type="button"
          className={styles.name}
          aria-expanded={isChosen}
          aria-label={words.change(step.name)}
          onClick={() => choose(isChosen ? null : step.id)}
        >
          {step.name}
        </button>
        <Button
          weight="word"
          disabled={isFirst}
          aria-label={words.earlier(step.name)}
          onClick={() => shift(step, -1)}
        >
          ↑
        </Button>
        <Button
          weight="word"
          disabled={isLast}
          aria-label={words.later(step.name)}
          onClick={() => shift(step, 1)}
        >
          ↓
        </Button>
        <Button weight="word" aria-label={words.remove(step.name)} onClick={() => remove(step)}>
          {words.removeWord}
        </Button>
      </div>
      {children}
    </li>
  );
}
