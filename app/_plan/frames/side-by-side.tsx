'use client';
/** The kept frames in place of the photograph, all of one area, to choose between them with the eye. In the flow: kept-list -> [side-by-side]. */
import type { CSSProperties } from 'react';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { KeptCrop } from '#server/core/live/plan/crops.ts';
import { frameWords } from '#words/plan-frames.ts';
import { OverPicture } from '../stage/stage-context.tsx';
import { FrameCut } from './frame-cut.tsx';
import styles from './frames.module.css';

interface SideBySideProps {
  boardId: string;
  picture: PictureView;
  frames: readonly KeptCrop[];
  onChoose(id: string): void;
}

export function SideBySide({ boardId, picture, frames, onChoose }: SideBySideProps) {
  const columns = Math.ceil(Math.sqrt(frames.length));
  return (
    <OverPicture>
      <section
        className={styles.beside}
        aria-label={frameWords.kept.besideLabel}
        style={{ '--columns': columns, '--rows': Math.ceil(frames.length / columns) } as CSSProperties}
      >
        {frames.map((frame) => (
          <button key={frame.id} type="button" className={styles.large} onClick={() => onChoose(frame.id)}>
            <FrameCut boardId={boardId} picture={picture} box={frame.box} copy={2560} />
            <span>{frame.name}</span>
          </button>
        ))}
      </section>
    </OverPicture>
  );
}
