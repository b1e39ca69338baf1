/** How long a mark takes from one person's hand to the other screens: many writers, many rooms, one clock. */
import type * as Y from 'yjs';
import { putMark } from '#server/core/live/marks.ts';
import { type Client, join, type Somebody } from '#tests/live/a-live-server.ts';

export interface Load {
  /** Boards; on each, all people. */
  boards: string[];
  people: Somebody[];
  /** Marks a second of each person. */
  perSecond: number;
  seconds: number;
}

/**
 * Every delivery of every mark to every other person, in milliseconds.
 *
 * @throws Error when fewer than 99 % of the deliveries came within ten seconds after the last mark.
 */
export async function deliveries(port: number, load: Load): Promise<number[]> {
  const sentMs = new Map<string, number>();
  const took: number[] = [];
  const rooms = load.boards.map((boardId) => {
    return load.people.map((person) => join(port, person, boardId, 'marks'));
  });
  const clients = rooms.flat();
  for (const client of clients) listen(client, sentMs, took);
  await Promise.all(clients.map(({ synced }) => synced));
  await write(rooms, load, sentMs);
  const expected = sentMs.size * (load.people.length - 1);
  const endMs = performance.now() + 10_000;
  while (took.length < expected && performance.now() < endMs) await pause(50);
  for (const client of clients) client.leave();
  if (took.length < expected * 0.99) throw new Error(`${took.length} of ${expected} deliveries arrived.`);
  return took;
}

/** The value below which `share` of the numbers lie, by linear interpolation (Hyndman & Fan type 7). */
export function quantile(numbers: number[], share: number): number {
  const sorted = [...numbers].sort((one, two) => one - two);
  const place = (sorted.length - 1) * share;
  const low = sorted[Math.floor(place)] ?? Number.NaN;
  const high = sorted[Math.ceil(place)] ?? low;
  return low + (high - low) * (place - Math.floor(place));
}

function listen({ doc, provider }: Client, sentMs: Map<string, number>, took: number[]): void {
  doc.getMap('marks').observe((event: Y.YMapEvent<unknown>, transaction: Y.Transaction) => {
    if (transaction.origin !== provider) return;
    const nowMs = performance.now();
    for (const id of event.keysChanged) {
      const then = sentMs.get(id);
      if (then !== undefined) took.push(nowMs - then);
    }
  });
}

/** Each person writes at their own moment of the period, so that a room never writes in one burst. */
async function write(rooms: Client[][], load: Load, sentMs: Map<string, number>): Promise<void> {
  const periodMs = 1000 / load.perSecond;
  const writers = rooms.flatMap((clients, room) => clients.map((client, index) => ({ client, room, index })));
  const beginMs = performance.now();
  await Promise.all(
    writers.map(async ({ client, index }, place) => {
      const author = load.people[index]?.id ?? '';
      const offsetMs = (periodMs * place) / writers.length;
      for (let turn = 0; turn < load.perSecond * load.seconds; turn++) {
        await pause(beginMs + offsetMs + turn * periodMs - performance.now());
        const id = `m-${beginMs.toFixed(0)}-${place}-${turn}`;
        sentMs.set(id, performance.now());
        const at = { pictureId: 'p', planeId: null, parent: null, at: turn };
        putMark(client.doc, { id, author, kind: 'pin', points: [[0.25, 0.75]], text: 'Lighter', ...at });
      }
    }),
  );
}

function pause(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, Math.max(0, ms)));
}
