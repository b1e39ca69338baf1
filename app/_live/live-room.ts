/**
 * One room of the live board in this browser: a document, its copy, its line to the server, and what happens when the
 * server takes something back.
 *
 * In the flow: server room <-> [live-room] -> board-store. IO: a WebSocket, storage through `room-copies`. After a
 * refusal document and copy are thrown away and loaded afresh, so that nobody looks at edits which nobody else has. No
 * session and no such room end it, and clear the copy; troubles of the line are tried again for ever.
 */
import { readVarString, readVarUint } from 'lib0/decoding';
import { WebsocketProvider } from 'y-websocket';
import * as Y from 'yjs';
import { declareRoots } from '#server/core/live/document.ts';
import type { RoomName } from '#server/core/live/layout.ts';
import {
  CLOSE,
  dropsCopy,
  MESSAGE_ANNOUNCE,
  MESSAGE_EPOCH,
  MESSAGE_REFUSED,
  MESSAGE_TIME,
  Refusal,
} from '#server/core/live/wire.ts';
import { type CopyPlace, copyEpoch, dropCopy, openCopy, type RoomCopy } from './room-copies.ts';
import { Waiting } from './waiting.ts';

/** Codes after which coming back with a fresh document would change nothing. */
const SHUT_FOR_GOOD: readonly number[] = [CLOSE.notEntered, CLOSE.noSuchRoom];

/** A server that will not have a change says so within this time. */
const ANSWERED_WITHIN_MS = 5000;

/** `veiled` = a silent look is on, and the room comes when it is over. */
export type RoomState = 'connecting' | 'connected' | 'offline' | 'veiled' | 'closed';

/** What a class is doing now, and what somebody wrote in silence, is not kept in the browser. */
const isKept = (name: RoomName) => name !== 'class' && !name.startsWith('silent/');

/** A document that the server would not have. */
export interface Rejected {
  sentence: string;
  code: number;
  doc: Y.Doc;
  /** What in it the server may never have had, as `Waiting` names it. */
  unsent: ReadonlySet<string>;
}

export interface RoomEvents {
  /** The document changed, or another document took its place. */
  changed(): void;
  /** The line went up or down. */
  line(): void;
  /** Another document took the place of `before`. */
  renewed(before: Y.Doc): void;
  /** The server refused an edit; the fresh document comes in now. */
  refused(rejected: Rejected): void;
  /** The room is shut for this person. */
  shut(rejected: Rejected): void;
  /** The server says that pictures or people of the board changed. */
  announced(): void;
}

export class LiveRoom {
  readonly name: RoomName;
  readonly waiting: Waiting;
  doc: Y.Doc;
  state: RoomState = 'connecting';
  /** True once the server's document or this browser's copy is there; stays true through an offline time. */
  loaded = false;
  /** True once the line was lost after the first load. */
  wasOffline = false;
  /** The server's sentence when the room is closed for good. */
  closedSentence: string | null = null;
  /** How far the server's clock is ahead of this one, milliseconds; told on joining the `class` room. */
  aheadMs = 0;
  provider: WebsocketProvider;
  readonly #address: string;
  readonly #place: CopyPlace;
  readonly #events: RoomEvents;
  #copy: RoomCopy | null = null;
  /** The server's document came at least once in the life of the present one. */
  #heard = false;
  /** The server's whole sentence, which comes just before it closes. */
  #refusal: string | null = null;

  /** @param address `ws://host/live/<boardId>`. */
  constructor(address: string, place: CopyPlace, events: RoomEvents) {
    this.#address = address;
    this.#place = place;
    this.#events = events;
    this.name = place.room;
    this.waiting = new Waiting(place);
    this.doc = declareRoots(new Y.Doc(), this.name);
    this.provider = this.#connect();
    void this.#begin();
  }

  close(): void {
    this.#copy?.close();
    this.provider.destroy();
    this.doc.destroy();
  }

  /** The browser itself noticed that the line went, or came back: nothing is waited for. */
  lineChanged(up: boolean): void {
    if (this.state === 'closed' || this.state === 'veiled') return;
    if (!up) this.provider.disconnect();
    this.provider.connect();
  }

