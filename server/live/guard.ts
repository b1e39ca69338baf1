/**
 * The guard of a room: a standing shadow document on which every update is tried before it is stored.
 *
 * In the flow: message → [guard] → append → room document → others. Permission is judged by effect: what the
 * update changed, never what its bytes look like. What passes on is the effect as the shadow encodes it.
 * Pure apart from its own shadow.
 */
import * as Y from 'yjs';
import type { ClassState } from '../core/class/state.ts';
import { declareRoots, type RoomKind, roomKind } from '../core/live/document.ts';
import { touchedEntries } from '../core/live/effect.ts';
import { ROOT_KEYS, type RoomName } from '../core/live/layout.ts';
import { mayWriteRoom, type Writer } from '../core/live/permission.ts';
import type { Refusal } from '../core/live/wire.ts';
import { judgeEntries } from './judge-entries.ts';
import { MarkAuthors } from './mark-authors.ts';
import { REFUSALS } from './sentences.ts';

/** `update` is null when nothing changed. */
export type Verdict = { refused: null; update: Uint8Array | null } | { refused: Refusal; update?: undefined };

/** Clocks beyond this lose exactness in JavaScript's numbers; no honest browser comes near. */
const LARGEST_CLOCK = 2 ** 45;
const KEPT_CLIENTS = 50_000;
/** What a room may grow to, in bytes of updates. */
export const ROOM_BYTES = 64_000_000;

/** What a guard goes by that stands in other rooms of the board. */
export interface BoardFacts {
  /** Whether a painting may be sketched over now. */
  allowsSketch(pictureId: string): boolean;
  classNow(): ClassState;
}

export class Guard {
  readonly #kind: RoomKind;
  readonly #room: RoomName;
  readonly #authors = new MarkAuthors();
  /** Yjs client id → person; ids of one person are not taken over by another while the room is open. */
  readonly #clients = new Map<number, string>();
  readonly #truth: () => Uint8Array;
  readonly #facts: BoardFacts;
  /** Null until the first update is tried, and after a refusal: many come only to look. */
  #standing: Y.Doc | null = null;
  #sizeBytes: number;

  /**
   * @param truth What the shadow must equal after a refusal: all that is accepted, stored or being stored.
   * @param sizeBytes Of the updates that the room was loaded from.
   * @param facts Of the board's other rooms, asked anew for every update.
   */
  constructor(room: RoomName, truth: () => Uint8Array, sizeBytes: number, facts: BoardFacts) {
    this.#room = room;
    this.#kind = roomKind(room);
    this.#truth = truth;
    this.#sizeBytes = sizeBytes;
    this.#facts = facts;
  }

