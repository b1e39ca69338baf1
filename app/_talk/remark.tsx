'use client';
/** One remark with its answers; chosen, it can be answered, changed and deleted. In the flow: remarks -> [remark]. */
import { memo, useEffect, useRef, useState } from 'react';
import type { MarkView, MarkWriters } from '#app/_live/board-live-types.ts';
import { words } from '#app/_words/en-easel.ts';
import { dateTime } from '#app/_words/figures.ts';
import { Say } from './say.tsx';
import styles from './talk.module.css';

export interface RemarkProps {
  mark: MarkView;
  replies: readonly MarkView[];
  /** Which picture and plane, in words. */
  where: string;
  chosen: boolean;
  boardId: string;
  /** Person id of who looks. */
  meId: string;
  mayAnswer: boolean;
  write: MarkWriters;
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

export const Remark = memo(function Remark(props: RemarkProps) {
  const { mark, replies, where, chosen, boardId, mayAnswer, write, choose } = props;
  const item = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (chosen) item.current?.scrollIntoView({ block: 'nearest' });
  }, [chosen]);
  return (
    <li ref={item} className={styles.remark} data-chosen={chosen || undefined}>
      <button
        type="button"
        className={styles.number}
        data-line={mark.kind === 'stroke' || undefined}
        aria-expanded={chosen}
        aria-label={words.talk.show(mark.number ?? 0)}
        onClick={() => choose(chosen ? null : mark)}
      >
        {mark.number}
      </button>
      <div className={styles.body}>
        <Said {...props} where={where} open={chosen} />
        {!chosen && (replies.length > 0 || mayAnswer) ? (
          <button type="button" className={styles.word} onClick={() => choose(mark)}>
            {replies.length > 0 ? words.talk.replies(replies.length) : words.talk.reply}
          </button>
        ) : null}
        {chosen ? (
          <>
            <ul className={styles.replies}>
              {replies.map((reply) => (
                <li key={reply.id}>
                  <Said {...props} mark={reply} where={null} open />
                </li>
              ))}
            </ul>
            {mayAnswer ? (
              <Say
                draftKey={`reply/${boardId}/${mark.id}`}
                label={words.talk.replyTo(mark.authorName)}
                send={(text) => write.addReply(mark, text)}
              />
            ) : null}
          </>
        ) : null}
      </div>
    </li>
  );
}, sameRemark);

interface SaidProps extends Pick<RemarkProps, 'mark' | 'meId' | 'write' | 'choose'> {
  where: string | null;
  open: boolean;
}

/** The words of one mark with who said them and when; its author may change them. */
function Said({ mark, where, open, meId, write, choose }: SaidProps) {
  const [changing, setChanging] = useState(false);
  const own = mark.author === meId;
  const remove = () => {
    write.deleteMark(mark.id);
    if (mark.kind !== 'reply') choose(null);
  };
  return (
    <>
      {changing ? (
        <Say
          draftKey={`change/${mark.id}`}
          label={words.talk.change}
          first={mark.text}
          sendWord={words.talk.keep}
          send={(text) => {
            write.rewriteMark(mark.id, text);
            setChanging(false);
          }}
          cancel={() => setChanging(false)}
        />
      ) : (
        <p className={styles.text}>
          {mark.text || <span className={styles.note}>{mark.kind === 'stroke' ? words.talk.line : ''}</span>}
        </p>
      )}
      <p className={styles.note}>
        {[mark.authorName, where, dateTime(new Date(mark.at).toISOString())].filter(Boolean).join(' · ')}
      </p>
      {open && mark.mine && !changing ? (
        <p className={styles.acts}>
          {own ? (
            <button type="button" className={styles.word} onClick={() => setChanging(true)}>
              {mark.text ? words.talk.change : words.talk.addWords}
            </button>
          ) : null}
          <button type="button" className={styles.word} onClick={remove}>
            {words.talk.remove}
          </button>
        </p>
      ) : null}
    </>
  );
}
