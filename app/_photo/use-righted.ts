'use client';
/**
 * The photo put right as corners and cards stand now, worked out again whenever they change.
 *
 * In the flow: photo correction -> [use-righted] -> photo line -> picture. The last picture stays until the next is
 * there.
 */
import { useEffect, useRef, useState } from 'react';
import type { PictureSize } from '#server/core/contract/picture-choices.ts';
import type { RightedWish } from './answering.ts';
import { NewestNext } from './newest-next.ts';
import type { RightedPicture } from './photo.worker.ts';
import type { PhotoLine } from './photo-line.ts';

export interface RightedShown {
  /** Null before the first, and when there is nothing to put right. */
  picture: RightedPicture | null;
  /** Why it cannot be put right as it stands, in a whole sentence; null when it can. */
  trouble: string | null;
}

const NOTHING: RightedShown = { picture: null, trouble: null };

/** @param wish Null when there is nothing to put right. @param away What to say when the picture cannot be had. */
export function useRighted(
  line: PhotoLine | null,
  wish: RightedWish | null,
  copy: PictureSize,
  away: string,
): RightedShown {
  const [shown, setShown] = useState<RightedShown & { line: PhotoLine | null }>({ ...NOTHING, line: null });
  const queue = useRef(new NewestNext());
  const now = useRef(line);
  now.current = line;
  const key = wish && JSON.stringify([wish, copy]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `key` is the wish and the copy by their content.
  useEffect(() => {
    if (!line || !wish) return setShown({ ...NOTHING, line });
    queue.current.run(async () => {
      const asked = await line.righted(wish, copy).catch(() => away);
      if (now.current !== line) return;
      setShown((before) => {
        const kept = before.line === line ? before.picture : null;
        return typeof asked === 'string'
          ? { picture: kept, trouble: asked, line }
          : { picture: asked, trouble: null, line };
      });
    });
  }, [line, key]);
  return shown.line === line && wish ? shown : NOTHING;
}
