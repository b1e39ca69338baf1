/**
 * Rows about the memory of rooms: what an open room of twelve people takes, and whether anything grows while people
 * mark, take back, come and go for a long time.
 *
 * Both are what the server's process still holds after its garbage was collected. IO: child processes, sockets.
 */
import { randomUUID } from 'node:crypto';
import { rm } from 'node:fs/promises';
import { setTimeout } from 'node:timers/promises';
import { moveMark, putMark, removeMark } from '#server/core/live/marks.ts';
import { aDataFolder } from '#tests/helpers/a-store.ts';
import { type Client, join, rawSocket, type Somebody } from '#tests/live/a-live-server.ts';
import { type Child, startChild } from '#tests/live/child-process.ts';
import type { ChildCast } from '#tests/live/live-child.ts';
import type { BenchRow } from './row.ts';

const ROOMS = 40;
/** Marks that each writer leaves standing. */
const STANDING = 20;
const WRITES_A_SECOND = 4;
const SAMPLES = 20;
/** A room leaves memory ten seconds after it empties. */
const ROOM_REST_MS = 12_000;
/** A deleted mark leaves a trace in any Yjs document, and a room holds its document and a shadow of it. */
const ALLOWED_OF_RELAY = 3;
const ALLOWED_MB = 2;

interface Told {
  port: number;
  cast: ChildCast;
}

/** @param soakSeconds How long people mark, come and go. */
export async function memoryRows(soakSeconds: number): Promise<BenchRow[]> {
  const dataFolder = await aDataFolder();
  const server = await startChild<Told>('live-child.ts', [dataFolder, '0', String(ROOMS), '0']);
  const relay = await startChild<{ port: number }>('../bench/relay-child.ts', []);
  try {
    return [await roomRow(server, relay), await soakRow(server, relay, soakSeconds)];
  } finally {
    await Promise.all([server.end('SIGKILL'), relay.end('SIGKILL')]);
    await rm(dataFolder, { recursive: true, force: true });
  }
}

async function roomRow(server: Child<Told>, relay: Child<{ port: number }>): Promise<BenchRow> {
  const { cast } = server.told;
  const ours = await bytesARoom(server, server.told.port, cast);
  const bare = await bytesARoom(relay, relay.told.port, cast);
  return {
    name: `memory of an open room with ${cast.people.length} people`,
    measured: `${kB(ours)}`,
    yardstick: `bare in-memory relay ${kB(bare)}`,
    ratio: `× ${(ours / bare).toFixed(1)}`,
    target: '',
    met: null,
  };
}

/** Forty rooms with everybody in them against none, once each was open before. */
async function bytesARoom(child: Child<unknown>, port: number, cast: ChildCast): Promise<number> {
  const open = async () => {
    const clients = cast.boards.flatMap((id) => cast.people.map((who) => join(port, who, id, 'marks')));
    await Promise.all(clients.map(({ synced }) => synced));
    return clients;
  };
  for (const client of await open()) client.leave();
  await setTimeout(ROOM_REST_MS);
  const before = await child.heldBytes();
  const clients = await open();
  await setTimeout(1000);
  const after = await child.heldBytes();
  for (const client of clients) client.leave();
  await setTimeout(ROOM_REST_MS);
  return (after - before) / cast.boards.length;
}

/** Server and relay at the same time, under the same hands; the relay holds each document once, a room twice. */
async function soakRow(
  server: Child<Told>,
  relay: Child<{ port: number }>,
  seconds: number,
): Promise<BenchRow> {
  const { port, cast } = server.told;
  const [ours, bare] = await Promise.all([
    soak(server, { port, cast, rubbish: true }, seconds),
    soak(relay, { port: relay.told.port, cast, rubbish: false }, seconds),
  ]);
  const allowed = ALLOWED_OF_RELAY * Math.max(bare.riseBytes, 0) + ALLOWED_MB * 1e6;
  return {
    name: `memory over ${(seconds / 60).toFixed(0)} min of marking, moving, taking back, coming and going`,
    measured: `${mB(ours.riseBytes)} more, ${ours.writes.toLocaleString('en')} writes`,
    yardstick: `bare in-memory relay ${mB(bare.riseBytes)} more`,
    ratio: `${(ours.riseBytes / ours.writes).toFixed(0)} bytes a write`,
    target: `≤ ${ALLOWED_OF_RELAY} × relay + ${ALLOWED_MB} MB`,
    met: ours.riseBytes <= allowed,
  };
}

