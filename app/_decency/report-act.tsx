'use client';
/** Reports a remark, a picture or somebody in a few words, and says where it goes. IO: HTTP. */
import { useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { report } from '#app/_api/decency.ts';
import { Button } from '#app/_ui/button.tsx';
import { Dialog } from '#app/_ui/dialog.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import type { Reported } from '#server/core/contract/decency.ts';
import { decencyWords } from '#words/decency.ts';
import styles from './decency.module.css';

const { report: words } = decencyWords;

interface ReportActProps {
  boardId: string;
  about: Reported;
  /** Of the remark, the picture or the person. */
  id: string;
  /** Whose it is. */
  name: string;
}

export function ReportAct(props: ReportActProps) {
  const [open, setOpen] = useState(false);
  const { about, name } = props;
  return (
    <>
      <Button
        weight="word"
        aria-label={about === 'person' ? words.person(name) : words.label(name)}
        onClick={() => setOpen(true)}
      >
        {words.act}
      </Button>
      <Dialog open={open} onClose={() => setOpen(false)} title={words.title[about]}>
        <ReportForm {...props} />
      </Dialog>
    </>
  );
}

function ReportForm({ boardId, about, id }: ReportActProps) {
  const [said, setSaid] = useState('');
  const [busy, setBusy] = useState(false);
  const [sent, setSent] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const send = async () => {
    setBusy(true);
    setTrouble(null);
    try {
      await report(boardId, about, id, said);
      setSent(true);
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    } finally {
      setBusy(false);
    }
  };
  if (sent) return <Notice sentence={words.sent} />;
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        void send();
      }}
    >
      <label className={styles.labelled}>
        {words.field}
        <textarea
          className={styles.area}
          value={said}
          maxLength={1000}
          required
          data-autofocus
          onChange={(event) => setSaid(event.target.value)}
        />
      </label>
      <p className={styles.quiet}>
        {words.hint} {words.goes}
      </p>
      <Button weight="main" type="submit" busy={busy} busyWord={words.sending}>
        {words.send}
      </Button>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </form>
  );
}
