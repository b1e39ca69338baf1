/**
 * One room: its document, its guard, the people in it.
 *
 * In the flow: connection → guard → append (awaited) → document → others. The document holds only what is
 * stored, so nobody is ever shown what a crash could take back. IO: the store, through `appends`.
 */
import * as Y from 'yjs';
import type { ClassState } from '../core/class/state.ts';
import { documentFrom } from '../core/live/document.ts';
import type { RoomName } from '../core/live/layout.ts';
import type { Writer } from '../core/live/permission.ts';
import type { Refusal } from '../core/live/wire.ts';
import { lastUpdateId, readRoom, replaceBySnapshot } from '../store/live-updates.ts';
import { isDiskFull } from '../store/trouble.ts';
import type { Appends } from './appends.ts';
import type { Connection } from './connection.ts';
import { answerFrame, askFrame, epochFrame, timeFrame, updateFrame, wholeFrame } from './frames.ts';
import { Guard } from './guard.ts';
import { PresenceDesk } from './presence-desk.ts';
import { REFUSALS } from './sentences.ts';

/** What a room needs from around it. */
export interface RoomSurroundings {
  appends: Appends;
  /** Called after any change was stored and passed on, the server's own too. */
  stored(room: Room): void;
  /** Called after people's changes were stored and passed on. */
  changed(room: Room): void;
  /** Whether a painting of the board may be sketched over now. */
  allowsSketch(boardId: string, pictureId: string): boolean;
  /** What the board's class is doing now. */
  classNow(boardId: string): ClassState;
  /** Called when the last person left. */
  emptied(room: Room): void;
}

/** An accepted update on its way to the store; `sender` is null for the server's own. */
interface OnItsWay {
  update: Uint8Array;
  sender: Connection | null;
}

/** Building a large document blocks what is still to be sent. */
const ANSWER_FIRST_MS = 250;

export class Room {
  readonly boardId: string;
  readonly name: RoomName;
  readonly epoch: number;
  readonly connections = new Set<Connection>();
  readonly presence: PresenceDesk;
  /** As loaded, until somebody needs the document: many come only to look. */
  #history: Uint8Array[];
  #built: Y.Doc | null = null;
  readonly #guard: Guard;
  readonly #around: RoomSurroundings;
  readonly #onTheWay = new Set<OnItsWay>();
  /** Updates that lie beside the snapshot in the store. */
  #loose: number;
  #looseBytes: number;
  #held = 0;
  #gone = false;

