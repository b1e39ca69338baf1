/**
 * The live rows of the bench: marks under load against a bare relay, joining a large board, kill −9.
 *
 * Server and relay each run in a process of their own; the clients share one, so one clock times them all.
 */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join as joinPath } from 'node:path';
import * as Y from 'yjs';
import { readMarks } from '#server/core/live/marks.ts';
import { aDataFolder } from '#tests/helpers/a-store.ts';
import { join, type Somebody } from '#tests/live/a-live-server.ts';
import { startChild } from '#tests/live/child-process.ts';
import { killLoop } from '#tests/live/kill-loop.ts';
import type { ChildCast } from '#tests/live/live-child.ts';
import { fuzzRows } from './fuzzed.ts';
import { deliveries, type Load, quantile } from './live-latency.ts';
import { memoryRows } from './memory.ts';
import type { BenchRow } from './row.ts';

const RELAY = '../bench/relay-child.ts';
const MANY_BOARDS = 40;
const MANY_MARKS = 10_000;

interface Told {
  port: number;
  cast: ChildCast;
}

/** @param options.full Longer phases, ten minutes of soak in place of one, 100 kills in place of 5, hostile clients. */
export async function liveRows({ full }: { full: boolean }): Promise<BenchRow[]> {
  return [
    ...(await loadRows(full ? 15 : 6)),
    await joinRow(),
    ...(await memoryRows(full ? 600 : 60)),
    await killRow(full ? 100 : 5),
    ...(full ? await fuzzRows() : []),
  ];
}

async function loadRows(seconds: number): Promise<BenchRow[]> {
  const dataFolder = await aDataFolder();
  const server = await startChild<Told>('live-child.ts', [dataFolder, '0', String(MANY_BOARDS), '0']);
  const relay = await startChild<{ port: number }>(RELAY, []);
  try {
    const { people, boards } = server.told.cast;
    const one: Load = { boards: boards.slice(0, 1), people, perSecond: 4, seconds };
    const many: Load = { boards, people, perSecond: 0.5, seconds: Math.max(seconds, 8) };
    const ports = { server: server.told.port, relay: relay.told.port };
    return [
      await loadRow('mark seen by others: 1 room, 12 writers × 4/s, p95', ports, one, 15),
      await loadRow('mark seen by others: 40 rooms × 12 people × 0.5/s, p95', ports, many, 40),
    ];
  } finally {
    await Promise.all([server.end('SIGKILL'), relay.end('SIGKILL')]);
    await rm(dataFolder, { recursive: true, force: true });
  }
}

/** Relay and server in turn, twice, after a short warm-up of both. */
async function loadRow(
  name: string,
  ports: { server: number; relay: number },
  load: Load,
  allowedMs: number,
): Promise<BenchRow> {
  const warmUp = { ...load, seconds: 2 / load.perSecond };
  await deliveries(ports.relay, warmUp);
  await deliveries(ports.server, warmUp);
  const took = { relay: [] as number[], server: [] as number[] };
  for (let round = 0; round < 2; round++) {
    took.relay.push(...(await deliveries(ports.relay, load)));
    took.server.push(...(await deliveries(ports.server, load)));
  }
  const relayMs = quantile(took.relay, 0.95);
  const serverMs = quantile(took.server, 0.95);
  return {
    name,
    measured: `${serverMs.toFixed(1)} ms`,
    yardstick: `bare in-memory relay ${relayMs.toFixed(1)} ms`,
    ratio: `${signed(serverMs - relayMs)} ms`,
    target: `≤ relay + ${allowedMs} ms`,
    met: serverMs <= relayMs + allowedMs,
  };
}

async function joinRow(): Promise<BenchRow> {
  const dataFolder = await aDataFolder();
  const folder = await mkdtemp(joinPath(tmpdir(), 'veilstep-bench-'));
  let server = await startChild<Told>('live-child.ts', [dataFolder, '0', '2', String(MANY_MARKS)]);
  const { people, boards } = server.told.cast;
  const [person, boardId] = [people[0] ?? nobody, boards[0] ?? ''];
  try {
    // The clients' own code is warm before anything is timed.
    const { state } = await timeJoining(server.told.port, person, boardId);
    const stateFile = joinPath(folder, 'state');
    await writeFile(stateFile, state);
    // Stopped and started again: the room is read from the store while the first person waits. A look at an
    // empty board first, so that the process itself is warm.
    await server.end('SIGTERM');
    server = await startChild<Told>('live-child.ts', [dataFolder, '0', '2', '0']);
    await timeJoining(server.told.port, person, boards[1] ?? '', 0);
    const cold = await timeJoining(server.told.port, person, boardId);
    const warm = await timeJoining(server.told.port, person, boardId);
    const relay = await startChild<{ port: number }>(RELAY, [stateFile]);
    await timeJoining(relay.told.port, person, boardId);
    const bare = await timeJoining(relay.told.port, person, boardId);
    await relay.end('SIGKILL');
    return {
      name: `join a board with ${MANY_MARKS.toLocaleString('en')} marks, room not in memory`,
      measured: `${cold.ms.toFixed(0)} ms (in memory ${warm.ms.toFixed(0)} ms)`,
      yardstick: `bare in-memory relay ${bare.ms.toFixed(0)} ms`,
      ratio: `× ${(cold.ms / bare.ms).toFixed(1)}`,
      target: '≤ 1000 ms',
      met: cold.ms <= 1000,
    };
  } finally {
    await server.end('SIGKILL');
    await rm(dataFolder, { recursive: true, force: true });
    await rm(folder, { recursive: true, force: true });
  }
}

const nobody: Somebody = { id: '', name: '', cookie: '' };

/** From opening the socket until every mark is readable. */
async function timeJoining(port: number, who: Somebody, boardId: string, expected = MANY_MARKS) {
  const beginMs = performance.now();
  const client = join(port, who, boardId, 'marks');
  await client.synced;
  const count = readMarks(client.doc).length;
  const ms = performance.now() - beginMs;
  const state = Y.encodeStateAsUpdate(client.doc);
  client.leave();
  if (count !== expected) throw new Error(`${count} marks came and ${expected} were put.`);
  return { ms, state };
}

async function killRow(kills: number): Promise<BenchRow> {
  const { shown, missing } = await killLoop(kills, 1);
  return {
    name: `kill −9 at random moments × ${kills} under 12 writers`,
    measured: `${missing.length} lost`,
    yardstick: `${shown} marks that somebody was shown`,
    ratio: `${missing.length} / ${shown}`,
    target: '0 lost',
    met: missing.length === 0,
  };
}

function signed(value: number): string {
  return `${value < 0 ? '−' : '+'} ${Math.abs(value).toFixed(1)}`;
}
