'use client';
/**
 * The board screen put together: easel, tray, ladder and talk round one live board.
 *
 * In the flow: page -> [workspace] -> easel, ladder, talk, planes, people, posting. It keeps the board as last
 * fetched and fetches it again whenever the server says that pictures or people changed. IO: HTTP, live rooms.
 */
import { useCallback, useEffect, useState } from 'react';
import { fetchBoard, Refused } from '#app/_api/client.ts';
import { CarryDeskProvider } from '#app/_carry/carry-desk.tsx';
import { ClassTools } from '#app/_class/class-tools.tsx';
import { Easel } from '#app/_easel/easel.tsx';
import { Ladder } from '#app/_ladder/ladder.tsx';
import { BoardLiveProvider, useBoardLive } from '#app/_live/board-live.tsx';
import { LookPanel } from '#app/_look/look-panel.tsx';
import { useOpenPanel } from '#app/_look/use-panel-switches.ts';
import { MarkDeskProvider } from '#app/_marks/mark-desk.tsx';
import { BoardMeasuresProvider } from '#app/_measures/board-measures.tsx';
import { mayPost, mayPostReference } from '#app/_people/roles-on-board.ts';
import { PhotoDeskProvider } from '#app/_photo/photo-desk.tsx';
import { FileChooser } from '#app/_post/file-chooser.tsx';
import { PostingProvider, usePost } from '#app/_post/posting.tsx';
import { PostingProgress } from '#app/_post/posting-progress.tsx';
import { ProposeDeskProvider } from '#app/_propose/propose-desk.tsx';
import { LineState } from '#app/_together/line-state.tsx';
import { TogetherProvider } from '#app/_together/together.tsx';
import { late, useRestWhenIdle } from '#app/_ui/late.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { BoardView } from '#server/core/contract/responses.ts';
import type { BoardRole } from '#server/core/contract/roles.ts';
import { classWords } from '#words/class.ts';
import { words } from '#words/shell.ts';
import { BoardPeople, BoardTitle } from './board-header.tsx';
import { isGrey } from './looking.ts';
import { PictureFilters } from './picture-filters.tsx';
import { Shelf } from './shelf.tsx';
import { SidePanels } from './side-panels.tsx';
import { useTools } from './tools-here.tsx';
import { ToolsProvider } from './tools-provider.tsx';
import { Tray } from './tray.tsx';
import styles from './workspace.module.css';

const ClassStrip = late(() => import('#app/_class/class-strip.tsx').then((module) => module.ClassStrip));

/** @param veiled Whether a class keeps references and figures back as the page is made. */
export function Workspace({ board: first, veiled = false }: { board: BoardView; veiled?: boolean }) {
  const [board, setBoard] = useState(first);
  const [gone, setGone] = useState<string | null>(null);
  useRestWhenIdle();
  const refresh = useCallback(async () => {
    try {
      setBoard(await fetchBoard(first.id));
    } catch (thrown) {
      // Without an answer the board stays as it is; the line's own state says so.
      if (thrown instanceof Refused && thrown.code !== 'no-answer') setGone(thrown.message);
    }
  }, [first.id]);
  return (
    <ToolsProvider pictures={board.pictures} me={board.me.id}>
      <MarkDeskProvider>
        <BoardLiveProvider board={board} veiled={veiled}>
          <ClassTools>
            <BoardMeasuresProvider boardId={board.id}>
              <PhotoDeskProvider>
                <ProposeDeskProvider>
                  <CarryDeskProvider>
                    <TogetherProvider>
                      <PostingOnBoard board={board} refresh={refresh} gone={gone} />
                    </TogetherProvider>
                  </CarryDeskProvider>
                </ProposeDeskProvider>
              </PhotoDeskProvider>
            </BoardMeasuresProvider>
          </ClassTools>
        </BoardLiveProvider>
      </MarkDeskProvider>
    </ToolsProvider>
  );
}

interface OnBoard {
  board: BoardView;
  refresh(): Promise<void>;
  /** The server's sentence when the board can no longer be read. */
  gone: string | null;
}

