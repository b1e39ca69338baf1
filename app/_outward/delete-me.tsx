'use client';
/** Deletes oneself: first what would go and what stays, then one's own name written out. IO: HTTP. */
import { type FormEvent, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { askLeaving, deleteMe } from '#app/_api/outward.ts';
import plain from '#app/_enter/plain.module.css';
import { forgetDrafts } from '#app/_live/drafts.ts';
import { dropCopies } from '#app/_live/room-copies.ts';
import { Button } from '#app/_ui/button.tsx';
import { TextField } from '#app/_ui/field.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { LeavingView } from '#server/core/contract/outward.ts';
import { outwardWords } from '#words/outward.ts';
import { words as allWords } from '#words/shell.ts';
import styles from './outward.module.css';

const { person: words } = outwardWords;

export function DeleteMe() {
  const [leaving, setLeaving] = useState<LeavingView | null>(null);
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const look = async () => {
    setBusy(true);
    setTrouble(null);
    try {
      setLeaving(await askLeaving());
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    } finally {
      setBusy(false);
    }
  };
  return (
    <section className={`${plain.sheet} ${plain.form}`}>
      <h2>{words.endTitle}</h2>
      <p>{words.endText}</p>
      {leaving === null ? (
        <Button busy={busy} busyWord={words.looking} onClick={look}>
          {words.look}
        </Button>
      ) : (
        <>
          <p>{words.counts(leaving.pictures, leaving.remarks)}</p>
          <p className={plain.quiet}>{words.stays}</p>
          <Holds leaving={leaving} />
          {leaving.boards.length + leaving.groups.length === 0 ? (
            <Confirm name={leaving.name} onCancel={() => setLeaving(null)} />
          ) : null}
        </>
      )}
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </section>
  );
}

/** A board nobody owns would be nobody's to care for. */
function Holds({ leaving: { boards, groups } }: { leaving: LeavingView }) {
  if (boards.length + groups.length === 0) return null;
  return (
    <div>
      <p>{words.holds}</p>
      <ul className={styles.list}>
        {boards.map(({ id, title }) => (
          <li key={id}>
            <a href={`/boards/${encodeURIComponent(id)}`}>{words.boardNamed(title)}</a>
          </li>
        ))}
        {groups.map(({ id, name }) => (
          <li key={id}>
            <a href={`/groups/${encodeURIComponent(id)}`}>{words.groupNamed(name)}</a>
          </li>
        ))}
      </ul>
    </div>
  );
}

function Confirm({ name, onCancel }: { name: string; onCancel(): void }) {
  const [written, setWritten] = useState('');
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const go = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    setTrouble(null);
    try {
      await deleteMe(written);
      // Nothing of theirs stays on this device either.
      forgetDrafts();
      dropCopies(() => true);
      location.replace('/');
    } catch (thrown) {
      setBusy(false);
      setTrouble(sentenceOf(thrown));
    }
  };
  return (
    <form className={styles.form} onSubmit={go}>
      <TextField
        label={words.confirm(name)}
        value={written}
        autoComplete="off"
        required
        trouble={trouble}
        onChange={(event) => setWritten(event.target.value)}
      />
      <div className={styles.acts}>
        <Button type="submit" busy={busy} busyWord={words.going} disabled={written.trim() !== name.trim()}>
          {words.go}
        </Button>
        <Button weight="word" onClick={onCancel}>
          {allWords.cancel}
        </Button>
      </div>
    </form>
  );
}