  /** Tries an update from a browser. Whatever it is, the room's document is not touched. */
  judge(bytes: Uint8Array, writer: Writer): Verdict {
    // Two zeros: no structs and no deletions, what a browser without a copy answers. No effect to judge.
    if (bytes.length === 2 && bytes[0] === 0 && bytes[1] === 0) return { refused: null, update: null };
    if (this.#sizeBytes + bytes.length > ROOM_BYTES) return { refused: REFUSALS.roomFull(ROOM_BYTES) };
    const gap = this.#preview(bytes, writer.personId);
    if (gap) return { refused: gap };
    try {
      const tried = this.#try(() => Y.applyUpdate(this.#shadow, bytes));
      const refused = this.#refusalOf(tried, writer);
      if (refused) {
        this.reset();
        return { refused };
      }
      this.#accept(tried, writer.personId);
      return { refused: null, update: tried.update };
    } catch {
      // Yjs and the shapes throw on what no browser of ours sends; the sender is told, the shadow made anew.
      this.reset();
      return { refused: REFUSALS.malformed() };
    }
  }

  /**
   * Makes an edit of the server's own.
   *
   * @returns The update, or null when the edit changed nothing.
   * @throws Error when the edit leaves something that does not fit the layout: a bug.
   */
  editAsServer(change: (doc: Y.Doc) => void): Uint8Array | null {
    try {
      const tried = this.#try(() => change(this.#shadow));
      const touched = touchedEntries(this.#shadow, tried.transaction);
      const refused = touched === null ? REFUSALS.incomplete() : judgeEntries(this.#context(null), touched);
      if (refused) throw new Error(`The server’s own edit does not fit the room: ${refused.message}`);
      this.#accept(tried, 'server');
      return tried.update;
    } catch (thrown) {
      this.reset();
      throw thrown;
    }
  }

  /** The shadow is made anew before the next update: something accepted could not be stored. */
  reset(): void {
    this.#standing?.destroy();
    this.#standing = null;
  }

  get #shadow(): Y.Doc {
    if (this.#standing) return this.#standing;
    const shadow = declareRoots(new Y.Doc({ gc: true }), this.#room);
    Y.applyUpdate(shadow, this.#truth());
    if (this.#kind === 'marks') this.#authors.learn(shadow);
    this.#standing = shadow;
    return shadow;
  }

  /** What can be seen without applying: unreadable bytes, gaps, another person's client id. */
  #preview(bytes: Uint8Array, personId: string): Refusal | null {
    try {
      const { from, to } = Y.parseUpdateMeta(bytes);
      const clients = this.#shadow.store.clients;
      for (const [client, end] of to) {
        const structs = clients.get(client);
        const last = structs?.at(-1);
        const state = last ? last.id.clock + last.length : 0;
        if (end <= state) continue;
        if (end > LARGEST_CLOCK) return REFUSALS.malformed();
        if ((from.get(client) ?? 0) > state) return REFUSALS.incomplete();
        if ((this.#clients.get(client) ?? personId) !== personId) return REFUSALS.foreignHistory();
      }
      return null;
    } catch {
      return REFUSALS.malformed();
    }
  }

  #try(change: () => void): Tried {
    const shadow = this.#shadow;
    let update: Uint8Array | null = null;
    const keep = (bytes: Uint8Array) => {
      update = bytes;
    };
    shadow.on('update', keep);
    try {
      const transaction = shadow.transact((current) => {
        change();
        return current;
      });
      return { transaction, update };
    } finally {
      shadow.off('update', keep);
    }
  }

  #refusalOf(tried: Tried, writer: Writer): Refusal | null {
    const { pendingStructs, pendingDs } = this.#shadow.store;
    if (pendingStructs !== null || pendingDs !== null) return REFUSALS.incomplete();
    if (!this.#rootsKnown()) return REFUSALS.badShape('the board');
    if (tried.update === null) return null;
    if (!mayWriteRoom(writer, this.#kind)) return REFUSALS.mayNotWrite();
    const touched = touchedEntries(this.#shadow, tried.transaction);
    return touched === null ? REFUSALS.badShape('the board') : judgeEntries(this.#context(writer), touched);
  }

  #rootsKnown(): boolean {
    const known: readonly string[] = ROOT_KEYS[this.#kind];
    return this.#shadow.share.size === known.length;
  }

  #context(writer: Writer | null) {
    const { allowsSketch, classNow } = this.#facts;
    const before = { authors: this.#authors, allowsSketch, class: classNow() };
    return { doc: this.#shadow, room: this.#room, kind: this.#kind, before, writer };
  }

  #accept(tried: Tried, personId: string): void {
    if (tried.update === null) return;
    this.#sizeBytes += tried.update.length;
    const { beforeState, afterState } = tried.transaction;
    for (const [client, clock] of afterState) {
      if (beforeState.get(client) !== clock && this.#clients.size < KEPT_CLIENTS) {
        this.#clients.set(client, personId);
      }
    }
    if (this.#kind === 'marks') this.#authors.follow(this.#shadow, tried.transaction);
  }
}

interface Tried {
  transaction: Y.Transaction;
  update: Uint8Array | null;
}