function PostingOnBoard({ board, refresh, gone }: OnBoard) {
  const { setReferenceId, setPaintingId, setSide } = useTools();
  const { boardChanged, board: shown } = useBoardLive();
  useEffect(() => {
    if (boardChanged > 0) void refresh();
  }, [boardChanged, refresh]);
  const onPosted = useCallback(
    (pictureId: string, kind: 'reference' | 'painting') => {
      if (kind === 'reference') setReferenceId(pictureId);
      else setPaintingId(pictureId);
      setSide(kind);
      void refresh();
    },
    [setReferenceId, setPaintingId, setSide, refresh],
  );
  return (
    <PostingProvider board={board} allowed={mayPost(board.role)} onPosted={onPosted}>
      <Screen board={shown} refresh={refresh} gone={gone} />
    </PostingProvider>
  );
}

function Screen({ board, refresh, gone }: OnBoard) {
  const { veiled, known, silentId, state } = useBoardLive().class;
  const inClass = known ? state.now !== null : veiled;
  const looking = useOpenPanel() !== null && !veiled;
  const [lower, setLower] = useState<'ladder' | 'side'>('ladder');
  return (
    <div
      className={styles.screen}
      data-lower={veiled ? 'side' : lower}
      data-looking={looking || undefined}
      data-ladder={veiled || board.pictures.length === 0 ? undefined : ''}
    >
      <a className="unseen" href="#easel">
        {words.skipToBoard}
      </a>
      <PictureFilters />
      <SeenThrough />
      <div className={styles.title}>
        <BoardTitle board={board} refresh={refresh} />
      </div>
      <div className={styles.shelf}>
        {silentId === null && (known || !veiled) ? <Shelf board={board} refresh={refresh} /> : null}
      </div>
      <div className={styles.people}>
        <BoardPeople board={board} refresh={refresh} />
      </div>
      <Notes gone={gone} />
      {inClass ? <ClassStrip className={styles.class} /> : null}
      <main id="easel" className={styles.easel} aria-label={words.board.easel}>
        <OnEasel board={board} />
      </main>
      <div className={styles.ladder} id="panel-ladder">
        {veiled ? null : <Ladder />}
      </div>
      {veiled ? null : <LookPanel className={styles.looking} />}
      <SidePanels board={board} lower={lower} onLower={setLower} />
    </div>
  );
}

/**
 * The chosen grey goes on the root, so that sheets and the page's own edge follow it, and so does whether pictures are
 * seen without colour: as a word there, which touches the pictures alone; a property would be worked out for all.
 */
function SeenThrough() {
  const { surround, squint } = useTools();
  const grey = isGrey(squint);
  useEffect(() => {
    document.documentElement.toggleAttribute('data-grey', grey);
    return () => document.documentElement.removeAttribute('data-grey');
  }, [grey]);
  useEffect(() => {
    document.documentElement.dataset.surround = surround;
    return () => {
      delete document.documentElement.dataset.surround;
    };
  }, [surround]);
  return null;
}

/** What must be said across the whole screen: pictures on their way, what was refused, the line. */
function Notes({ gone }: { gone: string | null }) {
  const { closedSentence } = useBoardLive();
  const { queue } = usePost();
  const closed = gone ?? closedSentence;
  return (
    <div className={styles.notes}>
      {closed ? (
        <Notice trouble sentence={closed}>
          <a href="/">{words.enter.back}</a>
        </Notice>
      ) : (
        <LineState />
      )}
      <PostingProgress queue={queue} />
    </div>
  );
}

/** In a silent look the painting of the turn alone; who may not see it is told so. */
function OnEasel({ board }: { board: BoardView }) {
  const { veiled, known } = useBoardLive().class;
  if (veiled && !known) return null;
  if (board.pictures.length > 0) return <Easel tray={<Tray />} />;
  if (veiled) return <p className={styles.empty}>{classWords.notShown}</p>;
  return <EmptyEasel role={board.role} />;
}

function EmptyEasel({ role }: { role: BoardRole }) {
  const { allowed, take } = usePost();
  return (
    <div className={styles.empty}>
      <h2>{allowed ? words.board.noPicturesTitle : words.boards.bare}</h2>
      {allowed ? (
        <>
          <p>{mayPostReference(role) ? words.board.noPictures : words.board.noPicturesPainter}</p>
          <FileChooser onFiles={take} />
          <p>{words.post.kinds}</p>
        </>
      ) : null}
    </div>
  );
}
