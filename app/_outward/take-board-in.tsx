'use client';
/** A board taken in from a file, on the page of boards. IO: HTTP. */
import { useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { takeBoardIn } from '#app/_api/outward.ts';
import { Button, buttonClass } from '#app/_ui/button.tsx';
import { Dialog } from '#app/_ui/dialog.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { TakenBoard } from '#server/core/contract/outward.ts';
import { outwardWords } from '#words/outward.ts';
import { OneFile } from './one-file.tsx';
import styles from './outward.module.css';

const { board: fileWords, boards: words } = outwardWords;

export function TakeBoardIn() {
  const [open, setOpen] = useState(false);
  return (
    <>
      <Button onClick={() => setOpen(true)}>{words.open}</Button>
      <Dialog open={open} onClose={() => setOpen(false)} title={words.open}>
        <Taking />
      </Dialog>
    </>
  );
}

function Taking() {
  const [busy, setBusy] = useState(false);
  const [taken, setTaken] = useState<TakenBoard | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const take = async (file: File) => {
    setBusy(true);
    setTrouble(null);
    try {
      setTaken(await takeBoardIn(file));
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    } finally {
      setBusy(false);
    }
  };
  if (taken) {
    return (
      <div className={styles.form}>
        <Notice sentence={words.done(taken.title, taken.pictures)}>
          {taken.leftOut.length > 0 ? (
            <div>
              <p>{words.behind}</p>
              <ul className={styles.list}>
                {taken.leftOut.map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
            </div>
          ) : null}
        </Notice>
        <a className={buttonClass('main')} href={`/boards/${encodeURIComponent(taken.id)}`}>
          {words.look}
        </a>
      </div>
    );
  }
  return (
    <div className={styles.form}>
      <p>{words.text}</p>
      <OneFile
        label={fileWords.choose}
        accept=".zip,application/zip"
        weight="main"
        busy={busy}
        busyWord={words.taking}
        onFile={take}
      />
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </div>
  );
}
