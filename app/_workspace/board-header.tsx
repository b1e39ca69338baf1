'use client';
/** The line over the easel: way back, title (written anew by whoever runs the board), more; and the people. */
import { type FormEvent, useRef, useState } from 'react';
import { renameBoard, sentenceOf } from '#app/_api/client.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { People } from '#app/_people/people.tsx';
import { runsBoard } from '#app/_people/roles-on-board.ts';
import { Button } from '#app/_ui/button.tsx';
import { late, useEver } from '#app/_ui/late.tsx';
import type { BoardView } from '#server/core/contract/responses.ts';
import { words } from '#words/shell.ts';
import styles from './board-header.module.css';
import { type BoardKeys, useBoardKeys } from './use-board-keys.ts';

const DeleteBoard = late(() => import('./delete-board.tsx').then((module) => module.DeleteBoard));
const KeyList = late(() => import('./key-list.tsx').then((module) => module.KeyList));

interface HeaderProps {
  board: BoardView;
  refresh(): Promise<void>;
}

export function BoardTitle({ board, refresh }: HeaderProps) {
  const keys = useBoardKeys();
  const [writing, setWriting] = useState(false);
  const keysAsked = useEver(keys.listOpen);
  return (
    <header className={styles.title}>
      <a className={styles.home} href="/">
        {words.board.toBoards}
      </a>
      {writing ? (
        <Rename board={board} refresh={refresh} onDone={() => setWriting(false)} />
      ) : (
        <>
          <div className={styles.name}>
            <h1 title={board.title}>{board.title}</h1>
          </div>
          <More board={board} keys={keys} onRename={() => setWriting(true)} />
        </>
      )}
      {keysAsked ? <KeyList keys={keys} /> : null}
    </header>
  );
}

function Rename({ board, refresh, onDone }: HeaderProps & { onDone(): void }) {
  const [title, setTitle] = useState(board.title);
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    try {
      await renameBoard(board.id, title);
      await refresh();
      onDone();
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
      setBusy(false);
    }
  };
  return (
    <form className={styles.rename} onSubmit={keep} onKeyDown={(event) => event.key === 'Escape' && onDone()}>
      <input
        aria-label={words.board.renameField}
        value={title}
        maxLength={120}
        required
        // biome-ignore lint/a11y/noAutofocus: the person just asked to write here.
        autoFocus
        onChange={(event) => setTitle(event.target.value)}
      />
      <Button weight="main" type="submit" busy={busy}>
        {words.board.save}
      </Button>
      <Button weight="word" onClick={onDone}>
        {words.cancel}
      </Button>
      <span role="alert">{trouble}</span>
    </form>
  );
}

function More({ board, keys, onRename }: { board: BoardView; keys: BoardKeys; onRename(): void }) {
  const menu = useRef<HTMLDetailsElement>(null);
  const [deleting, setDeleting] = useState(false);
  const deletingAsked = useEver(deleting);
  const choose = (act: () => void) => () => {
    menu.current?.removeAttribute('open');
    act();
  };
  const leave = (event: React.FocusEvent) => {
    if (!menu.current?.contains(event.relatedTarget)) menu.current?.removeAttribute('open');
  };
  const runs = runsBoard(board.role);
  return (
    <>
      <details ref={menu} className={styles.more} onBlur={leave}>
        <summary>{words.board.more}</summary>
        <div className={styles.menu}>
          {runs ? (
            <button type="button" onClick={choose(onRename)}>
              {words.board.rename}
            </button>
          ) : null}
          <button type="button" onClick={choose(() => keys.setListOpen(true))}>
            {words.board.keys}
          </button>
          <a href={`/boards/${encodeURIComponent(board.id)}/take-away`}>{words.board.takeAway}</a>
          {runs ? (
            <button type="button" onClick={choose(() => setDeleting(true))}>
              {words.board.remove}
            </button>
          ) : null}
        </div>
      </details>
      {deletingAsked ? (
        <DeleteBoard board={board} open={deleting} onClose={() => setDeleting(false)} />
      ) : null}
    </>
  );
}

export function BoardPeople({ board, refresh }: HeaderProps) {
  const { people } = useBoardLive();
  return (
    <div className={styles.people}>
      <People board={board} here={people} onChanged={() => void refresh()} />
    </div>
  );
}
