/**
 * Copies of live rooms that this browser keeps, so that what was done without a line outlives the page.
 *
 * In the flow: live-room <-> [room-copies] <-> IndexedDB, one database a person, board, room and epoch; which there are
 * stands in localStorage. IO: both. Where either is switched off or full, rooms work without copies. The part that
 * writes them is fetched when the first copy is opened.
 */
import type { IndexeddbPersistence } from 'y-indexeddb';
import type * as Y from 'yjs';
import type { RoomName } from '#server/core/live/layout.ts';

/** Whose copy of which room. */
export interface CopyPlace {
  personId: string;
  boardId: string;
  room: RoomName;
}

const PREFIX = 'veilstep-copy/';
const WAITING_PREFIX = 'veilstep-waiting/';
/** Storage that does not answer for this long is done without. */
const PATIENCE_MS = 2500;

const pathOf = ({ personId, boardId, room }: CopyPlace) => `${personId}/${boardId}/${room}`;
const keyOf = (place: CopyPlace) => PREFIX + pathOf(place);
/** Where is kept what waits to be sent from a copy; it goes with the copy. */
export const waitingKeyOf = (place: CopyPlace) => WAITING_PREFIX + pathOf(place);
const databaseOf = (key: string, epoch: number) => `${key}/${epoch}`;

/** The place of a copy from its key; null for keys of something else. */
function placeOf(key: string | null): CopyPlace | null {
  const [personId, boardId, ...room] = key?.startsWith(PREFIX) ? key.slice(PREFIX.length).split('/') : [];
  if (!personId || !boardId || room.length === 0) return null;
  return { personId, boardId, room: room.join('/') as RoomName }; // written by `keyOf` from a room's name
}

/** The epoch of the copy that is kept, or null when there is none. */
export function copyEpoch(place: CopyPlace): number | null {
  try {
    const kept = localStorage.getItem(keyOf(place));
    return kept !== null && /^\d{1,9}$/.test(kept) ? Number(kept) : null;
  } catch {
    return null;
  }
}

/** All copies of this browser, whosever they are. */
export function keptCopies(): CopyPlace[] {
  try {
    const keys = Array.from({ length: localStorage.length }, (_, at) => localStorage.key(at));
    return keys.flatMap((key) => placeOf(key) ?? []);
  } catch {
    return [];
  }
}

/** A copy that follows its document. */
export interface RoomCopy {
  /** Stops following; the copy stays. */
  close(): void;
}

/**
 * Reads a copy into the document and follows it from then on.
 *
 * @returns Null when this browser keeps nothing, or does not answer soon.
 */
export async function openCopy(place: CopyPlace, epoch: number, doc: Y.Doc): Promise<RoomCopy | null> {
  if (typeof indexedDB === 'undefined') return null;
  const key = keyOf(place);
  try {
    localStorage.setItem(key, String(epoch));
    if (!(await opens(databaseOf(key, epoch)))) return null;
    const { IndexeddbPersistence: Persistence } = await import('y-indexeddb');
    if (doc.isDestroyed) return null;
    const persistence = new Persistence(databaseOf(key, epoch), doc);
    const there = await soon(persistence.whenSynced);
    if (there === null) {
      void persistence.destroy();
      return null;
    }
    leaveWhenAsked(persistence);
    return { close: () => void persistence.destroy() };
  } catch {
    // Storage switched off or full, or the part could not be fetched: the room does without.
    return null;
  }
}

/** Another window clears the copy: this one stops writing to it. A write that finds no room ends the copy as well. */
function leaveWhenAsked(persistence: IndexeddbPersistence): void {
  const { db } = persistence;
  if (!db) return;
  db.onversionchange = () => void persistence.destroy();
  db.onclose = () => void persistence.destroy();
  db.onabort = () => void persistence.destroy();
}

/** Whether the browser lets us have the database at all; asked first, since what follows it takes no refusal. */
async function opens(name: string): Promise<boolean> {
  const opened = new Promise<boolean>((resolve) => {
    const request = indexedDB.open(name);
    request.onupgradeneeded = () => {
      // As the part that writes copies lays them out, so that it finds what it would have made.
      request.result.createObjectStore('updates', { autoIncrement: true });
      request.result.createObjectStore('custom');
    };
    request.onsuccess = () => {
      request.result.close();
      resolve(true);
    };
    request.onerror = () => resolve(false);
  });
  return (await soon(opened)) ?? false;
}

async function soon<T>(coming: Promise<T>): Promise<T | null> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<null>((resolve) => {
    timer = setTimeout(() => resolve(null), PATIENCE_MS);
  });
  try {
    return await Promise.race([coming, late]);
  } finally {
    clearTimeout(timer);
  }
}

/** Clears a copy. What follows it, in this window or another, stops by itself. */
export function dropCopy(place: CopyPlace): void {
  const key = keyOf(place);
  const epoch = copyEpoch(place);
  try {
    localStorage.removeItem(key);
    localStorage.removeItem(waitingKeyOf(place));
    if (epoch !== null) indexedDB.deleteDatabase(databaseOf(key, epoch));
  } catch {
    // Where nothing can be kept there is nothing to clear.
  }
}

/** Clears every copy that `which` names. */
export function dropCopies(which: (place: CopyPlace) => boolean): void {
  for (const place of keptCopies()) if (which(place)) dropCopy(place);
}
