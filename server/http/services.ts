/**
 * What the main process offers to Next's handlers.
 *
 * Next bundles its own copy of whatever `app/` imports, so a handler must never import rooms or workers: it
 * would get a second set. `server/main.ts` puts one object behind a global symbol and handlers call it here.
 * One process is all that is supported, so a message bus would carry the same calls with more to go wrong.
 */

import type { IncomingPicture } from '../core/contract/incoming.ts';
import type { MeasureDocument } from '../core/contract/measures.ts';
import type { TakenBoard } from '../core/contract/outward.ts';
import type { Pending } from '../core/contract/responses.ts';
import type { Outline } from '../core/contract/setup.ts';
import type { ComparedFacts, StatePair } from '../core/contract/states.ts';
import type { LiveAnswer } from '../core/live/layout.ts';
import type { Mark } from '../core/live/marks.ts';
import type { Writer } from '../core/live/permission.ts';
import type { PicturePlan } from '../core/plan/plan-picture.ts';
import type { SheetOrder } from '../core/sheet/content.ts';

export interface Services {
  /** Decodes, strips, stores and announces an upload. Throws a `Problem` and leaves nothing behind when refused. */
  takeInPicture(incoming: IncomingPicture): Promise<{ id: string; width: number; height: number }>;
  /** The current measures of a painting, or what is being done about them. */
  measuresOf(boardId: string, pictureId: string): Promise<MeasureDocument | Pending>;
  /** The plan of a photograph, or what is being done about it. @throws Problem `bad-request` for a painting. */
  planOf(boardId: string, pictureId: string): Promise<PicturePlan | Pending>;
  /**
   * The photograph as it is planned, as a JPEG of its plate's size. @param lit in the planned light, or rearranged alone.
   * @throws Problem `bad-request` for a painting, `planes-missing` without planes to light.
   */
  plannedJpeg(boardId: string, pictureId: string, lit: boolean): Promise<{ hash: string; bytes: Uint8Array }>;
  /** A sheet to take away as the bytes of a PDF or a PNG. @throws Problem 'picture-too-slow', 'stopping'. */
  drawSheet(order: SheetOrder): Promise<Uint8Array>;
  /** How a later state of a painting lies on an earlier one, or what is being done about it. */
  statesCompared(pair: StatePair): Promise<ComparedFacts | Pending>;
  /** A picture of both laid on one another. @throws Problem `states-apart` where they do not belong together. */
  statePicture(pair: StatePair, which: 'before' | 'after' | 'change'): Promise<Uint8Array>;
  /** Writes an answer to a card of a painting in somebody's name; null takes it back. @throws Problem 'live-not-allowed'. */
  answerMade(
    picture: { boardId: string; pictureId: string },
    writer: Writer,
    key: string,
    answer: LiveAnswer | null,
  ): Promise<void>;
  /** Writes outlines of planes on a painting in somebody's name. @throws Problem 'live-not-allowed'. */
  outlinesMade(
    picture: { boardId: string; pictureId: string },
    writer: Writer,
    outlines: ReadonlyMap<string, Outline>,
  ): Promise<void>;
  /** Whether a class keeps references and figures from everybody on the board just now. */
  isVeiled(boardId: string): Promise<boolean>;
  /** What everybody saw first in a painting; null while it is kept back. */
  impressionsOf(boardId: string, pictureId: string): Promise<{ personId: string; text: string }[] | null>;
  /** What is noted of a painting changed: browsers hear of it, and it is measured again where that counts. */
  pictureNoted(boardId: string, pictureId: string): void;
  /**
   * A picture went: its painting room closes, its live history goes, what was written on it goes out of the other rooms,
   * the board measures again. Answers how many marks went.
   */
  pictureRemoved(boardId: string, pictureId: string): Promise<number>;
  /** Makes a mark in somebody's name. @throws Problem 'live-not-allowed' where they, or the class, may not mark now. */
  markMade(boardId: string, writer: Writer, mark: Mark): Promise<void>;
  /** Takes one mark away as the server; false when there is none. */
  markRemoved(boardId: string, markId: string): Promise<boolean>;
  /** These people block each other, or do no longer: what they see of each other changes wherever they are. */
  blocksChanged(personIds: readonly string[]): Promise<void>;
  /** A board went: every socket on it is closed, its live history and unshared blobs go. */
  boardRemoved(boardId: string): Promise<void>;
  /**
   * What people are on these boards may have changed (an invite taken back, a member removed or made something
   * else): sockets of those who are nothing or something else now are closed, every browser there is told.
   */
  accessChanged(boardIds: readonly string[]): Promise<void>;
  /** Sessions ended: sockets opened with them are closed. */
  sessionsEnded(sessionIds: readonly string[]): Promise<void>;
  /** Tells every browser on the board that its pictures or people changed. */
  boardChanged(boardId: string): void;
  /** Takes what somebody wrote out of a board's rooms, and out of their logs. Answers how many marks went. */
  personForgotten(boardId: string, personId: string): Promise<number>;
  /** Puts marks onto a board in somebody's name, all or none. @throws Problem 'live-not-allowed'. */
  marksTakenIn(boardId: string, writer: Writer, marks: readonly Mark[]): Promise<void>;
  /** Takes the archive of a board in, whole or not at all; whoever takes it in owns it. Throws a `Problem`. */
  takeInBoard(path: string, takerId: string): Promise<TakenBoard>;
  /** Whether rooms and workers answer. */
  healthy(): Promise<boolean>;
}

const SERVICES = Symbol.for('veilstep.services');

/** Called once by `server/main.ts`. */
export function offerServices(services: Services): void {
  (globalThis as Record<symbol, unknown>)[SERVICES] = services;
}

/** @throws Error when called outside the running server: a bug. */
export function services(): Services {
  const offered = (globalThis as Record<symbol, unknown>)[SERVICES];
  if (!offered) throw new Error('The server has not offered its services yet.');
  return offered as Services;
}
