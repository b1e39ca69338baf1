/**
 * Hostile clients by the thousand: frames that nobody can read, and well-formed updates that their writer may not
 * make, by a y-websocket client of every role in every room.
 *
 * Used by a test (shortened where it would take long) and by the bench (in full). What they did is read from the
 * documents, the store and a witness in each room.
 */
import type { WebSocket } from 'ws';
import * as sync from 'y-protocols/sync';
import * as Y from 'yjs';
import { setSwitch } from '#server/core/class/run.ts';
import type { RoomName } from '#server/core/live/layout.ts';
import { putMark } from '#server/core/live/marks.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { may } from '#server/core/permissions/may.ts';
import { readRoom } from '#server/store/live-updates.ts';
import { aBoard, type People, type Stage, TRIED } from '#tests/access/cast.ts';
import {
  aMark,
  type Given,
  ROOM_PROBES,
  type RoomAction,
  type RoomProbe,
  saidBy,
} from '#tests/access/room-probes.ts';
import { aPainting, type Client, join, rawSocket, type Somebody, syncFrame } from './a-live-server.ts';
import { type Attempt, forbiddenToAll } from './forbidden-to-all.ts';

export interface FuzzReport {
  sent: number;
  /** How often each close code answered. */
  codes: Map<number, number>;
  /** Attempts that were not answered with a refusal, or changed something; must be empty. */
  taken: string[];
  /** Updates that came to the witnesses; must be 0. */
  heard: number;
  /** Sentences that honest people got; must be empty. */
  disturbed: string[];
}

/** Offenders at work at the same time. */
const AT_ONCE = 6;

/** Mulberry32: the same attempts in every run. */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A board on which every root of every room holds something, with a witness in each room. */
interface Scene {
  boardId: string;
  /** The painting of each person. */
  paintings: Map<string, string>;
  rooms: RoomName[];
  witnesses: Client[];
}

const PAINTERS = ['painter', 'fellow', 'peer', 'owner', 'viewer', 'guardian'] as const;

async function aScene(stage: Stage): Promise<Scene> {
  const { people, server } = stage;
  const boardId = await aBoard(stage);
  const paintings = new Map<string, string>();
  for (const name of PAINTERS) paintings.set(people[name].id, await aPainting(boardId, people[name].id));
  const rooms: RoomName[] = [
    'setup',
    'marks',
    'class',
    ...[...paintings.values()].map((id) => `painting/${id}` as const),
  ];
  for (const room of rooms) await server.live.writeAsServer(boardId, room, (doc) => fill(doc, room, people));
  const witnesses = rooms.map((room) => join(server.port, people.host, boardId, room));
  await Promise.all(witnesses.map(({ synced }) => synced));
  return { boardId, paintings, rooms, witnesses };
}

/** Something under every root, so that there is something to change and to take away. */
function fill(doc: Y.Doc, room: RoomName, people: People): void {
  if (room === 'marks') {
    for (const name of [...TRIED, 'fellow'] as const) putMark(doc, aMark(`of-${name}`, people[name].id));
    return;
  }
  const kind = room === 'setup' || room === 'class' ? room : 'painting';
  for (const probe of Object.values(ROOM_PROBES).flat()) {
    if (probe.room === kind) probe.edit(doc, { meId: people.host.id, ownerId: '', markId: '' });
  }
  // A closed marking would refuse every mark for a reason of its own.
  if (room === 'class') setSwitch(doc, 'closed', false);
}

/** Every cell of the table that says no, as one attempt that writes and, where it can, one that takes away. */
function fromTheTable(stage: Stage, scene: Scene): Attempt[] {
  return Object.entries(ROOM_PROBES).flatMap(([action, probes]) =>
    probes.flatMap((probe) =>
      probe.relations.flatMap((relation) => {
        return TRIED.flatMap((tried) => {
          if (tried === 'stranger' || may(tried, action as RoomAction, relation)) return [];
          const who = stage.people[tried];
          const theirs = relation === 'own' ? tried : 'fellow';
          const room = roomOf(
            probe,
            scene,
            relation === 'own' ? who : stage.people.fellow,
            relation === 'own',
          );
          const given = { meId: who.id, ownerId: stage.people[theirs].id, markId: `of-${theirs}` };
          return room === null ? [] : attempts(`${tried}, ${relation}`, who, room, probe, given);
        });
      }),
    ),
  );
}

function roomOf(probe: RoomProbe, { paintings }: Scene, painter: Somebody, own: boolean): RoomName | null {
  // Nobody gets into another's room of first impressions, so there is nothing to edit there.
  if (probe.room === 'silent') return own ? `silent/${painter.id}` : null;
  if (probe.room !== 'painting') return probe.room;
  const pictureId = paintings.get(painter.id);
  return pictureId === undefined ? null : `painting/${pictureId}`;
}

function attempts(by: string, who: Somebody, room: RoomName, probe: RoomProbe, given: Given): Attempt[] {
  const root = probe.what.startsWith('writes ') ? probe.what.slice('writes '.length) : null;
  const same: Attempt = {
    what: `${by}: ${probe.what}`,
    who,
    room,
    // What is there already would be no change, so it goes first.
    edit: (doc) =>
      doc.transact(() => {
        if (root !== null && root !== 'intention') doc.getMap(root).clear();
        probe.edit(doc, given);
      }),
  };
  // Where nothing lies there is nothing to take away.
  if (root === null || probe.room === 'silent') return [same];
  return [same, { what: `${by}: empties ${root}`, who, room, edit: (doc) => empty(doc, root) }];
}

