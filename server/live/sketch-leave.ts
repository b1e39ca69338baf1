/**
 * Which paintings of a board their painters let others sketch over, for the guard of its marks.
 *
 * In the flow: painting rooms → [sketch leave] → guard of the marks room. The leave stands in each painting's own room;
 * it is read when somebody joins the marks, and followed from then on. IO: the store, through the rooms.
 */
import type { RoomName } from '../core/live/layout.ts';
import { allowsSketch } from '../core/live/remarks.ts';
import { paintingRoomsOf } from '../store/live-updates.ts';
import type { Room } from './room.ts';

/** Has a room read, now or once it is loaded. */
type UseRoom = (boardId: string, name: RoomName, act: (room: Room) => void) => Promise<void>;

const PREFIX = 'painting/';

export class SketchLeave {
  readonly #use: UseRoom;
  readonly #allowed = new Map<string, Set<string>>();
  readonly #reading = new Map<string, Promise<void>>();

  constructor(use: UseRoom) {
    this.#use = use;
  }

  /** Resolves once the board's paintings are known. @throws what the store throws. */
  know(boardId: string): Promise<void> {
    const under = this.#reading.get(boardId);
    if (under) return under;
    const reading = this.#readAll(boardId);
    this.#reading.set(boardId, reading);
    reading.catch(() => this.forget(boardId));
    return reading;
  }

  /** Takes down what a painting's room says now. Called for every room whose document changed. */
  hear(room: Room): void {
    const pictures = this.#allowed.get(room.boardId);
    if (!pictures || !room.name.startsWith(PREFIX)) return;
    const pictureId = room.name.slice(PREFIX.length);
    if (room.read(allowsSketch)) pictures.add(pictureId);
    else pictures.delete(pictureId);
  }

  allows(boardId: string, pictureId: string): boolean {
    return this.#allowed.get(boardId)?.has(pictureId) ?? false;
  }

  forget(boardId: string): void {
    this.#allowed.delete(boardId);
    this.#reading.delete(boardId);
  }

  async #readAll(boardId: string): Promise<void> {
    this.#allowed.set(boardId, new Set());
    // Each is taken down in the turn in which it is read, so that what is heard later is newer.
    for (const name of await paintingRoomsOf(boardId))
      await this.#use(boardId, name, (room) => this.hear(room));
  }
}