  /** What was kept in this browser is shown before the server answers, and joins under the epoch it was kept in. */
  async #begin(): Promise<void> {
    const { doc, provider } = this;
    const epoch = isKept(this.name) ? copyEpoch(this.#place) : null;
    const copy = epoch === null ? null : await openCopy(this.#place, epoch, doc);
    if (this.doc !== doc || doc.isDestroyed) {
      copy?.close();
      return;
    }
    if (copy && isWhole(doc)) {
      this.#copy = copy;
      this.waiting.recall();
      provider.params = { epoch: String(epoch) };
      this.loaded = true;
      this.#events.changed();
    } else if (copy) {
      // Another window cleared the copy while it was written: what it builds on is gone.
      this.#replace();
      doc.destroy();
    }
    this.provider.connect();
  }

  #connect(): WebsocketProvider {
    const { doc } = this;
    const provider = new WebsocketProvider(this.#address, this.name, doc, {
      connect: false,
      disableBc: true,
      maxBackoffTime: 5000,
    });
    this.#listenToServer(provider);
    doc.on('update', () => this.#events.changed());
    doc.on('afterTransaction', (transaction: Y.Transaction) => {
      if (!transaction.local || transaction.changed.size === 0 || this.state === 'closed') return;
      if (provider.synced) this.waiting.wrote(doc, transaction, Date.now());
      else this.waiting.add(doc, transaction);
    });
    provider.on('status', ({ status }) => {
      if (status !== 'disconnected' || this.state === 'closed' || this.state === 'veiled') return;
      this.waiting.lineDied(provider.wsLastMessageReceived);
      this.#lineIs('offline');
    });
    provider.on('connection-close', (event) => {
      // What one may do changed: the board says what it is now, and the line comes back by itself.
      if (event?.code === CLOSE.roleChanged) this.#events.announced();
      if (event?.code === CLOSE.veiled) this.#waitForEnd(provider);
      if (this.state === 'connecting') this.#lineIs('offline');
    });
    provider.on('sync', (synced) => {
      if (!synced) return;
      this.loaded = true;
      this.#heard = true;
      this.wasOffline = false;
      this.waiting.goesOut(Date.now());
      this.#lineIs('connected');
      this.#events.changed();
    });
    provider.on('closed', ({ code, reason }) => this.#shut(code, reason));
    return provider;
  }

  /** The silent look is over: the room may come now. */
  unveil(): void {
    if (this.state !== 'veiled') return;
    this.state = 'connecting';
    this.provider.connect();
  }

  /** Nothing is asked for again until the silent look is over. */
  #waitForEnd(provider: WebsocketProvider): void {
    this.#refusal = null;
    this.#lineIs('veiled');
    // The provider is in the middle of its own closing.
    queueMicrotask(() => provider.disconnect());
  }

  #lineIs(state: RoomState): void {
    if (state === 'offline') this.wasOffline = true;
    this.state = state;
    this.#events.line();
  }

  #listenToServer(provider: WebsocketProvider): void {
    provider.messageHandlers[MESSAGE_ANNOUNCE] = () => this.#events.announced();
    provider.messageHandlers[MESSAGE_EPOCH] = (_encoder, decoder) => {
      const epoch = readVarUint(decoder);
      // Every later joining says of which history this document is: another one is refused, and never mixed in.
      provider.params = { epoch: String(epoch) };
      if (!this.#copy && isKept(this.name)) void this.#keepCopy(epoch);
    };
    provider.messageHandlers[MESSAGE_TIME] = (_encoder, decoder) => {
      this.aheadMs = readVarUint(decoder) - Date.now();
    };
    provider.messageHandlers[MESSAGE_REFUSED] = (_encoder, decoder) => {
      this.#refusal = refusalSentence(readVarString(decoder));
    };
  }

  async #keepCopy(epoch: number): Promise<void> {
    const { doc } = this;
    const copy = await openCopy(this.#place, epoch, doc);
    const stands = this.doc === doc && !doc.isDestroyed && this.state !== 'closed' && !this.#copy;
    if (stands) this.#copy = copy;
    else copy?.close();
  }

  /** The server ended the connection on purpose. */
  #shut(code: number, reason: string): void {
    const sentence = this.#refusal ?? reason;
    this.#refusal = null;
    const unsent = this.waiting.doubtful(Date.now() - ANSWERED_WITHIN_MS);
    const rejected = { sentence, code, doc: this.doc, unsent };
    // Refused before anything came, and not for the age of our copy: the room itself is shut for this person.
    const shut =
      SHUT_FOR_GOOD.includes(code) || !dropsCopy(code) || !(this.#heard || code === CLOSE.epochOver);
    if (shut) {
      if (dropsCopy(code)) this.#drop();
      this.closedSentence = sentence;
      this.#lineIs('closed');
      this.#events.shut(rejected);
      return;
    }
    this.#replace();
    this.provider.connect();
    this.#events.refused(rejected);
    this.#events.changed();
  }

  /** Copy and document go; an empty document waits for the server's. The old document is left to who asks for its words. */
  #replace(): void {
    const before = this.doc;
    this.#drop();
    this.provider.destroy();
    this.doc = declareRoots(new Y.Doc(), this.name);
    this.loaded = false;
    this.#heard = false;
    this.state = 'connecting';
    this.provider = this.#connect();
    this.#events.renewed(before);
  }

  #drop(): void {
    this.#copy?.close();
    this.#copy = null;
    this.waiting.clear();
    dropCopy(this.#place);
  }
}

/** Whether nothing in the document waits for something that never came. */
function isWhole({ store }: Y.Doc): boolean {
  return store.pendingStructs === null && store.pendingDs === null;
}

/** The sentence in the server's message; an unreadable one says nothing. */
function refusalSentence(json: string): string | null {
  try {
    return Refusal.parse(JSON.parse(json)).message;
  } catch {
    return null;
  }
}