function empty(doc: Y.Doc, root: string): void {
  if (root === 'intention') doc.getText(root).delete(0, doc.getText(root).length);
  else doc.getMap(root).clear();
}

/** Tries every forbidden thing in turn, in an order that the seed shuffles, until `count` were sent. */
export async function fuzzForbidden(stage: Stage, count: number, seed: number): Promise<FuzzReport> {
  const random = seeded(seed);
  const scene = await aScene(stage);
  const all = [...fromTheTable(stage, scene), ...forbiddenToAll(stage, scene.rooms)];
  const queue: Attempt[] = [];
  while (queue.length < count) queue.push(...shuffled(all, random));
  queue.length = count;
  return watched(stage, scene, async (report) => {
    await inParallel(queue, async (attempt) => {
      const { code, before, after } = await tryOnce(stage, scene, attempt, random);
      report.sent++;
      report.codes.set(code, (report.codes.get(code) ?? 0) + 1);
      if (code !== CLOSE.notAllowed || before !== after) report.taken.push(`${attempt.what}: ${code}`);
    });
  });
}

async function tryOnce({ server }: Stage, { boardId }: Scene, attempt: Attempt, random: () => number) {
  const { who, room, edit } = attempt;
  const read = () => server.live.read(boardId, room, (doc) => saidBy(doc, room));
  const client = join(server.port, who, boardId, room);
  try {
    await client.synced;
    const before = await read();
    edit(client.doc, random);
    const { code } = await client.closed;
    return { code, before, after: await read() };
  } finally {
    client.leave();
  }
}

/** Sends frames that are cut, changed, repeated or made up, several at once on each socket. */
export async function fuzzMalformed(stage: Stage, count: number, seed: number): Promise<FuzzReport> {
  const random = seeded(seed);
  const scene = await aScene(stage);
  const forged = new Y.Doc();
  forged.clientID = seed;
  // In another's name: bytes that happen to be readable all the same must be refused too.
  putMark(forged, aMark('never', stage.people.fellow.id));
  const good = syncFrame((encoder) => sync.writeUpdate(encoder, Y.encodeStateAsUpdate(forged)));
  const bursts = Array.from({ length: Math.ceil(count / 25) }, () => null);
  return watched(stage, scene, async (report) => {
    await inParallel(bursts, async () => {
      const socket = await rawSocket(stage.server.port, stage.people.peer, scene.boardId, 'marks');
      const end = closedWith(socket);
      for (let sent = 0; sent < 25; sent++) socket.send(mangled(good, random));
      report.sent += 25;
      const code = await end;
      report.codes.set(code, (report.codes.get(code) ?? 0) + 1);
      if (code !== CLOSE.malformed && code !== CLOSE.notAllowed) report.taken.push(`a frame: ${code}`);
    });
  });
}

function closedWith(socket: WebSocket): Promise<number> {
  return new Promise((resolve) => socket.once('close', (code) => resolve(code)));
}

/** A frame with bytes changed, cut, repeated or made up; never one that begins with the honest one. */
function mangled(good: Uint8Array, random: () => number): Uint8Array {
  const kind = Math.floor(random() * 5);
  if (kind === 0) return Uint8Array.from({ length: 1 + random() * 80 }, () => random() * 256);
  if (kind === 1) return good.slice(0, 1 + random() * (good.length - 2));
  const bytes = Uint8Array.from([...good, ...(kind === 2 ? good : [])]);
  if (kind === 3) bytes[0] = 4 + random() * 250;
  // The first bytes are message, step and lengths: a changed one there leaves no honest update.
  else for (let index = 0; index < 4; index++) bytes[2 + Math.floor(random() * 3)] = random() * 256;
  return good.every((byte, at) => bytes[at] === byte) ? mangled(good, random) : bytes;
}

/** Runs the attack and writes down whether anything reached the store or anybody else. */
async function watched(
  stage: Stage,
  scene: Scene,
  attack: (report: FuzzReport) => Promise<void>,
): Promise<FuzzReport> {
  const report: FuzzReport = { sent: 0, codes: new Map(), taken: [], heard: 0, disturbed: [] };
  const stored = async () => {
    const rooms = await Promise.all(scene.rooms.map((room) => readRoom(scene.boardId, room)));
    return rooms.map(({ throughId }) => String(throughId)).join();
  };
  for (const { doc } of scene.witnesses) doc.on('update', () => report.heard++);
  const before = await stored();
  await attack(report);
  if ((await stored()) !== before) report.taken.push('something reached the store');
  for (const { refusals, provider } of scene.witnesses) {
    report.disturbed.push(...refusals, ...(provider.wsconnected ? [] : ['a witness was cut off']));
  }
  if (!(await stage.server.live.healthy())) report.disturbed.push('the rooms are not well');
  for (const witness of scene.witnesses) witness.leave();
  return report;
}

async function inParallel<T>(queue: readonly T[], act: (item: T) => Promise<void>): Promise<void> {
  let next = 0;
  const worker = async () => {
    for (let at = next++; at < queue.length; at = next++) await act(queue[at] as T);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
}

function shuffled<T>(list: readonly T[], random: () => number): T[] {
  return list
    .map((item) => ({ item, place: random() }))
    .sort((one, two) => one.place - two.place)
    .map(({ item }) => item);
}
