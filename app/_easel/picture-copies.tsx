'use client';
/**
 * One picture from its small copy to the one that is sharp enough, each laid over the last once it is decoded,
 * so that nothing flashes. Colours are left as they are.
 *
 * In the flow: stage -> [picture-copies] -> screen. IO: fetches copies of pictures.
 */
import { type Ref, useEffect, useState } from 'react';
import type { PictureSize } from '#server/core/contract/picture-choices.ts';
import styles from './stage.module.css';

export function copyAddress(boardId: string, pictureId: string, size: PictureSize): string {
  return `/api/boards/${boardId}/pictures/${pictureId}/${size}`;
}

/** The small copy without a trace of compression, for taking colours from. */
export function losslessAddress(boardId: string, pictureId: string): string {
  return `/api/boards/${boardId}/pictures/${pictureId}/lossless-640`;
}

interface PictureCopiesProps {
  boardId: string;
  pictureId: string;
  /** Size that is sharp enough now. */
  copy: PictureSize;
  /** What the picture is, for those who do not see it. */
  label: string;
  /** The copy that is always there. */
  first: Ref<HTMLImageElement>;
}

export function PictureCopies({ boardId, pictureId, copy, label, first }: PictureCopiesProps) {
  const sharper = useDecoded(boardId, pictureId, copy);
  return (
    <>
      {/* biome-ignore lint/performance/noImgElement: copies come ready-made and must not be recoded. */}
      <img
        ref={first}
        className={styles.picture}
        src={copyAddress(boardId, pictureId, 640)}
        alt={label}
        draggable={false}
        fetchPriority="high"
      />
      {sharper ? (
        // biome-ignore lint/performance/noImgElement: as above.
        <img className={styles.picture} src={sharper} alt="" draggable={false} />
      ) : null}
    </>
  );
}

/** Address of the wanted copy once it is decoded; until then the last one that was. */
function useDecoded(boardId: string, pictureId: string, copy: PictureSize): string | null {
  const [decoded, setDecoded] = useState<{ pictureId: string; address: string } | null>(null);
  useEffect(() => {
    if (copy === 640) return;
    let wanted = true;
    const address = copyAddress(boardId, pictureId, copy);
    const image = new Image();
    image.src = address;
    image.decode().then(
      () => wanted && setDecoded({ pictureId, address }),
      () => undefined, // The smaller copy stays; the next zoom asks again.
    );
    return () => {
      wanted = false;
    };
  }, [boardId, pictureId, copy]);
  return decoded?.pictureId === pictureId ? decoded.address : null;
}
