/**
 * Calls about looks that are asked for, the queue, one's own phrases and what is new.
 *
 * In the flow: component -> [own-time] -> app/api. IO: HTTP to the same origin.
 */
import type { AskView, BoardNews, NewsLine, PhraseView, QueueView } from '#server/core/contract/own-time.ts';
import type { LookedRequest } from '#server/core/contract/own-time-requests.ts';
import { call, withBody } from './client.ts';

const asks = (boardId: string) => `/api/boards/${encodeURIComponent(boardId)}/asks`;
const ask = (boardId: string, askId: string) => `${asks(boardId)}/${encodeURIComponent(askId)}`;

export function fetchAsks(boardId: string): Promise<AskView[]> {
  return call(asks(boardId));
}

/** @param of Person id of a teacher; null = any. */
export function askForLook(
  boardId: string,
  request: { picture: string; of: string | null; words: string },
): Promise<{ id: string }> {
  return call(asks(boardId), withBody('POST', request));
}

export function withdrawAsk(boardId: string, askId: string): Promise<unknown> {
  return call(ask(boardId, askId), { method: 'DELETE' });
}

/** @param day 'YYYY-MM-DD'; null takes the promise back. */
export function promiseDay(boardId: string, askId: string, day: string | null): Promise<unknown> {
  return call(ask(boardId, askId), withBody('PATCH', { promisedFor: day }));
}

export function answerAsk(boardId: string, askId: string): Promise<unknown> {
  return call(ask(boardId, askId), withBody('PATCH', { answered: true }));
}

export function fetchQueue(): Promise<QueueView> {
  return call('/api/queue');
}

const since = (boardId: string) => `/api/boards/${encodeURIComponent(boardId)}/since`;

/** Undefined when the person never looked at the board. */
export function fetchNews(boardId: string): Promise<BoardNews | undefined> {
  return call(since(boardId));
}

/** Goes out also while the page is being left. */
export function sayLooked(boardId: string, seen: LookedRequest): Promise<unknown> {
  return call(since(boardId), { ...withBody('POST', seen), keepalive: true });
}

/** Board id -> what came there. */
export function fetchNewsOfBoards(): Promise<Record<string, NewsLine>> {
  return call('/api/since');
}

export function fetchPhrases(): Promise<PhraseView[]> {
  return call('/api/phrases');
}

export function keepPhrase(words: string): Promise<PhraseView> {
  return call('/api/phrases', withBody('POST', { words }));
}

const phrase = (phraseId: string) => `/api/phrases/${encodeURIComponent(phraseId)}`;

/** Other words, or a place before another phrase (null = at the end). */
export function changePhrase(
  phraseId: string,
  change: { words: string } | { before: string | null },
): Promise<unknown> {
  return call(phrase(phraseId), withBody('PATCH', change));
}

export function forgetPhrase(phraseId: string): Promise<unknown> {
  return call(phrase(phraseId), { method: 'DELETE' });
}
