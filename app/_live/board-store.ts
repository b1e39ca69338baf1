/**
 * All open rooms of one board in this browser, as one thing that can be subscribed to.
 *
 * In the flow: live-room -> [board-store] -> snapshot -> screen. IO: WebSockets through its rooms. Rooms of
 * paintings are opened while somebody looks at them and closed a moment after.
 */
import { uuidv4 } from 'lib0/random';
import type * as Y from 'yjs';
import { LOCAL_EDIT, type RoomKind, roomKind } from '#server/core/live/document.ts';
import type { Presence, RoomName } from '#server/core/live/layout.ts';
import { type PresentPerson, readPresence } from '#server/core/live/presence.ts';
import type { ConnectionState, PersonHere, Refusal } from './board-live-types.ts';
import { LiveRoom } from './live-room.ts';
import { lostWords } from './lost-words.ts';

import { StepHistory } from './step-history.ts';

/** A room stays open this long after the last look, so that changing the picture and back costs nothing. */
const LINGER_MS = 4000;
/** Rooms opened for one change are waited for this long. */
const PATIENCE_MS = 5000;
/** About twenty positions a second. */
const POINTER_MS = 50;
/** Root types whose edits are steps of a person. What is typed has the field's own undo. */
const STEPS: Record<RoomKind, readonly string[]> = {
  setup: ['planes', 'outlines', 'conditions', 'air', 'unreliable'],
  painting: ['outlines', 'photo', 'focus', 'meant', 'answers', 'cards'],
  marks: ['marks'],
};

type LocalPresence = Pick<Presence, 'pointer' | 'hold'>;

