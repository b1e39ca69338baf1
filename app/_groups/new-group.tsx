'use client';
/** Makes a group from a name, then opens it. IO: HTTP. */
import { type FormEvent, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { createGroup } from '#app/_api/people.ts';
import styles from '#app/_boards/boards.module.css';
import { Button } from '#app/_ui/button.tsx';
import { Dialog } from '#app/_ui/dialog.tsx';
import { TextField } from '#app/_ui/field.tsx';
import { words } from '#app/_words/en.ts';

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
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const make = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    setTrouble(null);
    try {
      const { id } = await createGroup(name);
      location.assign(`/groups/${encodeURIComponent(id)}`);
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
      setBusy(false);
    }
  };
  return (
    <form className={styles.form} onSubmit={make}>
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
