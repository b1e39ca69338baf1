/**
 * Who is on the board right now, from awareness states written by strangers.
 *
 * The server has put the session's person into each state; the rest is the browser's word. Pure.
 */
import { Presence } from './layout.ts';

export interface PresentPerson extends Presence {
  /** Awareness client id: one browser tab. */
  clientId: number;
}

/** Every well-formed state but one's own, in order of client id. */
export function readPresence(states: Map<number, unknown>, ownClientId: number): PresentPerson[] {
  const present: PresentPerson[] = [];
  for (const [clientId, state] of states) {
    const parsed = clientId === ownClientId ? null : Presence.safeParse(state);
    if (parsed?.success) present.push({ clientId, ...parsed.data });
  }
  return present.sort((one, two) => one.clientId - two.clientId);
}

/** Names of who is there, each person once however many tabs are open. */
export function peoplePresent(present: PresentPerson[]): Presence['person'][] {
  return [...new Map(present.map(({ person }) => [person.id, person])).values()];
}

/** Who holds a thing (for example an outline being dragged), the one who took it first; null when nobody. */
export function holderOf(present: PresentPerson[], what: string): PresentPerson | null {
  const holders = present.filter((person) => person.hold?.what === what);
  return holders.sort((one, two) => (one.hold?.since ?? 0) - (two.hold?.since ?? 0))[0] ?? null;
}
