/**
 * Who is here, where their hands are and who holds what, as the screen shows it.
 *
 * In the flow: awareness -> core/live/presence -> [presence] -> people, pointers, holds. Pure.
 */
import { holderOf, type PresentPerson, peoplePresent } from '#server/core/live/presence.ts';
import type { PersonHere, PointerHere } from './board-live-types.ts';

/** One entry a person, however many windows they have open; `me` first, then by name. */
export function peopleHere(present: readonly PresentPerson[], me: PersonHere): PersonHere[] {
  const others = peoplePresent([...present])
    .filter((person) => person.id !== me.id)
    .map((person) => ({ ...person, self: false }))
    .sort((a, b) => a.name.localeCompare(b.name) || (a.id < b.id ? -1 : 1));
  return [me, ...others];
}

/** Other hands over the pictures; the hand of this very window is left out. */
export function pointersHere(present: readonly PresentPerson[], ownClientId: number): PointerHere[] {
  return present.flatMap(({ clientId, person, pointer }) =>
    pointer && clientId !== ownClientId ? [{ clientId, name: person.name, ...pointer }] : [],
  );
}

/**
 * Name of who else holds `what`, or null. Of two the earlier one holds it, and of two at the same moment the
 * one with the lower client id, so that all browsers agree.
 *
 * @param present In order of client id, this window among them.
 */
export function heldByOther(
  present: readonly PresentPerson[],
  what: string,
  ownClientId: number,
): string | null {
  const holder = holderOf([...present], what);
  return holder && holder.clientId !== ownClientId ? holder.person.name : null;
}

/** Holds and documents travel on different lines: time for a document to arrive after its hold was let go. */
const SETTLE_MS = 200;
/** Nobody is waited for longer than this; a window may have gone while it held something. */
const PATIENCE_MS = 8000;

interface PresenceSource {
  readonly present: readonly PresentPerson[];
  ownClientId(): number;
  subscribePresence(listener: () => void): () => void;
}

/** Runs `act` at once, or after the other person who took `what` first has let go of it. */
export function whenFree(source: PresenceSource, what: string, act: () => void): void {
  const held = () => heldByOther(source.present, what, source.ownClientId()) !== null;
  if (!held()) {
    act();
    return;
  }
  let done = false;
  const finish = () => {
    if (done) return;
    done = true;
    stop();
    clearTimeout(patience);
    setTimeout(act, SETTLE_MS);
  };
  const stop = source.subscribePresence(() => {
    if (!held()) finish();
  });
  const patience = setTimeout(finish, PATIENCE_MS);
}

/** Placing planes that are carried over to a painting. */
export const carryHold = (pictureId: string) => `carry/${pictureId}`;
export const outlineHold = (pictureId: string, planeId: string) => `outline/${pictureId}/${planeId}`;
export const photoHold = (pictureId: string) => `photo/${pictureId}`;
/** Choosing planes for a picture. */
export const planesHold = (pictureId: string) => `planes/${pictureId}`;
