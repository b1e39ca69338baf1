/**
 * What travels on a live socket beside y-protocols' sync (0), awareness (1) and awareness query (3).
 *
 * Shared by `server/live` and the browser. `DEVELOPERS.md` repeats these as a table. Pure.
 */
import { z } from 'zod/mini';

/** y-protocols' own numbers. */
export const MESSAGE_SYNC = 0;
export const MESSAGE_AWARENESS = 1;
export const MESSAGE_QUERY_AWARENESS = 3;

/** Server → browser on the `setup` room: pictures or people of the board changed; fetch them again. No body. */
export const MESSAGE_ANNOUNCE = 101;
/** Server → browser, just before a close: one string, JSON of `Refusal`. */
export const MESSAGE_REFUSED = 102;
/** Server → browser on joining: the room's epoch, a variable-length unsigned integer. */
export const MESSAGE_EPOCH = 103;
/** Server → browser on joining the `class` room: the server's time, milliseconds since 1970, a variable-length unsigned integer. */
export const MESSAGE_TIME = 104;

/** Why a socket was closed. 44xx: do not come back with this document. 45xx: come back in a moment. */
export const CLOSE = {
  malformed: 4400,
  notEntered: 4401,
  notAllowed: 4403,
  noSuchRoom: 4404,
  /** The room's history was erased: drop the copy, load afresh. */
  epochOver: 4409,
  tooLarge: 4413,
  stopping: 4501,
  notReading: 4502,
  troubled: 4503,
  /** The person's role changed: come back and be seated anew. */
  roleChanged: 4505,
  /** The board's class is in its silent look: come back when it is over. */
  veiled: 4506,
  diskFull: 4507,
  tooMany: 4529,
} as const;

/** The whole sentence; a close frame's own reason has room for 123 bytes only. */
export const Refusal = z.object({ code: z.int(), message: z.string() });
export type Refusal = z.infer<typeof Refusal>;

/** Whether a browser should drop its copy of the room and load it afresh after this close code. */
export function dropsCopy(code: number): boolean {
  return code >= 4400 && code < 4500;
}
