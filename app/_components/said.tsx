'use client';
/** A notice, a refusal, the line that is down, a dialog, a part that could not be fetched, a sheet, a row that scrolls. */
import { useState } from 'react';
import { Button } from '#app/_ui/button.tsx';
import { Dialog } from '#app/_ui/dialog.tsx';
import { late } from '#app/_ui/late.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { ScrollRegion } from '#app/_ui/scroll-region.tsx';
import sheet from '#app/_ui/sheet.module.css';
import { componentWords as words } from '#words/components.ts';
import { words as shell } from '#words/shell.ts';
import styles from './components.module.css';

const Missing = late<object>(() => Promise.reject(new Error('shown on purpose')));

export function Said() {
  const [open, setOpen] = useState(false);
  const [fetched, setFetched] = useState(false);
  return (
    <div className={styles.table}>
      <Notice sentence={words.notice} />
      <Notice trouble sentence={words.refusal}>
        <Button>{shell.tryAgain}</Button>
      </Notice>
      <Notice sentence={words.offline} />
      <div className={sheet.sheet}>{words.paper}</div>
      <div className={styles.row}>
        <Button onClick={() => setOpen(true)}>{words.open}</Button>
        <Button onClick={() => setFetched(true)}>{words.late}</Button>
      </div>
      {fetched ? <Missing /> : null}
      <ScrollRegion label={words.scrolls} className={styles.scrolls}>
        <p>{`${words.scrolls} — `.repeat(6)}</p>
      </ScrollRegion>
      <Dialog open={open} onClose={() => setOpen(false)} title={words.dialog}>
        <p>{words.dialogText}</p>
        <Button weight="main" onClick={() => setOpen(false)}>
          {words.weights.word}
        </Button>
      </Dialog>
    </div>
  );
}
