'use client';
/**
 * Says that the reference photo is not to be trusted in one plane, and why. In the flow: plane-row <-> [plane-trust] <->
 * live `unreliable`; the target is then drawn quieter and the painting is not compared with it there.
 */
import { type FormEvent, useState } from 'react';
import { troubleOf } from '#app/_easel/outline-trouble.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PlaneView } from '#app/_live/board-live-types.ts';
import { ladderWords } from '#words/ladder.ts';
import { sceneWords } from '#words/scene.ts';
import styles from './planes.module.css';

const { trust: words } = sceneWords;
const LONGEST_REASON = 400;

/** Seen by all once it is said; said by those who may set the scene up. */
export function PlaneTrust({ plane }: { plane: PlaneView }) {
  const { may, write, board } = useBoardLive();
  const [asked, setAsked] = useState(false);
  const { unreliable } = plane;
  const hasReference = board.pictures.some(({ kind }) => kind === 'reference');
  if (unreliable === null && !(may.setup && hasReference)) return null;
  if (may.setup && asked) return <Reason plane={plane} done={() => setAsked(false)} />;
  return (
    <div className={styles.trust}>
      {unreliable === null ? null : <p>{ladderWords.untrusted(unreliable)}</p>}
      {may.setup ? (
        <div className={styles.moves}>
          <button type="button" onClick={() => setAsked(true)}>
            {unreliable === null ? words.ask : words.change}
          </button>
          {unreliable === null ? null : (
            <button type="button" onClick={() => write.setUnreliable(plane.id, null)}>
              {words.again}
            </button>
          )}
        </div>
      ) : null}
    </div>
  );
}

function Reason({ plane, done }: { plane: PlaneView; done(): void }) {
  const { write } = useBoardLive();
  const [reason, setReason] = useState(plane.unreliable ?? '');
  const [trouble, setTrouble] = useState<string | null>(null);
  const keep = (event: FormEvent) => {
    event.preventDefault();
    const failed = troubleOf(() => write.setUnreliable(plane.id, reason.trim()));
    setTrouble(failed);
    if (failed === null) done();
  };
  return (
    <form className={styles.trust} onSubmit={keep}>
      <label className={styles.reason}>
        <span>{words.why}</span>
        <textarea
          rows={2}
          value={reason}
          maxLength={LONGEST_REASON}
          placeholder={words.whyHint}
          onChange={({ target }) => setReason(target.value)}
        />
      </label>
      <p>{words.effect}</p>
      {trouble ? <p role="alert">{trouble}</p> : null}
      <div className={styles.moves}>
        <button type="submit">{plane.unreliable === null ? words.keep : words.keepChange}</button>
        <button type="button" onClick={done}>
          {words.leave}
        </button>
      </div>
    </form>
  );
}
