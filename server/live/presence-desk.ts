/**
 * Who is in a room: awareness states bound to the session that wrote them.
 *
 * In the flow: message → [presence desk] → others, gathered for a few milliseconds. Each connection has one
 * awareness client id; states for other ids are dropped silently, for honest browsers echo what they hear.
 * Clocks are the server's own, so that a person who comes back under an old id is seen again.
 */
import * as decoding from 'lib0/decoding';
import { z } from 'zod/mini';
import { Presence } from '../core/live/layout.ts';
import { SOMEBODY } from '../core/live/presence.ts';
import type { Connection } from './connection.ts';
import { type PresenceEntry, presenceFrame } from './frames.ts';
import type { Sight } from './sight.ts';

/** Pointers move often; what comes within this time goes out as one frame. */
const GATHER_MS = 30;
const STATE_CHARACTERS = 4000;
const ENTRIES = 2000;
const KEPT_CLOCKS = 10_000;

/** Everything but the person; what is not named here is not passed on. */
const State = z.omit(Presence, { person: true });
/** Wishes of people who left are remembered, so that a dropped line costs nobody their place. */
const KEPT_WISHES = 500;

interface Present {
  connection: Connection;
  /** Everything but the person, as one JSON object without its closing brace. */
  told: string;
  hold: Presence['hold'];
}

export class PresenceDesk {
  readonly #present = new Map<number, Present>();
  readonly #clocks = new Map<number, number>();
  readonly #changed = new Set<number>();
  readonly #wishes = new Map<string, { clientId: number; id: string; sinceMs: number }>();
  readonly #connections: ReadonlySet<Connection>;
  readonly #told: boolean;
  #timer: NodeJS.Timeout | null = null;

  /** @param told Whether anybody in the room is told of the others; else what comes is read and forgotten. */
  constructor(connections: ReadonlySet<Connection>, told: boolean) {
    this.#connections = connections;
    this.#told = told;
  }

