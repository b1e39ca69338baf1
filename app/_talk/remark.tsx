'use client';
/**
 * One remark with its answers: who agrees, what became of it; chosen, it can be answered, changed and deleted.
 *
 * In the flow: remarks -> [remark].
 */
import { memo, type RefObject, useCallback, useEffect, useRef } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { MarkView, MarkWriters, Nod } from '#app/_live/mark-types.ts';
import { FreshSign } from '#app/_since/fresh-sign.tsx';
import { useSince } from '#app/_since/since-state.tsx';
import { useInView } from '#app/_since/use-in-view.ts';
import { late } from '#app/_ui/late.tsx';
import type { MarkState } from '#server/core/live/layout.ts';
import { words } from '#words/easel.ts';
import { Agreed, HideAct, NO_NODS, NodAct, type RemarkActWriters, StateActs } from './remark-acts.tsx';
import { Said } from './said.tsx';
import { Say } from './say.tsx';
import styles from './talk.module.css';

const AboutRemark = late(() =>
  import('#app/_decency/about-somebody.tsx').then((module) => module.AboutRemark),
);

export interface RemarkProps {
  mark: MarkView;
  replies: readonly MarkView[];
  /** Which picture and plane, in words. */
  where: string;
  state: MarkState;
  nods: readonly Nod[];
  chosen: boolean;
  boardId: string;
  /** Person id of who looks. */
  meId: string;
  mayAnswer: boolean;
  /** Whether this person says what becomes of remarks on this picture, and hides them. */
  mayJudge: boolean;
  write: MarkWriters & RemarkActWriters;
  /** Opens the remark and shows its picture; null closes it. */
  choose(mark: MarkView | null): void;
}

/** With hundreds of remarks, only those are drawn again that changed. */
function sameRemark(one: RemarkProps, two: RemarkProps): boolean {
  const { replies: before, ...others } = one;
  const keys = Object.keys(others) as (keyof typeof others)[]; // Object.keys widens the names.
  return (
    keys.every((key) => one[key] === two[key]) &&
    before.length === two.replies.length &&
    before.every((reply, at) => reply === two.replies[at])
  );
}

/** Kinds whose number stands in a box: they are drawn, not pinned. */
const isPinned = ({ kind }: MarkView) => kind === 'pin' || kind === 'reply';

export const Remark = memo(function Remark(props: RemarkProps) {
  const { mark, replies, where, state, nods, chosen, meId, write, choose } = props;
  const item = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (chosen) item.current?.scrollIntoView({ block: 'nearest' });
  }, [chosen]);
  useSeenOnce(item, props);
  return (
    <li ref={item} className={styles.remark} data-chosen={chosen || undefined} data-remark={mark.id}>
      <button
        type="button"
        className={styles.number}
        data-line={isPinned(mark) ? undefined : ''}
        aria-expanded={chosen}
        aria-label={words.talk.show(mark.number ?? 0)}
        onClick={() => choose(chosen ? null : mark)}
      >
        {mark.number}
      </button>
      <div className={styles.body}>
        {chosen ? null : <FreshSign mark={mark} replies={replies} />}
        <Said {...{ mark, where, state, meId, write }} open={chosen} gone={() => choose(null)} />
        <Agreed nods={nods} meId={meId} />
        <Acts {...props} />
        {chosen ? <Answers {...props} replies={replies} /> : null}
      </div>
    </li>
  );
}, sameRemark);

/** A remark in view has been seen; answers are in view only while it is open. */
function useSeenOnce(item: RefObject<HTMLLIElement | null>, { mark, replies, chosen }: RemarkProps) {
  const { seen } = useSince();
  const shown = (chosen ? [mark, ...replies] : [mark]).map(({ id }) => id).join();
  useInView(
    item,
    useCallback(() => seen(shown.split(',')), [seen, shown]),
  );
}

/** What one tap does. */
function Acts(props: RemarkProps) {
  const { mark, replies, state, nods, chosen, meId, mayAnswer, mayJudge, write, choose } = props;
  const answers = !chosen && (replies.length > 0 || mayAnswer);
  if (!(answers || mayAnswer || mayJudge || chosen)) return null;
  return (
    <div className={styles.acts}>
      {answers ? (
        <button type="button" className={styles.word} onClick={() => choose(mark)}>
          {replies.length > 0 ? words.talk.replies(replies.length) : words.talk.reply}
        </button>
      ) : null}
      {mayAnswer ? <NodAct {...{ mark, nods, meId, write }} /> : null}
      {mayJudge ? <StateActs {...{ mark, state, write }} /> : null}
      {mayJudge && (chosen || mark.sight === 'hidden') ? <HideAct {...{ mark, meId, write }} /> : null}
      {chosen ? <AboutRemark mark={mark} /> : null}
    </div>
  );
}

function Answers({ mark, replies, boardId, meId, mayAnswer, mayJudge, write }: RemarkProps) {
  const { nods } = useBoardLive();
  return (
    <>
      <ul className={styles.replies}>
        {replies.map((reply) => (
          <li key={reply.id}>
            <Said mark={reply} where={null} state="open" open {...{ meId, write }} gone={() => undefined} />
            <Agreed nods={nods.get(reply.id) ?? NO_NODS} meId={meId} />
            <div className={styles.acts}>
              {mayAnswer ? (
                <NodAct mark={reply} nods={nods.get(reply.id) ?? NO_NODS} {...{ meId, write }} />
              ) : null}
              {mayJudge ? <HideAct mark={reply} {...{ meId, write }} /> : null}
              <AboutRemark mark={reply} />
            </div>
          </li>
        ))}
      </ul>
      {mayAnswer ? (
        <Say
          draftKey={`reply/${boardId}/${mark.id}`}
          label={words.talk.replyTo(mark.authorName)}
          about={mark}
          send={(text) => write.addReply(mark, text)}
        />
      ) : null}
    </>
  );
}
