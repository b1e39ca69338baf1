'use client';
/**
 * The remarks on the pictures that are shown, or on all: numbers as on the pins, answers under each.
 *
 * In the flow: live marks -> [remarks] -> list; news from others is also said aloud.
 */
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { MarkView } from '#app/_live/board-live-types.ts';
import { words } from '#app/_words/en-easel.ts';
import { useTools } from '#app/_workspace/tools.tsx';
import { threadsOf } from '#server/core/live/marks.ts';
import { Remark } from './remark.tsx';
import styles from './talk.module.css';
import { usePlaceWords } from './use-place-words.ts';

export function Remarks() {
  const { marks, ready, board, may, write } = useBoardLive();
  const { referenceId, paintingId, markId } = useTools();
  const placeWords = usePlaceWords();
  const choose = useChoose();
  const [all, setAll] = useState(false);
  const views = useMemo(() => new Map(marks.map((mark) => [mark.id, mark])), [marks]);
  const threads = useMemo(() => threadsOf([...marks]), [marks]);
  const shown = threads.filter(
    ({ mark }) => all || mark.pictureId === referenceId || mark.pictureId === paintingId,
  );
  const viewOf = ({ id }: { id: string }): MarkView[] => {
    const view = views.get(id);
    return view ? [view] : [];
  };
  return (
    <div className={styles.part}>
      <div className={styles.head}>
        <h2 className={styles.title}>{words.talk.remarks}</h2>
        {shown.length < threads.length || all ? (
          <button type="button" className={styles.word} aria-pressed={all} onClick={() => setAll(!all)}>
            {all ? words.talk.shownPictures : words.talk.allPictures}
          </button>
        ) : null}
      </div>
      {ready && shown.length === 0 ? (
        <p className={styles.note}>
          {words.talk.none} {words.talk.noneHow}
        </p>
      ) : null}
      <ol className={styles.remarks}>
        {shown.map(({ mark, replies }) =>
          viewOf(mark).map((view) => (
            <Remark
              key={view.id}
              mark={view}
              replies={replies.flatMap(viewOf)}
              where={placeWords(view)}
              chosen={view.id === markId}
              boardId={board.id}
              meId={board.me.id}
              mayAnswer={may.mark}
              write={write}
              choose={choose}
            />
          )),
        )}
      </ol>
      <Heard />
    </div>
  );
}

/** Opens a remark and puts its picture on the easel when it is not there. */
function useChoose(): (mark: MarkView | null) => void {
  const { board } = useBoardLive();
  const { setMarkId, setReferenceId, setPaintingId, setSide } = useTools();
  const { pictures } = board;
  return useCallback(
    (mark) => {
      setMarkId(mark?.id ?? null);
      const picture = pictures.find(({ id }) => id === mark?.pictureId);
      if (!picture) return;
      if (picture.kind === 'reference') setReferenceId(picture.id);
      else setPaintingId(picture.id);
      setSide(picture.kind);
    },
    [pictures, setMarkId, setReferenceId, setPaintingId, setSide],
  );
}

/** Says each new remark of somebody else to those who listen: who, where, what. */
function Heard() {
  const { marks, board, ready } = useBoardLive();
  const placeWords = usePlaceWords();
  const known = useRef<Set<string> | null>(null);
  const [sentence, setSentence] = useState('');
  useEffect(() => {
    if (!ready) return;
    const before = known.current;
    known.current = new Set(marks.map(({ id }) => id));
    const news = before ? marks.filter(({ id, author }) => !before.has(id) && author !== board.me.id) : [];
    const last = news.at(-1);
    if (last) setSentence(words.talk.heard(last.authorName, placeWords(last), last.text));
  }, [marks, board.me.id, ready, placeWords]);
  return (
    <p className="unseen" role="status">
      {sentence}
    </p>
  );
}
