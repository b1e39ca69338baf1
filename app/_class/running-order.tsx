'use client';
/** Who had a turn, whose it is, who is still to come; nobody is forgotten. In the flow: live class -> [running-order]. */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { toCome } from '#server/core/class/state.ts';
import { classWords } from '#words/class.ts';
import styles from './class.module.css';
import { newestOfEach } from './turns.ts';
import { useRun } from './use-run.ts';

const { order: words } = classWords;

export function RunningOrder() {
  const { state, paintings } = useBoardLive().class;
  const run = useRun();
  const left = toCome(state);
  const nameOf = (pictureId: string) => paintings.find(({ id }) => id === pictureId)?.painter.name ?? null;
  const shown = state.order.filter((id) => nameOf(id) !== null);
  const inOrder = new Set(state.order.map((id) => paintings.find((each) => each.id === id)?.painter.id));
  const outside = newestOfEach(paintings).filter(({ painter }) => !inOrder.has(painter.id));
  const missing = left.flatMap((id) => nameOf(id) ?? []);
  return (
    <div className={styles.part}>
      <h2 className={styles.title}>{words.title}</h2>
      <ol className={styles.order}>
        {shown.map((id) => (
          <li key={id} aria-current={id === state.now?.pictureId ? 'step' : undefined}>
            <span>{nameOf(id)}</span>
            <span className={styles.note}>{standing(id === state.now?.pictureId, state.had.has(id))}</span>
          </li>
        ))}
      </ol>
      {state.now === null ? (
        <p className={styles.note}>{missing.length > 0 ? words.missing(missing.join(', ')) : words.allHad}</p>
      ) : null}
      {outside.length > 0 ? (
        <p className={styles.note}>{words.notIn(outside.map(({ painter }) => painter.name).join(', '))}</p>
      ) : null}
      {run && state.now === null && missing.length > 0 ? (
        <span>
          <Button onClick={run.goOn}>{words.goOn}</Button>
        </span>
      ) : null}
    </div>
  );
}

function standing(now: boolean, had: boolean): string {
  if (now) return words.now;
  return had ? words.had : words.toCome;
}
