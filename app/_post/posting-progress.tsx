'use client';
/** Pictures on their way, one line each, above the easel and never over it. */
import { Button } from '#app/_ui/button.tsx';
import { percent } from '#app/_words/figures.ts';
import { words } from '#words/shell.ts';
import styles from './post.module.css';
import type { Posting } from './posting-queue.ts';
import type { PostingQueue } from './use-posting.ts';

export function PostingProgress({ queue }: { queue: PostingQueue }) {
  if (queue.postings.length === 0) return null;
  return (
    <section className={styles.progress} aria-label={words.post.progressLabel}>
      {queue.postings.map((posting) => (
        <Row key={posting.draft.key} posting={posting} queue={queue} />
      ))}
    </section>
  );
}

function stageText({ at }: Posting): string {
  switch (at.stage) {
    case 'waiting':
      return words.post.waiting;
    case 'sending':
      return at.share < 1 ? words.post.sending(percent(at.share)) : words.post.taking;
    case 'done':
      return words.post.done;
    case 'stopped':
      return words.post.cancelled;
    case 'refused':
      return at.sentence;
  }
}

function Row({ posting, queue }: { posting: Posting; queue: PostingQueue }) {
  const { draft, at } = posting;
  const under = at.stage === 'sending' || at.stage === 'waiting';
  const again = at.stage === 'refused' || at.stage === 'stopped';
  const name = draft.file.name;
  return (
    <div className={styles.row}>
      <strong title={name}>{name}</strong>
      {under ? (
        <progress
          aria-label={name}
          max={1}
          {...(at.stage === 'sending' && at.share < 1
            ? { value: at.share }
            : at.stage === 'waiting'
              ? { value: 0 }
              : {})}
        />
      ) : null}
      <span className={under ? undefined : styles.refused} role={at.stage === 'refused' ? 'alert' : 'status'}>
        {stageText(posting)}
      </span>
      <span className={styles.rowActs}>
        {under ? (
          <Button weight="word" onClick={() => queue.stop(draft.key)}>
            {words.post.stop}
          </Button>
        ) : null}
        {again ? (
          <Button weight="word" onClick={() => queue.again(draft.key)}>
            {words.tryAgain}
          </Button>
        ) : null}
        {under ? null : (
          <Button weight="word" onClick={() => queue.putAway(draft.key)}>
            {words.post.dismiss}
          </Button>
        )}
      </span>
    </div>
  );
}
