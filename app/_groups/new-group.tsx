'use client';
/** Makes a group from a name, then opens it. IO: HTTP. */
import { useState } from 'react';
import { createGroup } from '#app/_api/people.ts';
import { useGoing } from '#app/_api/use-going.ts';
import styles from '#app/_boards/boards.module.css';
import { Button } from '#app/_ui/button.tsx';
import { Dialog } from '#app/_ui/dialog.tsx';
import { TextField } from '#app/_ui/field.tsx';
import { words } from '#words/shell.ts';

export function NewGroup() {
  const [open, setOpen] = useState(false);
  return (
    <>
      <Button onClick={() => setOpen(true)}>{words.people.groups.make}</Button>
      <Dialog open={open} onClose={() => setOpen(false)} title={words.people.groups.make}>
        <NameForm />
      </Dialog>
    </>
  );
}

function NameForm() {
  const [name, setName] = useState('');
  const { busy, trouble, onSubmit } = useGoing(async () => {
    const { id } = await createGroup(name);
    location.assign(`/groups/${encodeURIComponent(id)}`);
  });
  return (
    <form className={styles.form} onSubmit={onSubmit}>
      <TextField
        label={words.people.groups.name}
        hint={words.people.groups.nameHint}
        trouble={trouble}
        value={name}
        maxLength={120}
        required
        data-autofocus
        onChange={(event) => setName(event.target.value)}
      />
      <Button weight="main" type="submit" busy={busy} busyWord={words.people.groups.making}>
        {words.people.groups.makeIt}
      </Button>
    </form>
  );
}
