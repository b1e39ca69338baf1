/**
 * Calls to our own server with the contract's types. A refusal comes back as the server's own sentence.
 *
 * In the flow: component -> [client] -> app/api. IO: HTTP to the same origin. Uploads are in
 * `app/_post/send-picture.ts`, since only XMLHttpRequest tells how much has been sent.
 */

import type { ImpressionView } from '#server/core/contract/impressions.ts';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import type { PictureNotes } from '#server/core/contract/requests.ts';
import type {
  BoardView,
  ErrorBody,
  Pending,
  PersonView,
  PictureView,
} from '#server/core/contract/responses.ts';
import type { PicturePlan } from '#server/core/plan/plan-picture.ts';
import { words } from '#words/shell.ts';

/** What the server refused, or that it did not answer; `message` is a sentence for the person. */
export class Refused extends Error {
  override readonly name = 'Refused';
  readonly code: string;

  constructor(code: string, message: string, options?: ErrorOptions) {
    super(message, options);
    this.code = code;
  }
}

/** The sentence to show for anything that was thrown by a call. Bugs are thrown on. */
export function sentenceOf(thrown: unknown): string {
  if (thrown instanceof Refused) return thrown.message;
  throw thrown;
}

/** A refusal read from an answer's text; `status` is the HTTP status. */
export function refusedFrom(text: string, status: number): Refused {
  try {
    const body = JSON.parse(text) as Partial<ErrorBody>;
    if (body.error?.message) return new Refused(body.error.code, body.error.message);
  } catch {
    // Not JSON: a proxy in between, or a server that is stopping.
  }
  return new Refused('strange-answer', words.strangeAnswer(status));
}

/** One call; the answer is of the type the contract has for it. @throws Refused with the sentence to show. */
export async function call<Answer>(path: string, init: RequestInit = {}): Promise<Answer> {
  let response: Response;
  try {
    response = await fetch(path, { credentials: 'same-origin', cache: 'no-store', ...init });
  } catch (cause) {
    if (cause instanceof DOMException && cause.name === 'AbortError') throw cause;
    throw new Refused('no-answer', words.noAnswer, { cause });
  }
  const text = await response.text();
  if (!response.ok) throw refusedFrom(text, response.status);
  // The handlers answer with these very types; the page and the server are one build.
  return (text ? JSON.parse(text) : undefined) as Answer;
}

export function withBody(method: string, body: unknown): RequestInit {
  return { method, headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) };
}

const board = (boardId: string) => `/api/boards/${encodeURIComponent(boardId)}`;

/** Where an entry led to. */
export interface WhereTo extends PersonView {
  boardId?: string | null;
  groupId?: string;
}

/**
 * Starts a session.
 *
 * @param key Host key, host link's key or an invite's token.
 * @param as With a host's key: id of the host one was before.
 */
export function enter(key: string, name: string, as?: string): Promise<WhereTo> {
  return call('/api/enter', withBody('POST', { key, name, ...(as === undefined ? {} : { as }) }));
}

/** @param group Id of the group it is for, if any. */
export function createBoard(title: string, group?: string): Promise<{ id: string }> {
  return call('/api/boards', withBody('POST', { title, ...(group === undefined ? {} : { group }) }));
}

export function fetchBoard(boardId: string): Promise<BoardView> {
  return call(board(boardId));
}

export function renameBoard(boardId: string, title: string): Promise<unknown> {
  return call(board(boardId), withBody('PATCH', { title }));
}

export function deleteBoard(boardId: string): Promise<unknown> {
  return call(board(boardId), { method: 'DELETE' });
}

export function deletePicture(boardId: string, pictureId: string): Promise<unknown> {
  return call(`${board(boardId)}/pictures/${encodeURIComponent(pictureId)}`, { method: 'DELETE' });
}

/** Notes paint, drying or light of a painting; null takes a note away. */
export function notePicture(boardId: string, pictureId: string, notes: PictureNotes): Promise<PictureView> {
  return call(`${board(boardId)}/pictures/${encodeURIComponent(pictureId)}`, withBody('PATCH', notes));
}

/** The measures of a painting, or what is being done about them. */
export function fetchMeasures(
  boardId: string,
  pictureId: string,
  signal: AbortSignal,
): Promise<MeasureDocument | Pending> {
  return call(`${board(boardId)}/measures/${encodeURIComponent(pictureId)}`, { signal });
}

/** The plan of a photograph, or what is being done about it. */
export function fetchPlan(
  boardId: string,
  pictureId: string,
  signal: AbortSignal,
): Promise<PicturePlan | Pending> {
  return call(`${board(boardId)}/plan/${encodeURIComponent(pictureId)}`, { signal });
}

/** What everybody saw first in a painting. @throws Refused `not-yet` until its silent look is over. */
export function fetchImpressions(boardId: string, pictureId: string): Promise<ImpressionView[]> {
  return call(`${board(boardId)}/impressions/${encodeURIComponent(pictureId)}`);
}

/** Where the bytes of a picture lie. @param size Long side in pixels of the rendition. */
export function pictureAddress(boardId: string, pictureId: string, size: 640 | 1280 | 2560): string {
  return `${board(boardId)}/pictures/${encodeURIComponent(pictureId)}/${size}`;
}
