'use client';
/**
 * Beginning a class: who comes when, drawn by lot or put in order by hand, and how long each step is planned.
 *
 * In the flow: [start-class] -> core/class `startClass` -> class room. Nothing is stored before it begins. IO: chance.
 */
import { type FormEvent, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import {
  drawn,
  type Lengths,
  LONGEST_STEP,
  SHORTEST_STEP,
  STEPS,
  turnLength,
} from '#server/core/class/steps.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import { classWords } from '#words/class.ts';
import styles from './class.module.css';
import { newestOfEach } from './turns.ts';
import { useRun } from './use-run.ts';

const { start: words, order: orderWords } = classWords;

export function StartClass({ onBegun }: { onBegun(): void }) {
  const { state, paintings } = useBoardLive().class;
  const run = useRun();
  const [order, setOrder] = useState<readonly PictureView[]>(() => newestOfEach(paintings));
  const [lengths, setLengths] = useState<Lengths>(state.lengths);
  const begin = (event: FormEvent) => {
    event.preventDefault();
    if (!run || order.length === 0) return;
    run.start(
      order.map(({ id, painter }) => ({ pictureId: id, painterId: painter.id })),
      lengths,
    );
    onBegun();
  };
  const turn = turnLength(lengths);
  return (
    <form className={styles.start} onSubmit={begin}>
      <p>{words.lead}</p>
      <Order order={order} setOrder={setOrder} paintings={paintings} />
      <fieldset className={styles.lengths}>
        <legend className={styles.title}>{words.lengths}</legend>
        {STEPS.map((step) => (
          <label key={step}>
            <span>{classWords.steps[step]}</span>
            <input
              type="number"
              aria-label={words.minutes(classWords.steps[step])}
              min={SHORTEST_STEP / 60}
              max={LONGEST_STEP / 60}
              step="any"
              required
              defaultValue={lengths[step] / 60}
              onChange={(event) => {
                const seconds = Math.round(event.target.valueAsNumber * 60);
                if (seconds >= SHORTEST_STEP && seconds <= LONGEST_STEP) {
                  setLengths((before) => ({ ...before, [step]: seconds }));
                }
              }}
            />
          </label>
        ))}
        <p className={styles.note}>{words.whole(words.min(turn), words.min(turn * order.length))}</p>
      </fieldset>
      <span>
        <Button weight="main" type="submit" disabled={order.length === 0}>
          {words.begin}
        </Button>
      </span>
    </form>
  );
}

interface OrderProps {
  order: readonly PictureView[];
  setOrder(order: readonly PictureView[]): void;
  paintings: readonly PictureView[];
}

/** By hand with two buttons a painter, which work by keyboard and touch alike. */
function Order({ order, setOrder, paintings }: OrderProps) {
  const outside = newestOfEach(paintings).filter(({ id }) => !order.some((each) => each.id === id));
  const move = (at: number, by: -1 | 1) => {
    const next = [...order];
    const [one, two] = [next[at], next[at + by]];
    if (!one || !two) return;
    next[at] = two;
    next[at + by] = one;
    setOrder(next);
  };
  return (
    <div className={styles.part}>
      <div className={styles.head}>
        <h3 className={styles.title}>{words.order}</h3>
        <Button weight="word" onClick={() => setOrder(drawn(order, Math.random))}>
          {words.draw}
        </Button>
      </div>
      <ol className={styles.order}>
        {order.map(({ id, painter }, at) => (
          <li key={id}>
            <span>{painter.name}</span>
            <span className={styles.acts}>
              <Small label={orderWords.up(painter.name)} disabled={at === 0} press={() => move(at, -1)}>
                ↑
              </Small>
              <Small
                label={orderWords.down(painter.name)}
                disabled={at === order.length - 1}
                press={() => move(at, 1)}
              >
                ↓
              </Small>
              <Small
                label={orderWords.leaveOut(painter.name)}
                press={() => setOrder(order.filter((each) => each.id !== id))}
              >
                {orderWords.remove}
              </Small>
            </span>
          </li>
        ))}
        {outside.map((painting) => (
          <li key={painting.id}>
            <span className={styles.note}>{painting.painter.name}</span>
            <Small
              label={orderWords.putIn(painting.painter.name)}
              press={() => setOrder([...order, painting])}
            >
              {orderWords.add}
            </Small>
          </li>
        ))}
      </ol>
    </div>
  );
}

interface SmallProps {
  label: string;
  disabled?: boolean;
  press(): void;
  children: string;
}

function Small({ label, disabled = false, press, children }: SmallProps) {
  return (
    <button type="button" className={styles.small} aria-label={label} disabled={disabled} onClick={press}>
      {children}
    </button>
  );
}
