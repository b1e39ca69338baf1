'use client';
/**
 * What the server took back: its sentence, and the words that were not kept, to be copied. In the flow: live board ->
 * [refusals] -> above the bar, where everybody sees it.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { copyText } from '#app/_ui/copy-text.ts';
import { words } from '#words/easel.ts';
import styles from './easel-bar.module.css';

export function Refusals() {
  const { refusals, dismissRefusal } = useBoardLive();
  return refusals.map(({ id, sentence, draft }) => (
    <div key={id} className={styles.refusal} role="alert">
      <p>
        <strong>{words.talk.refusedTitle}</strong> {sentence}
      </p>
      {draft ? (
        <p>
          {words.talk.draftKept} <q>{draft}</q>
        </p>
      ) : null}
      <div className={styles.buttons}>
        {draft ? (
          <Button weight="word" onClick={() => void copyText(draft)}>
            {words.talk.copy}
          </Button>
        ) : null}
        <Button weight="word" onClick={() => dismissRefusal(id)}>
          {words.talk.dismiss}
        </Button>
      </div>
    </div>
  ));
}
