/**
 * Who is on the board with this person, as far as looking together goes: who looks with them, who would like to speak.
 *
 * In the flow: presence -> [gathering] -> together. Pure.
 */
import {
  type PresentPerson,
  peoplePresent,
  type RaisedWish,
  thankedWishes,
  wishesOf,
} from '#server/core/live/presence.ts';

/** Whom one looks with. */
export interface Following {
  personId: string;
  name: string;
  /** Brought there by who runs the class, not by one's own choice. */
  brought: boolean;
}

export interface Gathering {
  /** Everybody else who is here, by name. */
  others: { id: string; name: string; role: string }[];
  /** Names of those who look with this person. */
  lookers: string[];
  /** Who would like to speak, who asked first first. */
  wishes: RaisedWish[];
  /** Wishes that somebody who runs the class has thanked for. */
  thanked: string[];
}

export function gatheringOf(present: readonly PresentPerson[], meId: string): Gathering {
  const others = peoplePresent([...present]).filter(({ id }) => id !== meId);
  others.sort((one, two) => one.name.localeCompare(two.name) || (one.id < two.id ? -1 : 1));
  const lookers = peoplePresent(present.filter((each) => each.with === meId && each.person.id !== meId));
  const thanked = thankedWishes(present);
  return {
    others,
    lookers: lookers.map(({ name }) => name).sort((one, two) => one.localeCompare(two)),
    wishes: wishesOf(present).filter(({ id }) => !thanked.has(id)),
    thanked: [...thanked],
  };
}