export class BoardStore {
  readonly me: PersonHere;
  readonly history = new StepHistory(LOCAL_EDIT, () => this.#tell());
  refusals: readonly Refusal[] = [];
  boardChanged = 0;
  /** Everybody's windows, this one among them, in order of client id. */
  present: readonly PresentPerson[] = [];
  readonly #address: string;
  readonly #rooms = new Map<RoomName, LiveRoom>();
  readonly #kept = new Set<RoomName>();
  readonly #lookers = new Map<RoomName, number>();
  readonly #listeners = new Set<() => void>();
  readonly #presenceListeners = new Set<() => void>();
  #version = 0;
  #own: LocalPresence = { pointer: null, hold: null };
  #pointerTimer: ReturnType<typeof setTimeout> | null = null;

  /** @param address `ws://host/live/<boardId>`. */
  constructor(address: string, me: PersonHere) {
    this.#address = address;
    this.me = me;
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  subscribePresence = (listener: () => void): (() => void) => {
    this.#presenceListeners.add(listener);
    return () => this.#presenceListeners.delete(listener);
  };

  /** Rises with every change; cached snapshots go by it. */
  version = (): number => this.#version;
  presentNow = (): readonly PresentPerson[] => this.present;

  /** Opens a room, or keeps it open. Returns how to let go of it. */
  look(name: RoomName): () => void {
    this.#lookers.set(name, (this.#lookers.get(name) ?? 0) + 1);
    if (!this.#rooms.has(name)) this.#open(name);
    return () => {
      this.#lookers.set(name, (this.#lookers.get(name) ?? 1) - 1);
      setTimeout(() => this.#closeUnlooked(name), LINGER_MS);
    };
  }

  /** Opens rooms for good, so that steps made in them can be undone; waits until they are there, or a few seconds. */
  async keepOpen(names: readonly RoomName[]): Promise<void> {
    const late = names.filter((name) => !this.loaded(name));
    for (const name of names) {
      if (!this.#kept.has(name)) this.look(name);
      this.#kept.add(name);
    }
    const there = () => late.every((name) => this.loaded(name));
    if (there()) return;
    await new Promise<void>((resolve) => {
      const done = () => {
        clearTimeout(patience);
        stop();
        resolve();
      };
      const patience = setTimeout(done, PATIENCE_MS);
      const stop = this.subscribe(() => {
        if (there()) done();
      });
    });
  }

  doc(name: RoomName): Y.Doc | null {
    return this.#rooms.get(name)?.doc ?? null;
  }

  loaded(name: RoomName): boolean {
    return this.#rooms.get(name)?.loaded ?? false;
  }

  /** The worst of all lines: one that is down or shut matters more than one that is up. */
  connection(): ConnectionState {
    const rooms = [...this.#rooms.values()];
    const main = rooms.filter(({ name }) => name === 'setup' || name === 'marks');
    if (main.some(({ state }) => state === 'closed')) return 'closed';
    if (rooms.some(({ state }) => state === 'offline')) return 'offline';
    if (rooms.some(({ wasOffline }) => wasOffline)) return 'catching-up';
    return main.every(({ loaded }) => loaded) ? 'connected' : 'connecting';
  }

  closedSentence(): string | null {
    return [...this.#rooms.values()].find(({ closedSentence }) => closedSentence)?.closedSentence ?? null;
  }

  ownClientId(): number {
    return this.doc('marks')?.clientID ?? 0;
  }

  hold(what: string | null): void {
    this.#say({ hold: what === null ? null : { what, since: Date.now() } });
  }

  letGo(what: string): void {
    if (this.#own.hold?.what === what) this.hold(null);
  }

  point(pointer: LocalPresence['pointer']): void {
    this.#own = { ...this.#own, pointer };
    this.#pointerTimer ??= setTimeout(() => {
      this.#pointerTimer = null;
      this.#say({});
    }, POINTER_MS);
  }

  dismissRefusal(id: string): void {
    this.refusals = this.refusals.filter((refusal) => refusal.id !== id);
    this.#tell();
  }

  #open(name: RoomName): void {
    const room = new LiveRoom(this.#address, name, {
      changed: () => this.#tell(),
      line: () => this.#tell(),
      refused: (sentence, before) => this.#refused(name, sentence, before),
      announced: () => {
        this.boardChanged++;
        this.#tell();
      },
    });
    this.#rooms.set(name, room);
    this.#attend(room);
    this.#tell();
  }

  /** Follows the document a room has now: steps, and presence in the marks room. */
  #attend(room: LiveRoom): void {
    this.history.follow(
      room.doc,
      STEPS[roomKind(room.name)].map((key) => room.doc.getMap(key)),
    );
    if (room.name !== 'marks') return;
    const { awareness } = room.provider;
    awareness.on('change', () => {
      this.present = readPresence(awareness.getStates(), Number.NaN);
      for (const listener of this.#presenceListeners) listener();
    });
    this.#say({});
  }

  #refused(name: RoomName, sentence: string, before: Y.Doc): void {
    this.history.forget(before);
    const room = this.#rooms.get(name);
    if (!room) return;
    this.#attend(room);
    const id = uuidv4();
    this.refusals = [...this.refusals, { id, sentence, draft: null }];
    const { doc } = room;
    room.provider.once('sync', () => {
      const draft = lostWords(before, doc, this.me.id);
      this.refusals = this.refusals.map((refusal) => (refusal.id === id ? { ...refusal, draft } : refusal));
      before.destroy();
      this.#tell();
    });
  }

  #closeUnlooked(name: RoomName): void {
    const room = this.#rooms.get(name);
    if (!room || (this.#lookers.get(name) ?? 0) > 0) return;
    this.#rooms.delete(name);
    this.history.forget(room.doc);
    room.close();
    this.#tell();
  }

  #say(change: Partial<LocalPresence>): void {
    this.#own = { ...this.#own, ...change };
    const { id, name, role } = this.me;
    this.#rooms.get('marks')?.provider.awareness.setLocalState({ person: { id, name, role }, ...this.#own });
  }

  #tell(): void {
    this.#version++;
    for (const listener of this.#listeners) listener();
  }
}
