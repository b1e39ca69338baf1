'use client';
/**
 * The states in order of time: each small, with its ladder and what changed since the one before. The arrow keys go from
 * one to the next; a chosen one is held against the one before it on the stage.
 *
 * In the flow: states page -> [time-line] -> small ladders.
 */
import { type KeyboardEvent, useRef } from 'react';
import { dateTime } from '#app/_words/figures.ts';
import { poorer } from '#app/_words/worth-saying.ts';
import type { StatesView } from '#server/core/contract/states.ts';
import { changesInWords } from '#words/moves.ts';
import { statesWords } from '#words/states.ts';
import { SmallLadder } from './small-ladder.tsx';
import { SmallPicture } from './small-picture.tsx';
import styles from './states.module.css';

const { line: words } = statesWords;

interface TimeLineProps {
  view: StatesView;
  /** Place of the state on the stage. */
  chosen: number;
  choose(at: number): void;
}

export function TimeLine({ view, chosen, choose }: TimeLineProps) {
  const list = useRef<HTMLOListElement>(null);
  const onKeyDown = (event: KeyboardEvent) => {
    const by = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    const buttons = [...(list.current?.querySelectorAll('button') ?? [])];
    const here = buttons.indexOf(document.activeElement as HTMLButtonElement); // -1 where it is none of them
    const next = by === undefined || here < 0 ? undefined : buttons[here + by];
    if (!next) return;
    event.preventDefault();
    next.focus();
  };
  return (
    <section className={styles.part} aria-labelledby="time-line">
      <h2 id="time-line">{words.title}</h2>
      <ol ref={list} className={styles.line} onKeyDown={onKeyDown}>
        {view.states.map((state, at) => (
          <li key={state.id} className={styles.state} data-chosen={at === chosen || undefined}>
            <button
              type="button"
              aria-pressed={at === chosen}
              aria-label={words.open(at)}
              onClick={() => choose(at)}
            >
              <SmallPicture boardId={view.board.id} state={state} />
            </button>
            <div>
              <h3>{words.label(at)}</h3>
              <p className={styles.quiet}>
                <time dateTime={state.postedAt}>{dateTime(state.postedAt)}</time>, {words.grade(state.grade)}
              </p>
            </div>
            <SmallLadder at={at} ladder={state.ladder} before={view.states[at - 1]?.ladder ?? null} />
            <Since view={view} at={at} />
          </li>
        ))}
      </ol>
      {view.states.filter(({ ladder }) => ladder.length > 0).length > 1 ? (
        <p className={styles.quiet}>{words.ghost}</p>
      ) : null}
    </section>
  );
}

/** What changed since the state before, or why that cannot be told. */
function Since({ view, at }: { view: StatesView; at: number }) {
  const { pending } = view.states[at] ?? { pending: null };
  if (pending !== null) return <p className={styles.quiet}>{pending}</p>;
  const step = view.steps[at - 1];
  if (!step) return null;
  if (step.pending) return <p className={styles.quiet}>{words.laying}</p>;
  if (step.facts?.trouble) return <p>{step.facts.trouble}</p>;
  if (view.states[at - 1]?.pending !== null) return <p className={styles.quiet}>{words.noFigures}</p>;
  const grade = poorer(view.states[at - 1]?.grade ?? null, view.states[at]?.grade ?? null);
  const said = changesInWords(step.changes, grade);
  return (
    <div>
      <h4 className={styles.since}>{words.since}</h4>
      {said.length === 0 ? (
        <p>{words.same}</p>
      ) : (
        <ul>
          {said.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </div>
  );
}
