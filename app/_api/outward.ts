/**
 * Calls about things that are taken away and brought in.
 *
 * In the flow: component -> [outward] -> app/api. IO: HTTP to the same origin.
 */
import type { ArchiveContents, LeavingView, MarksTaken, TakenBoard } from '#server/core/contract/outward.ts';
import { call, withBody } from './client.ts';

const board = (boardId: string) => `/api/boards/${encodeURIComponent(boardId)}`;

/** Addresses that give files. */
export const filesOf = {
  table: (boardId: string) => `${board(boardId)}/measures.csv`,
  figures: (boardId: string) => `${board(boardId)}/measures.json`,
  marks: (boardId: string) => `${board(boardId)}/marks`,
  whole: (boardId: string) => `${board(boardId)}/archive`,
  own: '/api/account/data',
};

export function archiveContents(boardId: string, signal: AbortSignal): Promise<ArchiveContents> {
  return call(`${board(boardId)}/archive/contents`, { signal });
}

/** @param onto Id of the picture for marks whose picture is not on the board, or null. */
export function bringMarksIn(boardId: string, file: File, onto: string | null): Promise<MarksTaken> {
  const query = onto === null ? '' : `?picture=${encodeURIComponent(onto)}`;
  return call(`${board(boardId)}/marks${query}`, {
    method: 'POST',
    headers: { 'content-type': 'application/ld+json' },
    body: file,
  });
}

export function takeBoardIn(file: File): Promise<TakenBoard> {
  return call('/api/archives', {
    method: 'POST',
    headers: { 'content-type': 'application/zip' },
    body: file,
  });
}

/** What would go with oneself. */
export function askLeaving(): Promise<LeavingView> {
  return call('/api/account/leaving');
}

/** Deletes oneself. @param name One's own, written out. */
export function deleteMe(name: string): Promise<unknown> {
  return call('/api/account', withBody('DELETE', { name }));
}
