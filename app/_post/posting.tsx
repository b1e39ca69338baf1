'use client';
/**
 * Posting on a board: takes files from drop, picker and camera, asks what they are, sends them, tells how far.
 *
 * In the flow: files -> drafts -> queue -> server. Parts of the screen ask for `usePost().take(files)`.
 */
import { createContext, type ReactNode, useCallback, useContext, useMemo, useRef, useState } from 'react';
import { mayPostReference } from '#app/_people/roles-on-board.ts';
import { late, useEver } from '#app/_ui/late.tsx';
import type { BoardView } from '#server/core/contract/responses.ts';
import { words } from '#words/shell.ts';
import { type DraftPicture, draftsFrom } from './draft-picture.ts';
import { FileInput } from './file-chooser.tsx';
import { pictureName } from './picture-names.ts';
import styles from './post.module.css';
import { useDrop } from './use-drop.ts';
import { type PostingQueue, usePosting } from './use-posting.ts';

const PostDialog = late(() => import('./post-dialog.tsx').then((module) => module.PostDialog));

interface Post {
  /** False for those who only look on. */
  allowed: boolean;
  take(files: File[]): void;
  /** Opens this device's own sheet for choosing files; only in answer to a press. */
  choose(): void;
  queue: PostingQueue;
}

const PostContext = createContext<Post | null>(null);

/** @throws Error outside `PostingProvider`: a bug. */
export function usePost(): Post {
  const post = useContext(PostContext);
  if (!post) throw new Error('usePost is used outside PostingProvider.');
  return post;
}

interface PostingProviderProps {
  board: BoardView;
  allowed: boolean;
  /** After each picture that was taken in. */
  onPosted(pictureId: string, kind: DraftPicture['kind']): void;
  children: ReactNode;
}

/** A new state follows the person's own paintings; a teacher or host may post for anybody. */
function earlierStates(board: BoardView) {
  const guide = mayPostReference(board.role);
  return board.pictures
    .filter(({ kind, painter }) => kind === 'painting' && (guide || painter.id === board.me.id))
    .map((picture) => ({ id: picture.id, name: pictureName(picture, board.pictures) }))
    .reverse();
}

export function PostingProvider({ board, allowed, onPosted, children }: PostingProviderProps) {
  const [drafts, setDrafts] = useState<DraftPicture[]>([]);
  const keys = useRef(0);
  const queue = usePosting(
    board.id,
    useCallback((id, draft) => onPosted(id, draft.kind), [onPosted]),
  );
  const { pictures } = board;
  const mayReference = mayPostReference(board.role);
  const take = useCallback(
    (files: File[]) => {
      const firstKey = keys.current;
      keys.current += files.length;
      setDrafts((before) => {
        const paintingsOnly =
          !mayReference || [...pictures, ...before].some(({ kind }) => kind === 'reference');
        return [...before, ...draftsFrom(files, { paintingsOnly, firstKey })];
      });
    },
    [pictures, mayReference],
  );
  const over = useDrop(allowed, take);
  const asked = useEver(drafts.length > 0);
  const files = useRef<HTMLInputElement>(null);
  const choose = useCallback(() => files.current?.click(), []);
  const post = useMemo<Post>(() => ({ allowed, take, choose, queue }), [allowed, take, choose, queue]);
  return (
    <PostContext value={post}>
      {children}
      {allowed ? <FileInput input={files} label={words.post.choose} onFiles={take} /> : null}
      {over ? (
        <div className={styles.frame}>
          <span>{words.post.dropHere}</span>
        </div>
      ) : null}
      {asked ? (
        <PostDialog
          drafts={drafts}
          pictures={pictures}
          mayReference={mayReference}
          earlier={earlierStates(board)}
          onDrafts={setDrafts}
          onMoreFiles={take}
          onSend={(ready) => {
            queue.add(ready);
            setDrafts([]);
          }}
        />
      ) : null}
    </PostContext>
  );
}
