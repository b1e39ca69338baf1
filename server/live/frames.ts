/** Frames that the server sends, as y-protocols and `core/live/wire.ts` lay them out. Pure. */
import * as encoding from 'lib0/encoding';
import * as sync from 'y-protocols/sync';
import type * as Y from 'yjs';
import {
  MESSAGE_ANNOUNCE,
  MESSAGE_AWARENESS,
  MESSAGE_EPOCH,
  MESSAGE_REFUSED,
  MESSAGE_SYNC,
  MESSAGE_TIME,
  type Refusal,
} from '../core/live/wire.ts';

function frame(type: number, write: (encoder: encoding.Encoder) => void): Uint8Array {
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, type);
  write(encoder);
  return encoding.toUint8Array(encoder);
}

export function updateFrame(update: Uint8Array): Uint8Array {
  return frame(MESSAGE_SYNC, (encoder) => sync.writeUpdate(encoder, update));
}

/** Asks the browser for what the document lacks. */
export function askFrame(doc: Y.Doc): Uint8Array {
  return frame(MESSAGE_SYNC, (encoder) => sync.writeSyncStep1(encoder, doc));
}

/** @param stateVector What the browser has. @throws Error when it is not one. */
export function answerFrame(doc: Y.Doc, stateVector: Uint8Array): Uint8Array {
  return frame(MESSAGE_SYNC, (encoder) => sync.writeSyncStep2(encoder, doc, stateVector));
}

/** The whole document as one stored update, in place of an answer. */
export function wholeFrame(update: Uint8Array): Uint8Array {
  return frame(MESSAGE_SYNC, (encoder) => {
    encoding.writeVarUint(encoder, sync.messageYjsSyncStep2);
    encoding.writeVarUint8Array(encoder, update);
  });
}

/** One person's state as it goes out; `state` null = gone. */
export interface PresenceEntry {
  clientId: number;
  clock: number;
  state: string | null;
}

/** With no entries it is the shortest thing an honest browser counts as a sign of life. */
export function presenceFrame(entries: PresenceEntry[]): Uint8Array {
  const list = encoding.createEncoder();
  encoding.writeVarUint(list, entries.length);
  for (const { clientId, clock, state } of entries) {
    encoding.writeVarUint(list, clientId);
    encoding.writeVarUint(list, clock);
    encoding.writeVarString(list, state ?? 'null');
  }
  const body = encoding.toUint8Array(list);
  return frame(MESSAGE_AWARENESS, (encoder) => encoding.writeVarUint8Array(encoder, body));
}

export function announceFrame(): Uint8Array {
  return frame(MESSAGE_ANNOUNCE, () => {});
}

export function epochFrame(epoch: number): Uint8Array {
  return frame(MESSAGE_EPOCH, (encoder) => encoding.writeVarUint(encoder, epoch));
}

/** @param nowMs The server's time, milliseconds since 1970. */
export function timeFrame(nowMs: number): Uint8Array {
  return frame(MESSAGE_TIME, (encoder) => encoding.writeVarUint(encoder, nowMs));
}

export function refusedFrame(refusal: Refusal): Uint8Array {
  return frame(MESSAGE_REFUSED, (encoder) => encoding.writeVarString(encoder, JSON.stringify(refusal)));
}
