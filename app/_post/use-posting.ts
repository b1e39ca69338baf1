'use client';
/** Runs the queue of pictures on their way: starts what may start, stops, tries again. IO: HTTP. */
import { useCallback, useEffect, useReducer, useRef } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { type DraftPicture, fieldsOf } from './draft-picture.ts';
import { nextPostings, type Posting, readyToStart } from './posting-queue.ts';
import { type Sending, sendPicture } from './send-picture.ts';

/** How long "posted" stays before it puts itself away, milliseconds. */
const DONE_SHOWN_MS = 6000;

export interface PostingQueue {
  postings: readonly Posting[];
  add(drafts: DraftPicture[]): void;
  stop(key: string): void;
  again(key: string): void;
  putAway(key: string): void;
}

/** @param onPosted Called after each picture that was taken in, with its id. */
export function usePosting(
  boardId: string,
  onPosted: (pictureId: string, draft: DraftPicture) => void,
): PostingQueue {
  const [postings, tell] = useReducer(nextPostings, []);
  const sendings = useRef(new Map<string, Sending>());
  const posted = useRef(onPosted);
  useEffect(() => {
    posted.current = onPosted;
  }, [onPosted]);

  const start = useCallback(
    async (draft: DraftPicture) => {
      const { key } = draft;
      const sending = sendPicture(boardId, draft.file, fieldsOf(draft), (share) =>
        tell({ type: 'sent', key, share }),
      );
      sendings.current.set(key, sending);
      try {
        const { id } = await sending.done;
        tell({ type: 'done', key, pictureId: id });
        posted.current(id, draft);
        // What went well needs no more attention; the picture itself is on the easel by now.
        setTimeout(() => tell({ type: 'put-away', key }), DONE_SHOWN_MS);
      } catch (thrown) {
        if (thrown instanceof DOMException) tell({ type: 'stopped', key });
        else tell({ type: 'refused', key, sentence: sentenceOf(thrown) });
      } finally {
        sendings.current.delete(key);
      }
    },
    [boardId],
  );

  useEffect(() => {
    for (const draft of readyToStart(postings)) {
      if (sendings.current.has(draft.key)) continue;
      tell({ type: 'began', key: draft.key });
      void start(draft);
    }
  }, [postings, start]);

  return {
    postings,
    add: useCallback((drafts) => tell({ type: 'added', drafts }), []),
    stop: useCallback((key) => {
      const sending = sendings.current.get(key);
      if (sending) sending.stop();
      else tell({ type: 'stopped', key });
    }, []),
    again: useCallback((key) => tell({ type: 'again', key }), []),
    putAway: useCallback((key) => tell({ type: 'put-away', key }), []),
  };
}
