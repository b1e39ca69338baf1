'use client';
/**
 * The line over the pictures while a class runs: whose turn, which step, what it asks of this person, what time is left.
 *
 * In the flow: live class -> [class-strip]. It has its own row and keeps its height, so that no picture moves by it. The
 * step is also said aloud; running over is said once, in words.
 */
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { ClassView } from '#app/_live/class-view.ts';
import { Button } from '#app/_ui/button.tsx';
import type { LiveNow } from '#server/core/class/shapes.ts';
import { toCome } from '#server/core/class/state.ts';
import { stepAfter } from '#server/core/class/steps.ts';
import { classWords as words } from '#words/class.ts';
import styles from './class.module.css';
import { useLeft } from './use-clock.ts';
import { useRun } from './use-run.ts';

export function ClassStrip({ className }: { className: string | undefined }) {
  const { class: inClass } = useBoardLive();
  const { now } = inClass.state;
  if (!inClass.known) {
    return inClass.veiled ? (
      <Frame className={className}>
        <p className={styles.waiting}>{words.waiting}</p>
      </Frame>
    ) : null;
  }
  if (!now) return null;
  return (
    <Frame className={className}>
      <p className={styles.step}>
        <strong>{words.steps[now.step]}</strong>
        <span>{whoseTurn(inClass)}</span>
      </p>
      <p className={styles.asks}>{asksOf(inClass, now)}</p>
      <Clock paused={now.paused} step={words.steps[now.step]} />
      <Next inClass={inClass} now={now} />
      <SaidAloud inClass={inClass} now={now} />
    </Frame>
  );
}

function Frame({ className, children }: { className: string | undefined; children: ReactNode }) {
  return (
    <section className={`${styles.strip} ${className ?? ''}`} aria-label={words.label}>
      {children}
    </section>
  );
}

function whoseTurn({ mine, paintings, state }: ClassView): string {
  if (mine) return words.mine;
  const painting = paintings.find(({ id }) => id === state.now?.pictureId);
  return painting ? words.turnOf(painting.painter.name) : words.notShown;
}

function asksOf({ mine, runs, writesImpressions }: ClassView, { step, opened }: LiveNow): string {
  if (!mine && !runs && !writesImpressions) return words.onlooker;
  if (step === 'priorities' && opened && !mine && !runs) return words.asksOpened;
  return words.asks[step][mine ? 'painter' : runs ? 'teacher' : 'others'];
}

/** Calm figures that change once a second; nothing flashes. */
function Clock({ paused, step }: { paused: boolean; step: string }) {
  const left = useLeft();
  const over = left !== null && left.stepMs < 0;
  return (
    <div className={styles.clock} role="timer" aria-live="off">
      <p className={styles.time} data-over={over || undefined}>
        <span>{left ? inTime(left.stepMs) : '–'}</span>
        <small>{paused ? words.paused : words.stepLeft}</small>
      </p>
      <p className={styles.time}>
        <span>{left ? inTime(left.turnMs) : '–'}</span>
        <small>{words.turnLeft}</small>
      </p>
      <span className="unseen" role="status">
        {over ? words.overSaid(step) : null}
      </span>
    </div>
  );
}

const inTime = (ms: number) => (ms < 0 ? words.over(ms) : words.left(ms));

/** The one thing that is pressed all the time by who runs the class. */
function Next({ inClass, now }: { inClass: ClassView; now: LiveNow }) {
  const run = useRun();
  if (!run) return null;
  const step = stepAfter(now.step);
  const last = toCome(inClass.state).length === 0;
  return (
    <span className={styles.next}>
      <Button weight="main" onClick={run.nextStep}>
        {step ? words.next(step) : last ? words.end : words.nextPainter}
      </Button>
    </span>
  );
}

/** Each new step, for those who listen; not the one they came into, which they read. */
function SaidAloud({ inClass, now }: { inClass: ClassView; now: LiveNow }) {
  const number = useRef(now.number);
  const [sentence, setSentence] = useState('');
  const said = words.said(words.steps[now.step], whoseTurn(inClass), asksOf(inClass, now));
  useEffect(() => {
    if (number.current === now.number) return;
    number.current = now.number;
    setSentence(said);
  }, [now.number, said]);
  return (
    <span className="unseen" role="status">
      {sentence}
    </span>
  );
}
