/**
 * All open rooms of one board in this browser, as one thing that can be subscribed to.
 *
 * In the flow: live-room -> [board-store] -> snapshot -> screen. IO: WebSockets through its rooms. Rooms of
 * paintings are opened while somebody looks at them and closed a moment after.
 */
import type * as Y from 'yjs';
import { LOCAL_EDIT, type RoomKind, roomKind } from '#server/core/live/document.ts';
import type { Presence, RoomName } from '#server/core/live/layout.ts';
import { type PresentPerson, readPresence } from '#server/core/live/presence.ts';
import { CLOSE, dropsCopy } from '#server/core/live/wire.ts';
import type { ConnectionState, PersonHere, Refusal } from './board-live-types.ts';
import { clearStrangeCopies } from './contact.ts';
import { LiveRoom, type Rejected } from './live-room.ts';
import { RefusalList } from './refusal-list.ts';
import { dropCopies } from './room-copies.ts';
import { StepHistory } from './step-history.ts';

/** Rooms that every board has open; without them there is no board. */
const MAIN_ROOMS: readonly RoomName[] = ['setup', 'marks'];
/** A room stays open this long after the last look, so that changing the picture and back costs nothing. */
const LINGER_MS = 4000;
/** Rooms opened for one change are waited for this long. */
const PATIENCE_MS = 5000;
/** About twenty positions a second. */
const POINTER_MS = 50;
/** Root types whose edits are steps of a person. What is typed has the field's own undo. */
const STEPS: Record<RoomKind, readonly string[]> = {
  setup: ['planes', 'outlines', 'conditions', 'air', 'unreliable', 'plan', 'answers', 'hidden'],
  painting: ['outlines', 'photo', 'focus', 'meant', 'answers', 'cards', 'hidden', 'allows', 'frame'],
  marks: ['marks', 'nods'],
  class: [],
  silent: [],
};

/** What this window tells of itself; the person is the server's word. */
export type LocalPresence = Omit<Presence, 'person'>;

export class BoardStore {
  readonly me: PersonHere;
  readonly history = new StepHistory(LOCAL_EDIT, () => this.#tell());
  boardChanged = 0;
  /** Everybody's windows, this one among them, in order of client id. */
  present: readonly PresentPerson[] = [];
  readonly #address: string;
  readonly #boardId: string;
  readonly #refused: RefusalList;
  readonly #rooms = new Map<RoomName, LiveRoom>();
  readonly #kept = new Set<RoomName>();
  readonly #lookers = new Map<RoomName, number>();
  readonly #listeners = new Set<() => void>();
  readonly #presenceListeners = new Set<() => void>();
  #version = 0;
  #offlineSince: number | null = null;
  #own: LocalPresence = { pointer: null, hold: null };
  #pointerTimer: ReturnType<typeof setTimeout> | null = null;

  /** @param address `ws://host/live/<boardId>`. */
  constructor(address: string, boardId: string, me: PersonHere) {
    this.#address = address;
    this.#boardId = boardId;
    this.me = me;
    this.#refused = new RefusalList(boardId, me.id);
  }

  get refusals(): readonly Refusal[] {
    return this.#refused.list;
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
    this.#refused.recall();
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
    const main = rooms.filter(({ name }) => MAIN_ROOMS.includes(name));
    if (main.some(({ state }) => state === 'closed')) return 'closed';
    if (rooms.some(({ state }) => state === 'offline')) return 'offline';
    if (rooms.some(({ wasOffline }) => wasOffline)) return 'catching-up';
    return main.every(({ state }) => state === 'connected' || state === 'veiled')
      ? 'connected'
      : 'connecting';
  }

  /** How far the server's clock is ahead of this one, milliseconds. */
  aheadMs(): number {
    return this.#rooms.get('class')?.aheadMs ?? 0;
  }

  /** The silent look is over: rooms that were not given out in it come now. */
  unveil(): void {
    for (const room of this.#rooms.values()) room.unveil();
  }

  /** When the line went, in ms, while it is down; else null. */
  offlineSince = (): number | null => this.#offlineSince;

  /** What waits to be sent: root key and entry of each, from all rooms. */
  waiting(): string[] {
    return [...this.#rooms.values()].flatMap(({ waiting }) => [...waiting.entries]);
  }

  /** The browser says that it went off the network, or is back on it. */
  networkChanged(up: boolean): void {
    for (const room of this.#rooms.values()) room.lineChanged(up);
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

  /** Tells the others what this person looks at, whom they look with, or what they wish. */
  tell(change: Pick<LocalPresence, 'look' | 'with' | 'wish' | 'thanks'>): void {
    this.#say(change);
  }

  point(pointer: LocalPresence['pointer']): void {
    this.#own = { ...this.#own, pointer };
    this.#pointerTimer ??= setTimeout(() => {
      this.#pointerTimer = null;
      this.#say({});
    }, POINTER_MS);
  }

  dismissRefusal(id: string): void {
    this.#refused.dismiss(id);
    this.#tell();
  }

  #open(name: RoomName): void {
    const place = { personId: this.me.id, boardId: this.#boardId, room: name };
    const room: LiveRoom = new LiveRoom(this.#address, place, {
      changed: () => {
        if (room.state === 'connected') this.#refused.arrived(room);
        this.#tell();
      },
      line: () => this.#lineChanged(),
      renewed: (before) => {
        this.history.forget(before);
        this.#attend(room);
      },
      refused: (rejected) => this.#refused.refused(room, rejected),
      shut: (rejected) => this.#shut(room, rejected),
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
    const steps = STEPS[roomKind(room.name)].map((key) => room.doc.getMap(key));
    if (steps.length > 0) this.history.follow(room.doc, steps);
    if (room.name !== 'marks') return;
    const { awareness } = room.provider;
    awareness.on('change', () => {
      this.present = readPresence(awareness.getStates(), Number.NaN);
      for (const listener of this.#presenceListeners) listener();
    });
    this.#say({});
  }

  /** Whoever has no business here any more keeps nothing of the board; without a session, nothing at all. */
  #shut(room: LiveRoom, rejected: Rejected): void {
    this.#refused.shut(room, rejected);
    if (!dropsCopy(rejected.code)) return;
    if (rejected.code === CLOSE.notEntered) dropCopies(() => true);
    else if (MAIN_ROOMS.includes(room.name)) dropCopies(({ boardId }) => boardId === this.#boardId);
    this.#tell();
  }

  #lineChanged(): void {
    const connection = this.connection();
    if (connection === 'offline') this.#offlineSince ??= Date.now();
    else if (connection === 'connected' || connection === 'closed') {
      // Back after a time without a line: what this browser still may keep is asked anew.
      if (this.#offlineSince !== null && connection === 'connected') void clearStrangeCopies(this.me.id);
      this.#offlineSince = null;
    }
    this.#tell();
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
