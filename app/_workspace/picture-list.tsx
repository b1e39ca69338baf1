'use client';
/** Every picture of the board with what is known of it, and for those who may, a way to delete it. IO: HTTP. */
import { useState } from 'react';
import { deletePicture, pictureAddress, sentenceOf } from '#app/_api/client.ts';
import { ReportAct } from '#app/_decency/report-act.tsx';
import { mayDeletePicture, mayNotePicture } from '#app/_people/roles-on-board.ts';
import { Noting } from '#app/_post/noting.tsx';
import { pictureName } from '#app/_post/picture-names.ts';
import { Button } from '#app/_ui/button.tsx';
import { Dialog } from '#app/_ui/dialog.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { dateTime } from '#app/_words/figures.ts';
import type { BoardView, PictureView } from '#server/core/contract/responses.ts';
import { lightWords, notedWords } from '#words/noted.ts';
import { words } from '#words/shell.ts';
import styles from './shelf.module.css';

interface PictureListProps {
  board: BoardView;
  refresh(): Promise<void>;
  open: boolean;
  onClose(): void;
}

export function PictureList({ board, refresh, open, onClose }: PictureListProps) {
  return (
    <Dialog open={open} onClose={onClose} title={words.shelf.label} wide>
      <ul className={styles.list}>
        {board.pictures.map((picture) => (
          <Row key={picture.id} board={board} picture={picture} refresh={refresh} />
        ))}
      </ul>
    </Dialog>
  );
}

interface RowProps {
  board: BoardView;
  picture: PictureView;
  refresh(): Promise<void>;
}

function Row({ board, picture, refresh }: RowProps) {
  const rights = [picture.rights ? words.rights[picture.rights] : null, picture.credit].filter(Boolean);
  const noted = [notedWords(picture), lightWords(picture)].filter(Boolean);
  return (
    <li className={styles.row}>
      {/* biome-ignore lint/performance/noImgElement: our own renditions, as on the shelf. */}
      <img
        src={pictureAddress(board.id, picture.id, 640)}
        width={picture.width}
        height={picture.height}
        alt=""
        loading="lazy"
      />
      <div className={styles.about}>
        <h3>{pictureName(picture, board.pictures)}</h3>
        {picture.caption ? <p>{words.shelf.postedBy(picture.painter.name)}</p> : null}
        {rights.length > 0 ? <p>{rights.join('. ')}</p> : null}
        {noted.length > 0 ? <p>{noted.join('. ')}</p> : null}
        <p>
          {words.shelf.size(picture.width, picture.height)}, {dateTime(picture.createdAt)}
        </p>
        <a href={pictureAddress(board.id, picture.id, 2560)} target="_blank" rel="noreferrer">
          {words.shelf.original}
        </a>
        {mayNotePicture(board, picture) ? (
          <Noting boardId={board.id} picture={picture} refresh={refresh} />
        ) : null}
        <RowMore board={board} picture={picture} refresh={refresh} />
      </div>
    </li>
  );
}

/** What is seldom wanted stands folded away, each under its own picture. */
function RowMore({ board, picture, refresh }: RowProps) {
  const own = picture.painter.id === board.me.id;
  const mayDelete = mayDeletePicture(board, picture);
  if (own && !mayDelete) return null;
  return (
    <details className={styles.rowMore}>
      <summary>{words.shelf.more}</summary>
      <div className={styles.about}>
        {own ? null : (
          <ReportAct boardId={board.id} about="picture" id={picture.id} name={picture.painter.name} />
        )}
        {mayDelete ? <Delete board={board} picture={picture} refresh={refresh} /> : null}
      </div>
    </details>
  );
}

/** Asked twice, in place. */
function Delete({ board, picture, refresh }: RowProps) {
  const [asked, setAsked] = useState(false);
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const remove = async () => {
    setBusy(true);
    try {
      await deletePicture(board.id, picture.id);
      await refresh();
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
      setBusy(false);
    }
  };
  if (!asked) {
    return (
      <Button weight="word" onClick={() => setAsked(true)}>
        {words.shelf.remove}
      </Button>
    );
  }
  return (
    <>
      <p>{words.shelf.removeSure}</p>
      <span className={styles.sure}>
        <Button weight="main" busy={busy} busyWord={words.shelf.removing} onClick={remove}>
          {words.shelf.remove}
        </Button>
        <Button weight="word" onClick={() => setAsked(false)}>
          {words.cancel}
        </Button>
      </span>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </>
  );
}
