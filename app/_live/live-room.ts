/**
 * One room of the live board in this browser: a document, its line to the server, and what happens when the
 * server takes something back.
 *
 * In the flow: server room <-> [live-room] -> board-store. IO: a WebSocket. After a refusal the document is
 * thrown away and loaded afresh, so that nobody looks at edits which nobody else has. No session and no such
 * room end it; troubles of the line are tried again for ever.
 */
import { readVarString } from 'lib0/decoding';
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
  Refusal,
} from '#server/core/live/wire.ts';

/** Codes after which coming back with a fresh document would change nothing. */
const SHUT_FOR_GOOD: readonly number[] = [CLOSE.notEntered, CLOSE.noSuchRoom];

export type RoomState = 'connecting' | 'connected' | 'offline' | 'closed';

export interface RoomEvents {
  /** The document changed, or another document took its place. */
  changed(): void;
  /** The line went up or down. */
  line(): void;
  /** The server refused an edit. `before` is the document with the refused edit; the fresh one comes in now. */
  refused(sentence: string, before: Y.Doc): void;
  /** The server says that pictures or people of the board changed. */
  announced(): void;
}

export class LiveRoom {
  readonly name: RoomName;
  doc: Y.Doc;
  state: RoomState = 'connecting';
  /** True once the server's document has arrived; stays true through an offline time. */
  loaded = false;
  /** True once the line was lost after the first load. */
  wasOffline = false;
  /** The server's sentence when the room is closed for good. */
  closedSentence: string | null = null;
  provider: WebsocketProvider;
  readonly #address: string;
  readonly #events: RoomEvents;
  /** The server's whole sentence, which comes just before it closes. */
  #refusal: string | null = null;

  constructor(address: string, name: RoomName, events: RoomEvents) {
    this.#address = address;
    this.name = name;
    this.#events = events;
    this.doc = declareRoots(new Y.Doc(), name);
    this.provider = this.#connect();
  }

  close(): void {
    this.provider.destroy();
    this.doc.destroy();
  }

  #connect(): WebsocketProvider {
    const { doc } = this;
    const provider = new WebsocketProvider(this.#address, this.name, doc, {
      disableBc: true,
      maxBackoffTime: 5000,
    });
    this.#listenToServer(provider);
    doc.on('update', () => this.#events.changed());
    provider.on('status', ({ status }) => {
      if (status === 'disconnected' && this.state !== 'closed') this.#lineIs('offline');
    });
    provider.on('connection-close', (event) => {
      // What one may do changed: the board says what it is now, and the line comes back by itself.
      if (event?.code === CLOSE.roleChanged) this.#events.announced();
      if (this.state === 'connecting') this.#lineIs('offline');
    });
    provider.on('sync', (synced) => {
      if (!synced) return;
      this.loaded = true;
      this.wasOffline = false;
      this.#lineIs('connected');
      this.#events.changed();
    });
    provider.on('closed', ({ code, reason }) => this.#shut(code, reason));
    return provider;
  }

  #lineIs(state: RoomState): void {
    if (state === 'offline') this.wasOffline = true;
    this.state = state;
    this.#events.line();
  }

  #listenToServer(provider: WebsocketProvider): void {
    provider.messageHandlers[MESSAGE_ANNOUNCE] = () => this.#events.announced();
    // Nothing is kept between visits, so the epoch needs no comparing: a raised one closes the socket.
    provider.messageHandlers[MESSAGE_EPOCH] = () => undefined;
    provider.messageHandlers[MESSAGE_REFUSED] = (_encoder, decoder) => {
      this.#refusal = refusalSentence(readVarString(decoder));
    };
  }

  /** The server ended the connection on purpose. */
  #shut(code: number, reason: string): void {
    const sentence = this.#refusal ?? reason;
    this.#refusal = null;
    // Refused before anything came: the room itself is shut for this person.
    if (SHUT_FOR_GOOD.includes(code) || !dropsCopy(code) || !this.loaded) {
      this.closedSentence = sentence;
      this.#lineIs('closed');
      return;
    }
    const before = this.doc;
    this.provider.destroy();
    this.doc = declareRoots(new Y.Doc(), this.name);
    this.loaded = false;
    this.state = 'connecting';
    this.provider = this.#connect();
    this.#events.refused(sentence, before);
    this.#events.changed();
  }
}

/** The sentence in the server's message; an unreadable one says nothing. */
function refusalSentence(json: string): string | null {
  try {
    return Refusal.parse(JSON.parse(json)).message;
  } catch {
    return null;
  }
}
