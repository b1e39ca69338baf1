/** Closing a socket so that its person learns why. IO: the socket. */
import type { WebSocket } from 'ws';
import type { Refusal } from '../core/live/wire.ts';
import { refusedFrame } from './frames.ts';

/** RFC 6455 §5.5: a control frame carries 125 bytes, two of them the code. */
const REASON_BYTES = 123;
/** A socket that does not answer the close is cut off. */
const PATIENCE_MS = 2000;

/** Sends the whole sentence, then closes with the code and as much of the sentence as fits. */
export function closeWith(socket: WebSocket, refusal: Refusal): void {
  socket.send(refusedFrame(refusal));
  socket.close(refusal.code, reasonOf(refusal.message));
  const cut = setTimeout(() => socket.terminate(), PATIENCE_MS);
  socket.once('close', () => clearTimeout(cut));
}

/** The first whole characters of a sentence that fit a close frame. */
export function reasonOf(message: string): string {
  let reason = '';
  let sizeBytes = 0;
  for (const character of message) {
    sizeBytes += Buffer.byteLength(character);
    if (sizeBytes > REASON_BYTES) break;
    reason += character;
  }
  return reason;
}
