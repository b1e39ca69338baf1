'use client';
/** The sheet between choosing pictures and sending them: what each is, and whose. */
import { type FormEvent, useState } from 'react';
import { Button } from '#app/_ui/button.tsx';
import { Dialog } from '#app/_ui/dialog.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import { words } from '#words/shell.ts';
import { type DraftPicture, troubleWith } from './draft-picture.ts';
import { DraftRow } from './draft-row.tsx';
import { FileChooser } from './file-chooser.tsx';
import styles from './post.module.css';

interface PostDialogProps {
  drafts: DraftPicture[];
  pictures: readonly PictureView[];
  mayReference: boolean;
  /** Names of the paintings that a new state may follow. */
  earlier: readonly { id: string; name: string }[];
  onDrafts(drafts: DraftPicture[]): void;
  onMoreFiles(files: File[]): void;
  onSend(drafts: DraftPicture[]): void;
}

export function PostDialog({
  drafts,
  pictures,
  mayReference,
  earlier,
  onDrafts,
  onMoreFiles,
  onSend,
}: PostDialogProps) {
  const [tried, setTried] = useState(false);
  const close = () => {
    setTried(false);
    onDrafts([]);
  };
  const change = (key: string, changed: Partial<DraftPicture>) =>
    onDrafts(drafts.map((draft) => (draft.key === key ? { ...draft, ...changed } : draft)));
  const send = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (drafts.some((draft) => troubleWith(draft) !== null)) return;
    setTried(false);
    onSend(drafts);
  };
  const withoutReference = [...pictures, ...drafts].every(({ kind }) => kind === 'painting');
  return (
    <Dialog open={drafts.length > 0} onClose={close} title={words.post.title} wide>
      <form noValidate onSubmit={send}>
        <ul className={styles.drafts}>
          {drafts.map((draft) => (
            <DraftRow
              key={draft.key}
              draft={draft}
              mayReference={mayReference}
              earlier={earlier}
              trouble={tried ? troubleWith(draft) : null}
              onChange={(changed) => change(draft.key, changed)}
              onLeaveOut={() => onDrafts(drafts.filter(({ key }) => key !== draft.key))}
            />
          ))}
        </ul>
        {withoutReference ? <p className={styles.hint}>{words.post.fromLife}</p> : null}
        <div className={styles.acts}>
          <Button type="submit" weight="main" data-autofocus>
            {words.post.send(drafts.length)}
          </Button>
          <FileChooser onFiles={onMoreFiles} label={words.post.more} weight="quiet" />
          <p className={styles.hint}>{words.post.kinds}</p>
        </div>
      </form>
    </Dialog>
  );
}
