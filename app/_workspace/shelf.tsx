'use client';
/** The board's pictures, small: references, then paintings; the ones on the easel are ringed. */
import { useState } from 'react';
import { pictureAddress } from '#app/_api/client.ts';
import { FileChooser } from '#app/_post/file-chooser.tsx';
import { pictureName } from '#app/_post/picture-names.ts';
import { usePost } from '#app/_post/posting.tsx';
import { Button, buttonClass } from '#app/_ui/button.tsx';
import { late, useEver } from '#app/_ui/late.tsx';
import type { BoardView, PictureView } from '#server/core/contract/responses.ts';
import { planWords } from '#words/plan.ts';
import { words } from '#words/shell.ts';
import styles from './shelf.module.css';
import { useTools } from './tools-here.tsx';

const PictureList = late(() => import('./picture-list.tsx').then((module) => module.PictureList));

interface ShelfProps {
  board: BoardView;
  refresh(): Promise<void>;
}

export function Shelf({ board, refresh }: ShelfProps) {
  const { allowed, take } = usePost();
  const [listOpen, setListOpen] = useState(false);
  const listAsked = useEver(listOpen);
  if (board.pictures.length === 0) return null;
  const references = board.pictures.filter(({ kind }) => kind === 'reference');
  const paintings = board.pictures.filter(({ kind }) => kind === 'painting');
  return (
    <nav className={styles.shelf} aria-label={words.shelf.label}>
      <div className={styles.pictures}>
        {references.map((picture) => (
          <Thumb key={picture.id} board={board} picture={picture} />
        ))}
        {references.length > 0 && paintings.length > 0 ? <span className={styles.between} /> : null}
        {paintings.map((picture) => (
          <Thumb key={picture.id} board={board} picture={picture} />
        ))}
      </div>
      <div className={styles.acts}>
        <Button weight="word" onClick={() => setListOpen(true)}>
          {words.shelf.all}
        </Button>
        {references.length > 0 ? <PlanLink boardId={board.id} /> : null}
        {paintings.length > 0 ? (
          <a className={buttonClass('word')} href={`/boards/${board.id}/wall`}>
            {words.shelf.wall}
          </a>
        ) : null}
        {allowed ? <FileChooser onFiles={take} label={words.shelf.post} weight="quiet" /> : null}
      </div>
      {listAsked ? (
        <PictureList board={board} refresh={refresh} open={listOpen} onClose={() => setListOpen(false)} />
      ) : null}
    </nav>
  );
}

/** The way to the plan of the photograph that stands on the easel. */
function PlanLink({ boardId }: { boardId: string }) {
  const { referenceId } = useTools();
  const which = referenceId ? `?picture=${encodeURIComponent(referenceId)}` : '';
  return (
    <a className={buttonClass('word')} href={`/boards/${boardId}/plan${which}`}>
      {planWords.link}
    </a>
  );
}

function Thumb({ board, picture }: { board: BoardView; picture: PictureView }) {
  const { referenceId, setReferenceId, paintingId, setPaintingId, setSide } = useTools();
  const shown = picture.id === (picture.kind === 'reference' ? referenceId : paintingId);
  const name = pictureName(picture, board.pictures);
  const show = () => {
    if (picture.kind === 'reference') setReferenceId(picture.id);
    else setPaintingId(picture.id);
    setSide(picture.kind);
  };
  return (
    <button type="button" className={styles.thumb} aria-pressed={shown} title={name} onClick={show}>
      {/* biome-ignore lint/performance/noImgElement: our own renditions; Next's image part would shift their colours. */}
      <img
        src={pictureAddress(board.id, picture.id, 640)}
        width={picture.width}
        height={picture.height}
        alt={name}
        loading="lazy"
        decoding="async"
      />
    </button>
  );
}
