/**
 * What the class of each board is doing, known in the moment it is asked, for guards, doors and HTTP.
 *
 * In the flow: class room stored → [class desk] → guards of the board's rooms, doorway, handlers. It also has the
 * server's own part written: when a step began, and which first impressions are revealed. IO: the store.
 */
import type * as Y from 'yjs';
import { keepClock } from '../core/class/clock.ts';
import { type ClassState, isTakenDown, NO_CLASS, readClass } from '../core/class/state.ts';
import { documentFrom } from '../core/live/document.ts';
import { readRoom } from '../store/live-updates.ts';
import type { Room } from './room.ts';

export interface ClassSurroundings {
  /** Makes an edit of the server's own in the board's `class` room. */
  write(boardId: string, change: (doc: Y.Doc) => void): Promise<void>;
  /** First impressions of a painting may be read from now on, or may not any more. */
  revealed(boardId: string): Promise<void>;
  failed(thrown: unknown): void;
}

export class ClassDesk {
  readonly #around: ClassSurroundings;
  /** Of boards with a room in memory. */
  readonly #states = new Map<string, ClassState>();

  constructor(around: ClassSurroundings) {
    this.#around = around;
  }

  /** Resolves once the board's class is known, until `forget`. @throws what the store throws. */
  async know(boardId: string): Promise<void> {
    if (this.#states.has(boardId)) return;
    const read = await this.#readStored(boardId);
    // What was heard meanwhile is newer.
    if (this.#states.has(boardId)) return;
    this.#states.set(boardId, read);
    // A stop may have come between a step and the server's note of it.
    if (!isTakenDown(read)) this.#keep(boardId);
  }

  /** As `know`, without remembering a board that has no room in memory. @throws what the store throws. */
  async read(boardId: string): Promise<ClassState> {
    return this.#states.get(boardId) ?? (await this.#readStored(boardId));
  }

  /** @returns An empty class for a board that is not known. */
  now(boardId: string): ClassState {
    return this.#states.get(boardId) ?? NO_CLASS;
  }

  /** Takes down what the class room says now. Called for every room whose document changed. */
  hear(room: Room): void {
    if (room.name !== 'class') return;
    const before = this.now(room.boardId);
    const state = room.read(readClass);
    this.#states.set(room.boardId, state);
    if (state.now !== before.now) this.#keep(room.boardId);
    if (!sameKeys(before.shown, state.shown)) {
      this.#around.revealed(room.boardId).catch(this.#around.failed);
    }
  }

  forget(boardId: string): void {
    this.#states.delete(boardId);
  }

  #keep(boardId: string): void {
    this.#around.write(boardId, (doc) => keepClock(doc, Date.now())).catch(this.#around.failed);
  }

  async #readStored(boardId: string): Promise<ClassState> {
    const { updates } = await readRoom(boardId, 'class');
    if (updates.length === 0) return NO_CLASS;
    const doc = documentFrom('class', updates);
    const state = readClass(doc);
    doc.destroy();
    return state;
  }
}

function sameKeys(one: ReadonlyMap<string, unknown>, two: ReadonlyMap<string, unknown>): boolean {
  return one.size === two.size && [...one.keys()].every((key) => two.has(key));
}
