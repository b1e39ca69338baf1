'use client';
/**
 * Which painting is made after which frame, for the paintings that this person may set.
 *
 * In the flow: painting's room -> [frames-of-paintings] -> `frame` of that room. Rooms are opened when it is unfolded.
 */
import { useState } from 'react';
import { FrameOfPainting } from '#app/_framed/frame-of-painting.tsx';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { pictureName } from '#app/_post/picture-names.ts';
import { frameWords } from '#words/plan-frames.ts';
import { useKeptFrames } from '../kept-frames.ts';
import styles from './frames.module.css';

const { belongs: words } = frameWords;

export function FramesOfPaintings() {
  const { board, may } = useBoardLive();
  const { frames } = useKeptFrames();
  const [open, setOpen] = useState(false);
  const paintings = board.pictures.filter(({ id, kind }) => kind === 'painting' && may.painting(id));
  if (frames.length === 0 || paintings.length === 0) return null;
  return (
    <details className={styles.part} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.title}</summary>
      <p className={styles.quiet}>{words.lead}</p>
      {open
        ? paintings.map((painting) => (
            <FrameOfPainting
              key={painting.id}
              paintingId={painting.id}
              label={words.of(pictureName(painting, board.pictures))}
            />
          ))
        : null}
    </details>
  );
}
