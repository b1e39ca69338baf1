/**
 * What a person reads when the live part refuses something: what happened, the number, what to do.
 *
 * Sent whole just before the close; the close frame's own reason carries the first 123 bytes. Pure.
 */
import { CLOSE, type Refusal } from '../core/live/wire.ts';
import { say } from '../core/say/say.ts';

const kb = (bytes: number) => `${(bytes / 1000).toFixed(0)} kB`;

/** A refusal for each reason. `loadAfresh` tells that what was just done is taken back. */
export const REFUSALS = {
  notEntered: () => refusal(CLOSE.notEntered, say`You are not signed in here. Open your link again.`),
  foreignOrigin: () =>
    refusal(
      CLOSE.notAllowed,
      say`This page comes from another address than the board. Open the board itself.`,
    ),
  notOnBoard: () => refusal(CLOSE.noSuchRoom, say`This board is not here, or you are not on it.`),
  noSuchRoom: () => refusal(CLOSE.noSuchRoom, say`This picture is no longer on the board.`),
  accessEnded: () => refusal(CLOSE.notAllowed, say`Your access to this board has ended. Ask for a new link.`),
  signedOut: () => refusal(CLOSE.notEntered, say`You signed out here. Enter again to go on.`),
  roleChanged: () =>
    refusal(CLOSE.roleChanged, say`What you may do on this board has changed. It is loaded again by itself.`),
  mayNotWrite: () =>
    refusal(CLOSE.notAllowed, say`You may look at this but not change it. Your last change was taken back.`),
  serverOnly: () =>
    refusal(CLOSE.notAllowed, say`Results are written by the server alone. Your last change was taken back.`),
  foreignMark: () =>
    refusal(CLOSE.notAllowed, say`This mark is somebody else’s. Your last change was taken back.`),
  forgedAuthor: () =>
    refusal(CLOSE.notAllowed, say`A mark keeps the name of who made it. Your last change was taken back.`),
  noSketch: () =>
    refusal(
      CLOSE.notAllowed,
      say`Its painter has not allowed sketching over this painting. Your last change was taken back.`,
    ),
  foreignNod: () =>
    refusal(
      CLOSE.notAllowed,
      say`A nod is given in one’s own name and no other. Your last change was taken back.`,
    ),
  markingClosed: () =>
    refusal(
      CLOSE.notAllowed,
      say`The marking is closed for now by who runs the class. Your last change was taken back.`,
    ),
  /** @param what Completes "This is the time for …". */
  notInStep: (what: string) =>
    refusal(
      CLOSE.notAllowed,
      say`This is the time for ${what}; that comes later. Your last change was taken back.`,
    ),
  noImpression: () =>
    refusal(
      CLOSE.notAllowed,
      say`First impressions are written in the silent look, of the painting that is looked at. It was taken back.`,
    ),
  foreignSilence: () =>
    refusal(
      CLOSE.notAllowed,
      say`First impressions are read by nobody but who wrote them until the silent look is over.`,
    ),
  veiled: () =>
    refusal(
      CLOSE.veiled,
      say`A painting is being looked at in silence. Planes, cards and marks come when the silent look is over.`,
    ),
  foreignHistory: () =>
    refusal(CLOSE.notAllowed, say`This change came in another person’s name. It was taken back.`),
  /** @param where Root key of a room as it stands in its layout, or `the board`; the other language knows each. */
  badShape: (where: string) =>
    refusal(CLOSE.notAllowed, say`What was written to ${where} is not well formed. It was taken back.`),
  /** @param where As above. */
  tooManyEntries: (where: string, most: number) =>
    refusal(
      CLOSE.notAllowed,
      say`There are ${most} entries in ${where} and that is the most. Remove some first.`,
    ),
  incomplete: () =>
    refusal(CLOSE.notAllowed, say`A change builds on something the board does not have. It was taken back.`),
  malformed: () =>
    refusal(
      CLOSE.malformed,
      say`A message could not be read, so the connection was closed. Load the page again.`,
    ),
  tooLarge: (sizeBytes: number, limitBytes: number) =>
    refusal(
      CLOSE.tooLarge,
      say`A change of ${kb(sizeBytes)} is larger than the ${kb(limitBytes)} that are taken at once.`,
    ),
  roomFull: (limitBytes: number) =>
    refusal(
      CLOSE.tooLarge,
      say`This board holds ${kb(limitBytes)} of marks and outlines, and that is the most.`,
    ),
  epochOver: () =>
    refusal(
      CLOSE.epochOver,
      say`The history of this board was erased. It is loaded afresh without your old copy.`,
    ),
  tooManyMessages: (perSecond: number) =>
    refusal(
      CLOSE.tooMany,
      say`More than ${perSecond} messages a second arrived. The rest follows in a moment.`,
    ),
  tooManyBytes: (perSecond: number) =>
    refusal(
      CLOSE.tooMany,
      say`More than ${kb(perSecond)} a second were asked for. The rest follows in a moment.`,
    ),
  tooManySockets: (most: number) =>
    refusal(CLOSE.tooMany, say`You have ${most} connections open already. Close a few windows.`),
  notReading: () =>
    refusal(CLOSE.notReading, say`Your browser fell too far behind. It joins again by itself.`),
  diskFull: () =>
    refusal(
      CLOSE.diskFull,
      say`The server’s disk is full: your last changes are kept here and sent again until there is space.`,
    ),
  troubled: () =>
    refusal(CLOSE.troubled, say`The server could not save or load this just now. It tries again.`),
  stopping: () => refusal(CLOSE.stopping, say`The server is stopping. The board comes back by itself.`),
};

function refusal(code: number, message: string): Refusal {
  return { code, message };
}