  /** Takes in an awareness update. @throws Error when the bytes are not one. */
  hear(connection: Connection, bytes: Uint8Array): void {
    const decoder = decoding.createDecoder(bytes);
    const count = decoding.readVarUint(decoder);
    if (count > ENTRIES) throw new Error('An awareness update names more people than a room holds.');
    for (let index = 0; index < count; index++) {
      const clientId = decoding.readVarUint(decoder);
      decoding.readVarUint(decoder); // the browser's clock; the server has its own
      const text = decoding.readVarString(decoder);
      if (this.#told && this.#mayWrite(connection, clientId)) this.#write(connection, clientId, text);
    }
  }

  /** Everybody's state but one's own, as for somebody who just came. */
  stateFor(connection: Connection): Uint8Array {
    if (connection.shown) connection.shown = new Set();
    return presenceFrame(this.#entriesFor(connection, [...this.#present.keys()]));
  }

  /** Whom the person sees, or under which names, changed: who is not for them any more is taken away at once. */
  resight(connection: Connection, sight: Sight): void {
    connection.sight = sight;
    if (sight.unseen.size > 0) connection.shown ??= new Set(this.#present.keys());
    const gone = this.#entriesFor(connection, [...this.#present.keys()]).filter(
      ({ state }) => state === null,
    );
    if (gone.length > 0) connection.send(presenceFrame(gone));
    for (const clientId of this.#present.keys()) this.#touch(clientId);
  }

  /** Takes a person away when their socket is gone. */
  leave(connection: Connection): void {
    const { clientId } = connection;
    if (clientId === null || this.#present.get(clientId)?.connection !== connection) return;
    this.#present.delete(clientId);
    this.#touch(clientId);
  }

  close(): void {
    if (this.#timer) clearTimeout(this.#timer);
  }

  /** The first id a connection names is its own, unless somebody else has it. */
  #mayWrite(connection: Connection, clientId: number): boolean {
    if (connection.clientId !== null) return connection.clientId === clientId;
    const holder = this.#present.get(clientId)?.connection;
    // The same person's old socket may not be known to be dead yet.
    if (holder && holder.person.id !== connection.person.id) return false;
    connection.clientId = clientId;
    return true;
  }

  #write(connection: Connection, clientId: number, text: string): void {
    if (text.length > STATE_CHARACTERS) return;
    const raw: unknown = JSON.parse(text);
    if (raw === null) {
      if (this.#present.delete(clientId)) this.#touch(clientId);
      return;
    }
    const parsed = State.safeParse(raw);
    if (!parsed.success) return;
    const wish = this.#wishOf(connection.person.id, clientId, parsed.data.wish);
    const told = JSON.stringify({ ...parsed.data, wish }).slice(0, -1);
    this.#present.set(clientId, { connection, told, hold: parsed.data.hold });
    this.#touch(clientId);
  }

  /** When a wish was first raised is ours to say, or whoever likes would stand first. */
  #wishOf(personId: string, clientId: number, wish: Presence['wish']): Presence['wish'] {
    const known = this.#wishes.get(personId);
    if (!wish) {
      if (known?.clientId === clientId) this.#wishes.delete(personId);
      return null;
    }
    if (known?.id === wish.id) return { id: known.id, sinceMs: known.sinceMs };
    if (this.#wishes.size >= KEPT_WISHES) this.#wishes.clear();
    const sinceMs = Date.now();
    this.#wishes.set(personId, { clientId, id: wish.id, sinceMs });
    return { id: wish.id, sinceMs };
  }

  #touch(clientId: number): void {
    if (this.#clocks.size > KEPT_CLOCKS) this.#forgetAbsent();
    this.#clocks.set(clientId, (this.#clocks.get(clientId) ?? 0) + 1);
    this.#changed.add(clientId);
    this.#timer ??= setTimeout(() => this.#tell(), GATHER_MS);
  }

  #forgetAbsent(): void {
    for (const clientId of this.#clocks.keys()) {
      if (!this.#present.has(clientId) && !this.#changed.has(clientId)) this.#clocks.delete(clientId);
    }
  }

  #tell(): void {
    this.#timer = null;
    const changed = [...this.#changed];
    this.#changed.clear();
    // Most see everybody alike; the others get a frame of their own.
    let all: Uint8Array | null = null;
    for (const connection of this.#connections) {
      const own = connection.clientId !== null && changed.includes(connection.clientId);
      if (own && changed.length === 1) continue;
      const alike = !own && connection.shown === null && connection.sight.known === 'all';
      if (alike) all ??= presenceFrame(this.#entriesFor(connection, changed));
      const frame = alike && all ? all : presenceFrame(this.#entriesFor(connection, changed));
      connection.sendIfKeepingUp(frame);
    }
  }

  /** As one receiver may know them; of who is not for their eyes there is no entry, but one that takes away what they saw. */
  #entriesFor(receiver: Connection, clientIds: readonly number[]): PresenceEntry[] {
    return clientIds.flatMap((clientId) => {
      if (clientId === receiver.clientId) return [];
      const present = this.#present.get(clientId);
      const state = present ? stateTo(receiver, present) : null;
      if (receiver.shown) {
        if (state === null && !receiver.shown.delete(clientId)) return [];
        if (state !== null) receiver.shown.add(clientId);
      }
      return [{ clientId, clock: this.#clocks.get(clientId) ?? 1, state }];
    });
  }
}

/** Of who is not for the receiver's eyes nothing but what somebody holds, so that two do not drag the same outline. */
function stateTo(
  { sight, person: { id: receiverId } }: Connection,
  { connection, told, hold }: Present,
): string | null {
  const { person, sight: own } = connection;
  if (sight.unseen.has(person.id)) return hold ? JSON.stringify({ person: SOMEBODY, hold }) : null;
  const known =
    own.alias === null || sight.known === 'all' || sight.known.has(person.id) || person.id === receiverId;
  const shown = known ? person : { ...person, name: own.alias };
  return `${told},"person":${JSON.stringify(shown)}}`;
}
