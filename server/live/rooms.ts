/**
 * The rooms in memory. Two who join at once share one load; a room leaves memory when it is empty and saved.
 *
 * IO: the store. One instance per process, made by `createLive`.
 */
import type * as Y from 'yjs';
import type { RoomName } from '../core/live/layout.ts';
import { raiseEpoch } from '../store/live-updates.ts';
import type { Appends } from './appends.ts';
import { ClassDesk } from './class-desk.ts';
import { Room, type RoomSurroundings } from './room.ts';
import { REFUSALS } from './sentences.ts';
import { SketchLeave } from './sketch-leave.ts';

/** An empty room stays this long, so that loading a page again costs nothing. */
const LINGER_MS = 10_000;
/** A log of at least this many updates is compacted when its room empties. */
const COMPACT_FROM = 30;
/** So is one of fewer but large updates. */
const COMPACT_FROM_BYTES = 256_000;
/** Compacting waits for what is on its way to the store; the server itself may still write. */
const MOST_GOES = 20;
/** A log of this many is compacted although people are there. */
const COMPACT_BUSY_FROM = 5000;

export interface RoomsTell {
  /** Called after people's changes were stored and passed on. */
  changed(room: Room): void;
  /** Called when first impressions of a board were revealed, or are kept back again. */
  revealed(boardId: string): Promise<void>;
  /** Hears what went wrong where nobody waits for it; the log stays as it was. */
  failed(thrown: unknown): void;
}

export class Rooms {
  readonly #rooms = new Map<string, Promise<Room>>();
  readonly #around: RoomSurroundings;
  readonly #lingering = new Map<Room, NodeJS.Timeout>();
  readonly #failed: (thrown: unknown) => void;
  /** Rooms whose history is being written anew; who wants in waits. */
  readonly #renewing = new Map<string, Promise<void>>();
  readonly #sketchLeave = new SketchLeave((boardId, name, act) => this.use(boardId, name, act));
  /** What the class of each board is doing. */
  readonly class: ClassDesk;

  /** @param tell Whom the rooms tell of what happened in them. */
  constructor(appends: Appends, { changed, revealed, failed }: RoomsTell) {
    this.#failed = failed;
    this.class = new ClassDesk({
      write: (boardId, change) => this.use(boardId, 'class', (room) => room.write(change)),
      revealed,
      failed,
    });
    this.#around = {
      appends,
      changed,
      emptied: (room) => this.#linger(room),
      stored: (room) => {
        this.#sketchLeave.hear(room);
        this.class.hear(room);
      },
      classNow: (boardId) => this.class.now(boardId),
      allowsSketch: (boardId, pictureId) => this.#sketchLeave.allows(boardId, pictureId),
    };
  }

  /** Resolves once the guard of a room knows what it needs of the board's other rooms. @throws what the store throws. */
  async ready({ boardId, name }: Room): Promise<void> {
    await this.class.know(boardId);
    if (name === 'marks') await this.#sketchLeave.know(boardId);
  }

  /**
   * Does something with a room, loaded when it is not in memory.
   *
   * `act` runs in the same turn in which the room was found to be in memory; what must outlast that turn
   * holds the room (`room.hold`), or it might be put away meanwhile and a second one loaded.
   *
   * @throws what the store throws, and what `act` throws.
   */
  async use<T>(boardId: string, name: RoomName, act: (room: Room) => T): Promise<Awaited<T>> {
    for (;;) {
      await this.#renewing.get(keyOf(boardId, name));
      const room = await this.#load(boardId, name);
      if (!room.gone) return await act(room);
    }
  }

  #load(boardId: string, name: RoomName): Promise<Room> {
    const key = keyOf(boardId, name);
    const present = this.#rooms.get(key);
    if (present) return present;
    const loading = Room.open(boardId, name, this.#around);
    this.#rooms.set(key, loading);
    loading.then(
      (room) => this.#linger(room),
      () => this.#rooms.delete(key),
    );
    return loading;
  }

  /**
   * Takes something out of a room for good: out of the document, out of the store, and, by a new epoch, out of the
   * copies of browsers that come back. Whoever is in the room loads it afresh.
   *
   * @throws what the store throws.
   */
  renew(boardId: string, name: RoomName, change: (doc: Y.Doc) => void): Promise<void> {
    return this.use(boardId, name, (room) => {
      const key = keyOf(boardId, name);
      const letGo = room.hold();
      room.end();
      const done = this.#renewed(room, change).finally(() => {
        letGo();
        this.forget(room);
        this.#renewing.delete(key);
      });
      this.#renewing.set(
        key,
        done.catch(() => undefined),
      );
      return done;
    });
  }

  async #renewed(room: Room, change: (doc: Y.Doc) => void): Promise<void> {
    const { appends } = this.#around;
    await room.write(change);
    room.closeAll(REFUSALS.epochOver());
    for (let goes = 0; room.loose > 0 && goes < MOST_GOES; goes++) {
      await appends.settled();
      await room.compact();
    }
    await raiseEpoch(room.boardId, room.name);
  }

  /** Rooms in memory, of one board or all. */
  async present(boardId?: string): Promise<Room[]> {
    const rooms = await Promise.allSettled(this.#rooms.values());
    return rooms
      .flatMap((room) => (room.status === 'fulfilled' ? [room.value] : []))
      .filter((room) => boardId === undefined || room.boardId === boardId);
  }

  /** Takes a room out of memory whose history is being erased. Its people must be gone. */
  forget(room: Room): void {
    this.#stopLingering(room);
    this.#rooms.delete(keyOf(room.boardId, room.name));
    if (room.name === 'marks') this.#sketchLeave.forget(room.boardId);
    if (![...this.#rooms.keys()].some((key) => key.startsWith(`${room.boardId}/`)))
      this.class.forget(room.boardId);
    room.destroy();
  }

  /** Compacts rooms whose log grew long while people stayed. */
  async compactLong(): Promise<void> {
    for (const room of await this.present()) {
      if (room.loose >= COMPACT_BUSY_FROM) await room.compact().catch(this.#failed);
    }
  }

  /** Compacts and forgets every room without people; called at the stop, after the appends have settled. */
  async putAway(): Promise<void> {
    for (const room of await this.present()) await this.#putAway(room);
  }

  #linger(room: Room): void {
    this.#stopLingering(room);
    if (!room.idle) return;
    const timer = setTimeout(() => void this.#putAway(room), LINGER_MS);
    timer.unref();
    this.#lingering.set(room, timer);
  }

  #stopLingering(room: Room): void {
    clearTimeout(this.#lingering.get(room));
    this.#lingering.delete(room);
  }

  async #putAway(room: Room): Promise<void> {
    this.#stopLingering(room);
    if (!room.idle) return;
    try {
      // What somebody wrote in silence and took back is nobody's business: no log of it stays.
      const due = room.name.startsWith('silent/') ? room.loose > 0 : room.loose >= COMPACT_FROM;
      if (due || room.looseBytes >= COMPACT_FROM_BYTES) await room.compact();
    } catch (thrown) {
      this.#failed(thrown);
    }
    if (room.idle) this.forget(room);
  }
}

function keyOf(boardId: string, name: RoomName): string {
  return `${boardId}/${name}`;
}
