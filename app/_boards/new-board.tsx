'use client';
/** Makes a board from a title, then opens it. IO: HTTP. */
import { useState } from 'react';
import { createBoard } from '#app/_api/client.ts';
import { useGoing } from '#app/_api/use-going.ts';
import { Button } from '#app/_ui/button.tsx';
import { Dialog } from '#app/_ui/dialog.tsx';
import { TextField } from '#app/_ui/field.tsx';
import { words } from '#words/shell.ts';
import styles from './boards.module.css';

/** @param group Id of the group it is for, if any. */
export function NewBoard({ group }: { group?: string }) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <Button weight="main" onClick={() => setOpen(true)}>
        {words.boards.newBoard}
      </Button>
      <Dialog open={open} onClose={() => setOpen(false)} title={words.boards.newBoard}>
        <TitleForm {...(group === undefined ? {} : { group })} />
      </Dialog>
    </>
  );
}

function TitleForm({ group }: { group?: string }) {
  const [title, setTitle] = useState('');
  const { busy, trouble, onSubmit } = useGoing(async () => {
    const { id } = await createBoard(title, group);
    location.assign(`/boards/${encodeURIComponent(id)}`);
  });
  return (
    <form className={styles.form} onSubmit={onSubmit}>
      <TextField
        label={words.boards.newTitle}
        hint={words.boards.newHint}
        trouble={trouble}
        value={title}
        maxLength={120}
        required
        data-autofocus
        onChange={(event) => setTitle(event.target.value)}
      />
      <Button weight="main" type="submit" busy={busy} busyWord={words.boards.making}>
        {words.boards.make}
      </Button>
    </form>
  );
}
