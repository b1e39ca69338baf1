'use client';
/**
 * Which target paintings are held against, and the plans that were taken: who, when, by what name; each can be taken again.
 *
 * In the flow: setup room -> [kept-plans] -> `target`, `kept` of the same.
 */
import { useBoardLive, useRoomDocument } from '#app/_live/board-live.tsx';
import { PerDocument } from '#app/_live/read-board.ts';
import { Button } from '#app/_ui/button.tsx';
import { dateTime } from '#app/_words/figures.ts';
import {
  forgetKept,
  type KeptPlan,
  readKept,
  readTaken,
  renameKept,
  takeAgain,
} from '#server/core/live/plan/taken-plan.ts';
import { planLadderWords } from '#words/plan-ladder.ts';
import styles from './planned.module.css';

const { kept: words, name: nameWord } = planLadderWords;
const keptIn = new PerDocument((doc) => readKept(doc));

/** The newest of the kept plans whose rungs are those that count now. */
function takenNow(kept: readonly KeptPlan[], ladder: ReturnType<typeof readTaken>): string | null {
  const now = JSON.stringify(ladder);
  return kept.find((plan) => JSON.stringify(plan.ladder) === now)?.id ?? null;
}

export function KeptPlans() {
  const doc = useRoomDocument('setup');
  if (!doc) return null;
  const kept = keptIn.of(doc);
  if (kept.length === 0) return null;
  const now = takenNow(kept, readTaken(doc));
  return (
    <section className={styles.lines} aria-labelledby="kept-plans">
      <h2 id="kept-plans">{words.title}</h2>
      <ol className={styles.kept}>
        {kept.map((plan) => (
          <Kept key={plan.id} plan={plan} isNow={plan.id === now} />
        ))}
      </ol>
    </section>
  );
}

function Kept({ plan, isNow }: { plan: KeptPlan; isNow: boolean }) {
  const { board, may } = useBoardLive();
  const doc = useRoomDocument('setup');
  const who = [board.owner, board.me, ...board.members].find(({ id }) => id === plan.by)?.name;
  const called = plan.name || words.by(who ?? words.somebody, dateTime(new Date(plan.at).toISOString()));
  if (!doc) return null;
  return (
    <li>
      {may.setup ? (
        <input
          key={plan.name}
          aria-label={nameWord}
          placeholder={words.unnamed}
          maxLength={80}
          defaultValue={plan.name}
          onBlur={({ target }) => {
            const name = target.value.trim();
            if (name !== plan.name) renameKept(doc, plan.id, name);
          }}
          onKeyDown={({ key, currentTarget }) => {
            if (key === 'Enter') currentTarget.blur();
          }}
        />
      ) : (
        <p>{plan.name || words.unnamed}</p>
      )}
      <p className={styles.quiet}>
        {words.by(who ?? words.somebody, dateTime(new Date(plan.at).toISOString()))}
        {isNow ? ` · ${words.now}` : ''}
      </p>
      {may.setup ? (
        <div className={styles.acts}>
          {isNow ? null : (
            <Button weight="word" aria-label={words.againOf(called)} onClick={() => takeAgain(doc, plan.id)}>
              {words.again}
            </Button>
          )}
          <Button weight="word" aria-label={words.forgetOf(called)} onClick={() => forgetKept(doc, plan.id)}>
            {words.forget}
          </Button>
        </div>
      ) : null}
    </li>
  );
}
