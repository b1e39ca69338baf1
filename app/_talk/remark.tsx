'use client';
/** One remark with its answers; chosen, it can be answered, changed and deleted. In the flow: remarks -> [remark]. */
import { useEffect, useRef, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { MarkView } from '#app/_live/board-live-types.ts';
import { words } from '#app/_words/en-easel.ts';
import { dateTime } from '#app/_words/figures.ts';
import { useTools } from '#app/_workspace/tools.tsx';
import { Say } from './say.tsx';
import styles from './talk.module.css';
import { usePlaceWords } from './use-place-words.ts';

export function Remark({ mark, replies }: { mark: MarkView; replies: readonly MarkView[] }) {
  const { may, write, board } = useBoardLive();
  const { markId, setMarkId } = useTools();
  const show = useShowOnPicture();
  const placeWords = usePlaceWords();
  const item = useRef<HTMLLIElement>(null);
  const chosen = markId === mark.id;
  useEffect(() => {
    if (chosen) item.current?.scrollIntoView({ block: 'nearest' });
  }, [chosen]);
  const choose = () => {
    if (chosen) return setMarkId(null);
    show(mark);
    setMarkId(mark.id);
  };
  return (
    <li ref={item} className={styles.remark} data-chosen={chosen || undefined}>
      <button
        type="button"
        className={styles.number}
        data-line={mark.kind === 'stroke' || undefined}
        aria-expanded={chosen}
        aria-label={words.talk.show(mark.number ?? 0)}
        onClick={choose}
      >
        {mark.number}
      </button>
      <div className={styles.body}>
        <Said mark={mark} where={placeWords(mark)} open={chosen} />
        {replies.length > 0 && !chosen ? (
          <button type="button" className={styles.word} onClick={choose}>
            {words.talk.replies(replies.length)}
          </button>
        ) : null}
        {chosen ? (
          <>
            <ul className={styles.replies}>
              {replies.map((reply) => (
                <li key={reply.id}>
                  <Said mark={reply} where={null} open />
                </li>
              ))}
            </ul>
            {may.mark ? (
              <Say
                draftKey={`reply/${board.id}/${mark.id}`}
                label={words.talk.replyTo(mark.authorName)}
                send={(text) => write.addReply(mark, text)}
              />
            ) : null}
          </>
        ) : null}
      </div>
    </li>
  );
}

/** Puts the mark's picture on the easel when it is not there. */
function useShowOnPicture() {
  const { board } = useBoardLive();
  const { setReferenceId, setPaintingId, setSide } = useTools();
  return ({ pictureId }: MarkView) => {
    const picture = board.pictures.find(({ id }) => id === pictureId);
    if (!picture) return;
    if (picture.kind === 'reference') setReferenceId(pictureId);
    else setPaintingId(pictureId);
    setSide(picture.kind);
  };
}

/** The words of one mark with who said them and when; its author may change them. */
function Said({ mark, where, open }: { mark: MarkView; where: string | null; open: boolean }) {
  const { write, board } = useBoardLive();
  const { setMarkId } = useTools();
  const [changing, setChanging] = useState(false);
  const own = mark.author === board.me.id;
  const remove = () => {
    write.deleteMark(mark.id);
    if (mark.kind !== 'reply') setMarkId(null);
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
