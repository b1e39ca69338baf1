'use client';
/** Deleting a board: its title is written to be sure. IO: HTTP. */
import { type FormEvent, useState } from 'react';
import { deleteBoard, sentenceOf } from '#app/_api/client.ts';
import { Button } from '#app/_ui/button.tsx';
import { Dialog } from '#app/_ui/dialog.tsx';
import { TextField } from '#app/_ui/field.tsx';
import type { BoardView } from '#server/core/contract/responses.ts';
import { words } from '#words/shell.ts';
import styles from './board-header.module.css';

interface DeleteBoardProps {
  board: BoardView;
  open: boolean;
  onClose(): void;
}

export function DeleteBoard({ board, open, onClose }: DeleteBoardProps) {
  return (
    <Dialog open={open} onClose={onClose} title={words.remove.title}>
      <Sure board={board} />
    </Dialog>
  );
}

function Sure({ board }: { board: BoardView }) {
  const [written, setWritten] = useState('');
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const remove = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    try {
      await deleteBoard(board.id);
      location.assign('/');
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
      setBusy(false);
    }
  };
  return (
    <form onSubmit={remove} className={styles.sure}>
      <p>{words.remove.sure}</p>
      <TextField
        label={words.remove.type(board.title)}
        value={written}
        autoComplete="off"
        data-autofocus
        trouble={trouble}
        onChange={(event) => setWritten(event.target.value)}
      />
      <Button
        weight="main"
        type="submit"
        busy={busy}
        busyWord={words.remove.removing}
        disabled={written.trim() !== board.title.trim()}
      >
        {words.remove.button}
      </Button>
    </form>
  );
}