  private constructor(
    place: { boardId: string; name: RoomName },
    history: { epoch: number; loose: number; updates: Uint8Array[] },
    around: RoomSurroundings,
  ) {
    this.boardId = place.boardId;
    this.name = place.name;
    // Who is there is told in one room alone: browsers say so in every room they join, and a wall must tell no names.
    this.presence = new PresenceDesk(this.connections, place.name === 'marks');
    this.epoch = history.epoch;
    this.#loose = history.loose;
    this.#around = around;
    this.#history = history.updates;
    this.#looseBytes = bytesIn(history.updates.slice(history.updates.length - history.loose));
    this.#guard = new Guard(place.name, () => this.#accepted(), bytesIn(history.updates), {
      allowsSketch: (pictureId) => around.allowsSketch(place.boardId, pictureId),
      classNow: () => around.classNow(place.boardId),
    });
  }

  /** Loads a room from the store. @throws what the store throws. */
  static async open(boardId: string, name: RoomName, around: RoomSurroundings): Promise<Room> {
    return new Room({ boardId, name }, await readRoom(boardId, name), around);
  }

  get loose(): number {
    return this.#loose;
  }

  /** Bytes of the updates that lie beside the snapshot. */
  get looseBytes(): number {
    return this.#looseBytes;
  }

  get #doc(): Y.Doc {
    if (!this.#built) {
      this.#built = documentFrom(this.name, this.#history);
      this.#history = [];
    }
    return this.#built;
  }

  /** Whether everything accepted is stored and nobody is here or coming. */
  get idle(): boolean {
    return this.connections.size === 0 && this.#onTheWay.size === 0 && this.#held === 0;
  }

  /** Whether the room has left memory; it must not be used any more. */
  get gone(): boolean {
    return this.#gone;
  }

  /** Keeps the room in memory until the returned function is called. */
  hold(): () => void {
    this.#held++;
    return () => {
      this.#held--;
      if (this.idle) this.#around.emptied(this);
    };
  }

  join(connection: Connection): void {
    this.connections.add(connection);
    connection.send(epochFrame(this.epoch));
    connection.send(this.presence.stateFor(connection));
    if (this.name === 'class') connection.send(timeFrame(Date.now()));
  }

  leave(connection: Connection): void {
    this.connections.delete(connection);
    this.presence.leave(connection);
    if (this.connections.size === 0) this.#around.emptied(this);
  }

  /**
   * What a browser lacks. @throws Error when the state vector is not one.
   *
   * Who has nothing gets the stored snapshot as it lies there, without waiting for the document. Only a
   * snapshot: a log may still hold what was deleted.
   */
  answer(stateVector: Uint8Array): Uint8Array {
    const [snapshot] = this.#history;
    const hasNothing = stateVector.length === 1 && stateVector[0] === 0;
    if (hasNothing && snapshot && this.#loose === 0 && !this.#built) return wholeFrame(snapshot);
    return answerFrame(this.#doc, stateVector);
  }

  /** Asks a browser for what the document lacks, once the answer it waits for had time to leave. */
  ask(connection: Connection): void {
    if (this.#built || this.#history.length === 0) connection.send(askFrame(this.#doc));
    else setTimeout(() => this.gone || connection.send(askFrame(this.#doc)), ANSWER_FIRST_MS);
  }

  /** Reads from the document as it is stored. */
  read<T>(reader: (doc: Y.Doc) => T): T {
    return reader(this.#doc);
  }

  /** Takes an update of a person: refused, or stored and then passed on. */
  take(sender: Connection, bytes: Uint8Array): void {
    const verdict = this.#guard.judge(bytes, sender.writer);
    if (verdict.refused) sender.close(verdict.refused);
    else if (verdict.update) this.#store({ update: verdict.update, sender });
  }

  /**
   * Takes an update that somebody made without a socket, judged like any other of theirs.
   *
   * @returns Why it was refused, or null once it is stored and passed on. @throws when it cannot be stored.
   */
  async takeFrom(writer: Writer, bytes: Uint8Array): Promise<Refusal | null> {
    const { refused, update } = this.#guard.judge(bytes, writer);
    if (refused) return refused;
    if (update)
      await new Promise<void>((stored, failed) => this.#store({ update, sender: null }, stored, failed));
    return null;
  }

  /** Makes an edit of the server's own. Resolves once it is stored and passed on. @throws when it cannot be stored. */
  async write(change: (doc: Y.Doc) => void): Promise<void> {
    const update = this.#guard.editAsServer(change);
    if (!update) return;
    await new Promise<void>((stored, failed) => this.#store({ update, sender: null }, stored, failed));
  }

  /** Tells everybody here; for what is not part of the document. */
  tell(frame: Uint8Array): void {
    for (const connection of this.connections) connection.send(frame);
  }

  closeAll(refusal: Refusal): void {
    for (const connection of [...this.connections]) connection.close(refusal);
  }

  /**
   * Puts one garbage-collected document in the place of the log. Deleted text is gone from the store then.
   *
   * Does nothing while an update is on its way: the snapshot would miss it.
   */
  async compact(): Promise<void> {
    if (this.#onTheWay.size > 0) return;
    const snapshot = Y.encodeStateAsUpdate(this.#doc);
    const [loose, looseBytes] = [this.#loose, this.#looseBytes];
    const throughId = await lastUpdateId(this.boardId, this.name);
    if (this.#loose !== loose || this.#onTheWay.size > 0) return;
    await replaceBySnapshot(this.boardId, this.name, throughId, snapshot);
    this.#loose -= loose;
    this.#looseBytes -= looseBytes;
  }

  /** Nobody is seated here any more, for what it holds is about to be changed for good. */
  end(): void {
    this.#gone = true;
  }

  destroy(): void {
    this.#gone = true;
    this.presence.close();
    this.#built?.destroy();
  }

  #store(item: OnItsWay, stored = () => {}, failed: (thrown: unknown) => void = () => {}): void {
    this.#onTheWay.add(item);
    this.#around.appends.append(
      { boardId: this.boardId, room: this.name, bytes: item.update },
      () => {
        this.#passOn(item);
        stored();
      },
      (thrown) => {
        this.#notStored(item, thrown);
        failed(thrown);
      },
    );
  }

  #passOn(item: OnItsWay): void {
    this.#onTheWay.delete(item);
    Y.applyUpdate(this.#doc, item.update);
    this.#loose++;
    this.#looseBytes += item.update.length;
    const frame = updateFrame(item.update);
    for (const connection of this.connections) if (connection !== item.sender) connection.send(frame);
    this.#around.stored(this);
    if (item.sender) this.#around.changed(this);
    if (this.idle) this.#around.emptied(this);
  }

  /** The sender keeps the change, comes back by itself and sends it again; nobody else ever saw it. */
  #notStored(item: OnItsWay, thrown: unknown): void {
    this.#onTheWay.delete(item);
    this.#guard.reset();
    item.sender?.close(isDiskFull(thrown) ? REFUSALS.diskFull() : REFUSALS.troubled());
    if (this.idle) this.#around.emptied(this);
  }

  /** All that is stored or on its way to the store, as one update. */
  #accepted(): Uint8Array {
    if (this.#onTheWay.size === 0) return Y.encodeStateAsUpdate(this.#doc);
    const doc = documentFrom(this.name, [
      Y.encodeStateAsUpdate(this.#doc),
      ...[...this.#onTheWay].map(({ update }) => update),
    ]);
    const bytes = Y.encodeStateAsUpdate(doc);
    doc.destroy();
    return bytes;
  }
}

function bytesIn(updates: Uint8Array[]): number {
  return updates.reduce((total, update) => total + update.length, 0);
}
