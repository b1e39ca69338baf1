/**
 * The pictures on their way: which waits, which is being sent, what became of each.
 *
 * In the flow: drafts -> [queue] -> send. A reducer, so that the order of events alone decides. Pure.
 */
import type { DraftPicture } from './draft-picture.ts';

/** Uploads at a time: two keep a slow line busy without starving each other. */
export const AT_A_TIME = 2;

export type PostingStage =
  | { stage: 'waiting' }
  | { stage: 'sending'; share: number }
  | { stage: 'done'; pictureId: string }
  | { stage: 'stopped' }
  | { stage: 'refused'; sentence: string };

export interface Posting {
  draft: DraftPicture;
  at: PostingStage;
}

export type PostingEvent =
  | { type: 'added'; drafts: DraftPicture[] }
  | { type: 'began'; key: string }
  | { type: 'sent'; key: string; share: number }
  | { type: 'done'; key: string; pictureId: string }
  | { type: 'refused'; key: string; sentence: string }
  | { type: 'stopped'; key: string }
  | { type: 'again'; key: string }
  | { type: 'put-away'; key: string };

function stageAfter(event: Exclude<PostingEvent, { type: 'added' | 'put-away' }>): PostingStage {
  switch (event.type) {
    case 'began':
      return { stage: 'sending', share: 0 };
    case 'sent':
      return { stage: 'sending', share: event.share };
    case 'done':
      return { stage: 'done', pictureId: event.pictureId };
    case 'refused':
      return { stage: 'refused', sentence: event.sentence };
    case 'stopped':
      return { stage: 'stopped' };
    case 'again':
      return { stage: 'waiting' };
  }
}

/** Progress that arrives after a picture was stopped or refused changes nothing. */
export function nextPostings(postings: Posting[], event: PostingEvent): Posting[] {
  if (event.type === 'added') {
    return [...postings, ...event.drafts.map((draft): Posting => ({ draft, at: { stage: 'waiting' } }))];
  }
  if (event.type === 'put-away') return postings.filter(({ draft }) => draft.key !== event.key);
  return postings.map((posting) => {
    if (posting.draft.key !== event.key) return posting;
    if (event.type === 'sent' && posting.at.stage !== 'sending') return posting;
    return { ...posting, at: stageAfter(event) };
  });
}

/** The waiting pictures that may start now, in the order they were posted. */
export function readyToStart(postings: readonly Posting[]): DraftPicture[] {
  const sending = postings.filter(({ at }) => at.stage === 'sending').length;
  const waiting = postings.filter(({ at }) => at.stage === 'waiting').map(({ draft }) => draft);
  return waiting.slice(0, Math.max(0, AT_A_TIME - sending));
}
