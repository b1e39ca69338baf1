/**
 * One socket of one person in one room: reads its messages, bounds what it may cost, closes it with a reason.
 *
 * In the flow: socket → [connection] → room. A message that cannot be read closes its own sender only. IO:
 * the socket.
 */
import * as decoding from 'lib0/decoding';
import type { RawData, WebSocket } from 'ws';
import { messageYjsSyncStep1, messageYjsSyncStep2, messageYjsUpdate } from 'y-protocols/sync';
import type { Presence } from '../core/live/layout.ts';
import type { Writer } from '../core/live/permission.ts';
import { MESSAGE_AWARENESS, MESSAGE_QUERY_AWARENESS, MESSAGE_SYNC, type Refusal } from '../core/live/wire.ts';
import { Budget } from './budget.ts';
import { closeWith } from './closing.ts';
import { REFUSALS } from './sentences.ts';
import type { Sight } from './sight.ts';

/** Largest message that is looked at; the socket itself refuses twice this with 1009. */
export const MESSAGE_BYTES = 4_000_000;
const MESSAGES_PER_SECOND = 200;
const MESSAGES_AT_ONCE = 600;
/** Bytes taken in, and asked for with a state vector. */
const BYTES_PER_SECOND = 8_000_000;
const BYTES_AT_ONCE = 64_000_000;
/** A socket with this much unsent is closed; it joins again and catches up from the document. */
const UNSENT_BYTES = 8_000_000;
/** Pointers are left out for a socket with this much unsent. */
const LAGGING_BYTES = 256_000;

/** Whose socket it is. */
export interface Seat {
  person: Presence['person'];
  writer: Writer;
  sessionId: string;
  sight: Sight;
}

/** What a socket tells the room it sits in. The room knows its sockets; a socket knows no more of a room than this. */
export interface Hearing {
  /** What a browser with this state vector lacks. @throws Error when it is not one. */
  answer(stateVector: Uint8Array): Uint8Array;
  /** Asks the browser for what the document lacks. */
  ask(from: Connection): void;
  /** An update to judge, store and pass on. */
  take(from: Connection, update: Uint8Array): void;
  leave(connection: Connection): void;
  readonly presence: {
    /** @throws Error when the awareness update cannot be read. */
    hear(from: Connection, update: Uint8Array): void;
    stateFor(connection: Connection): Uint8Array;
  };
}

export class Connection {
  readonly person: Presence['person'];
  readonly writer: Writer;
  /** The session that the socket was opened with: when it ends, so does the socket. */
  readonly sessionId: string;
  /** Whom they see, and under which names. */
  sight: Sight;
  /** Client ids they were told of, where not everybody is for their eyes; null where everybody is. */
  shown: Set<number> | null;
  /** Awareness client id, once named. */
  clientId: number | null = null;
  /** Set by each pong; a socket that misses one is dead. */
  alive = true;
  readonly #socket: WebSocket;
  readonly #room: Hearing;
  readonly #messages: Budget;
  readonly #bytes: Budget;
  /** Whether we asked the browser what we lack; it answers once. */
  #asked = false;
  /** Whether the browser has told what we lacked when it joined. */
  #answered = false;
  #closed = false;

  constructor(socket: WebSocket, room: Hearing, seat: Seat) {
    this.#socket = socket;
    this.#room = room;
    this.person = seat.person;
    this.writer = seat.writer;
    this.sessionId = seat.sessionId;
    this.sight = seat.sight;
    this.shown = seat.sight.unseen.size > 0 ? new Set() : null;
    const nowMs = performance.now();
    this.#messages = new Budget(MESSAGES_PER_SECOND, MESSAGES_AT_ONCE, nowMs);
    this.#bytes = new Budget(BYTES_PER_SECOND, BYTES_AT_ONCE, nowMs);
    socket.on('message', (message, isBinary) => this.#hear(message, isBinary));
    socket.on('pong', () => {
      this.alive = true;
    });
    socket.on('close', () => this.#left());
  }

  /** Sends what must arrive. A socket that does not read is closed instead of filling memory. */
  send(frame: Uint8Array): void {
    if (this.#closed) return;
    if (this.#socket.bufferedAmount > UNSENT_BYTES) this.close(REFUSALS.notReading());
    else this.#socket.send(frame);
  }

  /** Sends what may be left out, such as a pointer. */
  sendIfKeepingUp(frame: Uint8Array): void {
    if (!this.#closed && this.#socket.bufferedAmount <= LAGGING_BYTES) this.#socket.send(frame);
  }

  /** Closes the socket with a sentence; nothing more of it is read. */
  close(refusal: Refusal): void {
    if (this.#closed) return;
    this.#left();
    closeWith(this.#socket, refusal);
  }

  /** Sign of life both ways. @returns False when the last one was not answered: the socket is gone. */
  ping(frame: Uint8Array): boolean {
    if (!this.alive) {
      this.#left();
      this.#socket.terminate();
      return false;
    }
    this.alive = false;
    this.#socket.ping();
    this.sendIfKeepingUp(frame);
    return true;
  }

  #left(): void {
    if (this.#closed) return;
    this.#closed = true;
    this.#room.leave(this);
  }

  #hear(message: RawData, isBinary: boolean): void {
    if (this.#closed) return;
    const bytes = isBinary && message instanceof Buffer ? new Uint8Array(message) : null;
    const nowMs = performance.now();
    if (bytes === null) this.close(REFUSALS.malformed());
    else if (bytes.length > MESSAGE_BYTES) this.close(REFUSALS.tooLarge(bytes.length, MESSAGE_BYTES));
    else if (!this.#messages.spend(1, nowMs)) this.close(REFUSALS.tooManyMessages(MESSAGES_PER_SECOND));
    else if (!this.#bytes.spend(bytes.length, nowMs)) this.close(REFUSALS.tooManyBytes(BYTES_PER_SECOND));
    else this.#read(bytes);
  }

  #read(bytes: Uint8Array): void {
    try {
      const decoder = decoding.createDecoder(bytes);
      const type = decoding.readVarUint(decoder);
      if (type === MESSAGE_SYNC) this.#readSync(decoder);
      else if (type === MESSAGE_AWARENESS)
        this.#room.presence.hear(this, decoding.readVarUint8Array(decoder));
      else if (type === MESSAGE_QUERY_AWARENESS) this.send(this.#room.presence.stateFor(this));
      else throw new Error(`Message number ${type} is none of ours.`);
    } catch {
      // Whatever cannot be read is the sender's trouble and nobody else's.
      this.close(REFUSALS.malformed());
    }
  }

  #answer(stateVector: Uint8Array): void {
    const answer = this.#room.answer(stateVector);
    if (!this.#bytes.spend(answer.length, performance.now())) {
      this.close(REFUSALS.tooManyBytes(BYTES_PER_SECOND));
      return;
    }
    this.send(answer);
    if (!this.#asked) this.#room.ask(this);
    this.#asked = true;
  }

  #readSync(decoder: decoding.Decoder): void {
    const step = decoding.readVarUint(decoder);
    const body = decoding.readVarUint8Array(decoder);
    if (step === messageYjsSyncStep1) {
      this.#answer(body);
    } else if (step === messageYjsSyncStep2) {
      this.#answered = true;
      this.#room.take(this, body);
    } else if (step === messageYjsUpdate) {
      // Before its answer to our question an update may build on offline edits that only the answer brings;
      // the answer is made later and holds this update too.
      if (this.#answered) this.#room.take(this, body);
    } else {
      throw new Error(`Sync step ${step} is none of y-protocols’.`);
    }
  }
}
