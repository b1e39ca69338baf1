'use client';
/**
 * The remarks on the pictures that are shown, or on all: numbers as on the pictures, open ones first, answers under each.
 *
 * In the flow: live marks -> [remarks] -> list; news from others is also said aloud.
 */
import { useCallback, useEffect, useRef, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { MarkView } from '#app/_live/mark-types.ts';
import { AllowSketch } from '#app/_marks/allow-sketch.tsx';
import { useMarkDesk } from '#app/_marks/mark-desk.tsx';
import { isNarrowed } from '#app/_marks/mark-filter.ts';
import { saidIn, useWhereWords } from '#app/_marks/use-mark-words.ts';
import { late } from '#app/_ui/late.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { words } from '#words/easel.ts';
import { markWords } from '#words/marks.ts';
import { FilterNow } from './filter-now.tsx';
import { Remark } from './remark.tsx';
import { NO_NODS } from './remark-acts.tsx';
import styles from './talk.module.css';
import { type Threads, useThreads } from './use-threads.ts';

const RemarkFilter = late(() => import('./remark-filter.tsx').then((module) => module.RemarkFilter));
const { filter: filterWords } = markWords;

export function Remarks() {
  const { ready, board } = useBoardLive();
  const { paintingId } = useTools();
  const { filter } = useMarkDesk();
  const threads = useThreads();
  const painting = board.pictures.find(({ id }) => id === paintingId);
  useAllOpen();
  return (
    <div className={styles.part}>
      <Head threads={threads} />
      {painting ? <AllowSketch painting={painting} /> : null}
      {ready && threads.shown.length === 0 ? (
        <p className={styles.note}>
          {isNarrowed(filter) && threads.authors.length > 0
            ? filterWords.none
            : `${words.talk.none} ${words.talk.noneHow}`}
        </p>
      ) : null}
      <List threads={threads} />
      <Heard />
    </div>
  );
}

function Head({ threads: { authors, elsewhere } }: { threads: Threads }) {
  const { filter, setFilter } = useMarkDesk();
  const [open, setOpen] = useState(false);
  const all = filter.pictures === 'all';
  return (
    <>
      <div className={styles.head}>
        <h2 className={styles.title}>{words.talk.remarks}</h2>
        <span className={styles.acts}>
          {elsewhere || all ? (
            <button
              type="button"
              className={styles.word}
              aria-pressed={all}
              onClick={() => setFilter({ ...filter, pictures: all ? 'these' : 'all' })}
            >
              {all ? words.talk.shownPictures : words.talk.allPictures}
            </button>
          ) : null}
          <button
            type="button"
            className={styles.word}
            aria-expanded={open}
            aria-controls={open ? 'remark-filter' : undefined}
            onClick={() => setOpen(!open)}
          >
            {filterWords.open}
          </button>
        </span>
      </div>
      {open ? <RemarkFilter id="remark-filter" authors={authors} /> : null}
      <FilterNow authors={authors} />
    </>
  );
}

function List({ threads: { shown } }: { threads: Threads }) {
  const { board, may, write, nods } = useBoardLive();
  const { markId } = useTools();
  const whereWords = useWhereWords();
  const choose = useChoose();
  return (
    <ol className={styles.remarks}>
      {shown.map(({ mark, replies, state }) => (
        <Remark
          key={mark.id}
          {...{ mark, replies, state, write, choose }}
          where={whereWords(mark)}
          nods={nods.get(mark.id) ?? NO_NODS}
          chosen={mark.id === markId}
          boardId={board.id}
          meId={board.me.id}
          mayAnswer={may.mark}
          mayJudge={may.remarksOn(mark.pictureId)}
        />
      ))}
    </ol>
  );
}

/** To list the remarks on all pictures, what is said of them must be here: which are hidden, what became of them. */
function useAllOpen() {
  const { board, paintingsOpen } = useBoardLive();
  const { filter } = useMarkDesk();
  const ids = board.pictures.filter(({ kind }) => kind === 'painting').map(({ id }) => id);
  const wanted = filter.pictures === 'all' ? ids.join() : '';
  const open = useRef(paintingsOpen);
  open.current = paintingsOpen;
  useEffect(() => {
    if (wanted) void open.current(wanted.split(','));
  }, [wanted]);
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
  const { marks, board, ready, remarksKnown } = useBoardLive();
  const whereWords = useWhereWords();
  const known = useRef<{ marks: Set<string>; pictures: Set<string> } | null>(null);
  const [sentence, setSentence] = useState('');
  const pictures = board.pictures.filter(({ id }) => remarksKnown(id)).map(({ id }) => id);
  const opened = pictures.join();
  useEffect(() => {
    if (!ready) return;
    const before = known.current;
    known.current = { marks: new Set(marks.map(({ id }) => id)), pictures: new Set(opened.split(',')) };
    // What comes with a picture that was just opened is no news.
    const news = marks.filter(({ id, author, pictureId }) => {
      return before?.pictures.has(pictureId) && !before.marks.has(id) && author !== board.me.id;
    });
    const last = news.at(-1);
    if (last) setSentence(words.talk.heard(last.authorName, whereWords(last), saidIn(last)));
  }, [marks, board.me.id, ready, opened, whereWords]);
  return (
    <p className="unseen" role="status">
      {sentence}
    </p>
  );
}
