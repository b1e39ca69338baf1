/**
 * What the main process offers to Next's handlers.
 *
 * Next bundles its own copy of whatever `app/` imports, so a handler must never import rooms or workers: it
 * would get a second set. `server/main.ts` puts one object behind a global symbol and handlers call it here.
 * One process is all that is supported, so a message bus would carry the same calls with more to go wrong.
 */

import type { IncomingPicture } from '../core/contract/incoming.ts';
import type { MeasureDocument } from '../core/contract/measures.ts';
import type { Pending } from '../core/contract/responses.ts';

export interface Services {
  /** Decodes, strips, stores and announces an upload. Throws a `Problem` and leaves nothing behind when refused. */
  takeInPicture(incoming: IncomingPicture): Promise<{ id: string; width: number; height: number }>;
  /** The current measures of a painting, or what is being done about them. */
  measuresOf(boardId: string, pictureId: string): Promise<MeasureDocument | Pending>;
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
