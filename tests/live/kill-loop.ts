/**
 * Kills the live server at random moments under twelve writers and looks for what anybody had been shown.
 *
 * Shown = received from the server by any client. After each restart a newcomer reads the room before any old
 * client comes back, so that nobody can repair a loss. Used by a test (few kills) and by the bench (many).
 */
import { rm } from 'node:fs/promises';

import { putMark, readMarks } from '#server/core/live/marks.ts';
import { aDataFolder } from '#tests/helpers/a-store.ts';
import { type Client, eventually, join } from './a-live-server.ts';
import { type Child, startChild } from './child-process.ts';
import type { ChildCast } from './live-child.ts';

/** Share of marks that are made while the server is away. */
const OFFLINE_SHARE = 0.02;

export interface KillReport {
  kills: number;
  /** Marks that somebody had received from the server. */
  shown: number;
  /** Ids of those that were not there after a restart; must be empty. */
  missing: string[];
  /** What honest clients were refused; must be empty. */
  refused: string[];
}

interface Told {
  port: number;
  cast: ChildCast;
}

/** @param seed The moments of the kills; the same in every run with the same seed. */
export async function killLoop(kills: number, seed: number): Promise<KillReport> {
  const dataFolder = await aDataFolder();
  const shown = new Set<string>();
  const missing = new Set<string>();
  let child = await startChild<Told>('live-child.ts', [dataFolder, '0', '1', '0']);
  const { port, cast } = child.told;
  const boardId = cast.boards[0] ?? '';
  const clients = cast.people.map((person) => join(port, person, boardId, 'marks'));
  for (const client of clients) watch(client, shown);
  const stopWriting = write(clients, cast);
  try {
    await Promise.all(clients.map(({ synced }) => synced));
    for (let kill = 0; kill < kills; kill++) {
      await shownAndALittleMore(shown, delayMs(seed + kill));
      await child.end('SIGKILL');
      for (const { provider } of clients) provider.disconnect();
      child = await startAgain(dataFolder, port);
      const newcomer = join(port, cast.people[0] ?? { cookie: '' }, boardId, 'marks');
      await newcomer.synced;
      const present = new Set(readMarks(newcomer.doc).map(({ id }) => id));
      newcomer.leave();
      for (const id of shown) if (!present.has(id)) missing.add(id);
      for (const { provider } of clients) provider.connect();
      await eventually('all are back', () => clients.every(({ provider }) => provider.synced));
    }
  } finally {
    stopWriting();
    for (const client of clients) client.leave();
    await child.end('SIGKILL');
    await rm(dataFolder, { recursive: true, force: true });
  }
  const refused = clients.flatMap(({ refusals }) => refusals);
  return { kills, shown: shown.size, missing: [...missing], refused };
}

function startAgain(dataFolder: string, port: number): Promise<Child<Told>> {
  return startChild<Told>('live-child.ts', [dataFolder, String(port), '1', '0']);
}

/** Takes down every mark that came from the server. */
function watch({ doc, provider }: Client, shown: Set<string>): void {
  doc.getMap('marks').observe((event, transaction) => {
    if (transaction.origin === provider) for (const id of event.keysChanged) shown.add(id);
  });
}

/** Twelve people marking without pause on the line, and now and then off it. */
function write(clients: Client[], cast: ChildCast): () => void {
  let count = 0;
  const timers = clients.map(({ doc, provider }, index) => {
    return setInterval(() => {
      if (!provider.synced && Math.random() > OFFLINE_SHARE) return;
      const author = cast.people[index]?.id ?? '';
      const place = { pictureId: 'p', planeId: null, parent: null };
      const id = `mark-${index}-${count++}`;
      putMark(doc, { id, author, kind: 'pin', points: [[0.5, 0.5]], text: 'Cooler', at: count, ...place });
    }, 60);
  });
  return () => timers.forEach(clearInterval);
}

/** Waits until something new was shown, then a moment that differs from kill to kill. */
async function shownAndALittleMore(shown: Set<string>, moreMs: number): Promise<void> {
  const before = shown.size;
  await eventually('something was shown', () => shown.size > before);
  await new Promise((resolve) => setTimeout(resolve, moreMs));
}

/** 0 to 400 ms, spread by a multiplicative hash of the seed. */
function delayMs(seed: number): number {
  return ((Math.imul(seed + 1, 0x9e3779b1) >>> 0) / 2 ** 32) * 400;
}
