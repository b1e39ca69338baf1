/**
 * Who is on the board right now, from awareness states written by strangers.
 *
 * The server has put the session's person into each state; the rest is the browser's word. Pure.
 */
import { Presence } from './layout.ts';
import type { Look } from './look.ts';

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

/** In whose name a hold is told to somebody who does not see the one who holds: nobody's. */
export const SOMEBODY: Presence['person'] = { id: '', name: 'Somebody', role: '' };

/** Names of who is there, each person once however many tabs are open. */
export function peoplePresent(present: PresentPerson[]): Presence['person'][] {
  const named = present.filter(({ person }) => person.id !== SOMEBODY.id);
  return [...new Map(named.map(({ person }) => [person.id, person])).values()];
}

/** Who holds a thing (for example an outline being dragged), the one who took it first; null when nobody. */
export function holderOf(present: PresentPerson[], what: string): PresentPerson | null {
  const holders = present.filter((person) => person.hold?.what === what);
  return holders.sort((one, two) => (one.hold?.since ?? 0) - (two.hold?.since ?? 0))[0] ?? null;
}

/** A wish to speak that stands. */
export interface RaisedWish {
  person: Presence['person'];
  id: string;
}

/** Who would like to speak, who asked first first; each person once. */
export function wishesOf(present: readonly PresentPerson[]): RaisedWish[] {
  const raised = present.flatMap(({ person, wish, clientId }) =>
    wish ? [{ person, ...wish, clientId }] : [],
  );
  raised.sort((one, two) => one.sinceMs - two.sinceMs || one.clientId - two.clientId);
  const first = new Map<string, RaisedWish>();
  for (const { person, id } of raised) if (!first.has(person.id)) first.set(person.id, { person, id });
  return [...first.values()];
}

/** Wishes that a teacher or the host has thanked for. */
export function thankedWishes(present: readonly PresentPerson[]): ReadonlySet<string> {
  const guides = present.filter(({ person }) => person.role === 'teacher' || person.role === 'host');
  return new Set(guides.flatMap(({ thanks = [] }) => thanks));
}

/** What a person looks at: of several windows the one their hand was in last; null while they do not tell. */
export function lookOf(present: readonly PresentPerson[], personId: string): Look | null {
  const looks = present.flatMap(({ person, look }) => (person.id === personId && look ? [look] : []));
  return looks.sort((one, two) => two.movedMs - one.movedMs)[0] ?? null;
}