interface Ground {
  port: number;
  cast: ChildCast;
  /** Whether some send what nobody can read; the relay would fall over. */
  rubbish: boolean;
}

/** @returns How much more the process holds at the end than after a fifth of the time, by the line of best fit. */
async function soak(child: Child<unknown>, ground: Ground, seconds: number) {
  const people = ground.cast.people.map((who) => new Comer(ground, who));
  const beginMs = performance.now();
  const endMs = beginMs + seconds * 1000;
  const held: { atMs: number; bytes: number }[] = [];
  const sample = async () => {
    while (performance.now() < endMs) {
      await setTimeout((seconds * 1000) / SAMPLES);
      held.push({ atMs: performance.now() - beginMs, bytes: await child.heldBytes() });
    }
  };
  await Promise.all([...people.map((person, index) => person.writeUntil(endMs, index)), sample()]);
  // The first fifth fills caches and compiled code.
  const settled = held.slice(Math.floor(held.length / 5));
  const spanMs = (settled.at(-1)?.atMs ?? 0) - (settled[0]?.atMs ?? 0);
  const writes = people.reduce((sum, person) => sum + person.writes, 0);
  return { riseBytes: slopePerMs(settled) * spanMs, writes };
}

/** Somebody who marks, moves and takes back, and now and then loses the line or sends rubbish. */
class Comer {
  readonly #ground: Ground;
  readonly #who: Somebody;
  #client: Client;
  readonly #own: string[] = [];
  writes = 0;

  constructor(ground: Ground, who: Somebody) {
    [this.#ground, this.#who] = [ground, who];
    this.#client = this.#join();
  }

  async writeUntil(endMs: number, seed: number): Promise<void> {
    await this.#client.synced;
    for (let turn = seed; performance.now() < endMs; turn++) {
      if (turn % 4 === 0) this.#mark();
      else this.#move(turn);
      this.writes++;
      if (turn % 40 === 39) await this.#comeAgain();
      if (turn % 160 === 159 && this.#ground.rubbish) await this.#sendRubbish();
      await setTimeout(1000 / WRITES_A_SECOND);
    }
    this.#client.leave();
  }

  #join(): Client {
    return join(this.#ground.port, this.#who, this.#ground.cast.boards[0] ?? '', 'marks');
  }

  #mark(): void {
    const id = randomUUID();
    putMark(this.#client.doc, {
      ...{ id, author: this.#who.id, pictureId: 'picture-1', kind: 'pin', points: [[0.3, 0.6]] },
      ...{ text: 'Grey it a touch.', planeId: null, parent: null, at: Date.now() },
    });
    this.#own.push(id);
    const oldest = this.#own.length > STANDING ? this.#own.shift() : undefined;
    const writer = { personId: this.#who.id, role: 'painter', paints: false } as const;
    if (oldest) removeMark(this.#client.doc, oldest, writer);
  }

  #move(turn: number): void {
    const id = this.#own[turn % this.#own.length];
    if (id) moveMark(this.#client.doc, id, [[(turn % 97) / 97, (turn % 89) / 89]]);
  }

  async #comeAgain(): Promise<void> {
    this.#client.leave();
    this.#client = this.#join();
    await this.#client.synced;
  }

  async #sendRubbish(): Promise<void> {
    const { port, cast } = this.#ground;
    const socket = await rawSocket(port, this.#who, cast.boards[0] ?? '', 'marks');
    socket.send(new Uint8Array([0, 2, 200, 1, 2, 3]));
    await setTimeout(200);
    socket.terminate();
  }
}

/** Least-squares slope. */
function slopePerMs(points: readonly { atMs: number; bytes: number }[]): number {
  const meanAt = points.reduce((sum, { atMs }) => sum + atMs, 0) / points.length;
  const meanBytes = points.reduce((sum, { bytes }) => sum + bytes, 0) / points.length;
  let [both, square] = [0, 0];
  for (const { atMs, bytes } of points) {
    both += (atMs - meanAt) * (bytes - meanBytes);
    square += (atMs - meanAt) ** 2;
  }
  return both / square;
}

const kB = (bytes: number): string => `${(bytes / 1e3).toFixed(0)} kB`;
const mB = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;
