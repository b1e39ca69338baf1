/**
 * Rows about pictures that the server makes of a photograph and of states: the planned light, a moved motif, two states
 * laid on one another, each the first time, with its thread to start, and once more after something changed.
 *
 * Pictures of 2048 px, five planes. The yardstick is libvips decoding, shrinking and encoding one of them. IO: a server.
 */
import { readFile } from 'node:fs/promises';
import sharp from 'sharp';
import type * as Y from 'yjs';
import { putReferenceOutline } from '#server/core/live/outlines.ts';
import { putMotif } from '#server/core/live/plan/rearranging.ts';
import { setWishes } from '#server/core/live/plan/wishes.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { type AServer, type Entered, startAServer } from '#tests/helpers/a-server.ts';
import { writeInto } from '#tests/helpers/joined-room.ts';
import { median, times } from './measured.ts';
import { planHandleRow } from './plan-handle.ts';
import { HEIGHT, PHOTO, postPhoto, WIDTH } from './post-photo.ts';
import type { BenchRow } from './row.ts';

const KINDS = ['sky', 'land', 'land', 'wood', 'land'] as const;
const ROUNDS = 3;
/** A painter who asks for a picture waits a few seconds, not more. */
const LIMIT_MS = 5000;

interface Board {
  server: AServer;
  host: Entered;
  id: string;
  path: string;
  /** Its plan page. */
  page: string;
  photographId: string;
}

export async function plannedRows(): Promise<BenchRow[]> {
  const server = await startAServer();
  try {
    const board = await aBoard(server);
    const yardstickMs = await yardstick();
    const plan = `/plan/${board.photographId}`;
    const lit = await asked(board, `${plan}/preview`, (doc, round) =>
      setWishes(doc, { strength: 1 + round / 4 }),
    );
    const moved = await asked(board, `${plan}/rearranged`, (doc, round) =>
      moveMotif(doc, board.photographId, round / 20),
    );
    const laid = await statesLaid(board);
    const handle = await planHandleRow(server, board.host, board.page);
    return [
      ...rowsOf('planned light from the server, 2048 px', lit, yardstickMs),
      ...rowsOf('motif moved and its hole closed, from the server, 2048 px', moved, yardstickMs),
      ...rowsOf('two states laid on one another, 2048 px', laid, yardstickMs),
      handle,
    ];
  } finally {
    await server.stop();
  }
}

async function aBoard(server: AServer): Promise<Board> {
  const host = await server.enter('Bench');
  const { id } = await server.json<{ id: string }>(host, '/api/boards', 'POST', { title: 'Bench' });
  const path = `/api/boards/${id}`;
  const photographId = await postPhoto(server, host, id, 1, { kind: 'reference', rights: 'mine' });
  await writeInto(server.url, host, id, 'setup', (doc) => doc.transact(() => outline(doc, photographId)));
  return { server, host, id, path, page: `/boards/${id}/plan?picture=${photographId}`, photographId };
}

/** Five planes, each with a ridge that rises a little in its middle. */
function outline(doc: Y.Doc, photographId: string): void {
  for (const [index, kind] of KINDS.entries()) {
    addPlane(doc, { id: `p${index}`, name: `Plane ${index}`, kind, tilt: null });
    const top = index * 0.2;
    const ridge: [number, number][] = [
      [0, top],
      [0.5, Math.max(0, top - 0.03)],
      [1, top],
    ];
    putReferenceOutline(doc, photographId, `p${index}`, [...ridge, [1, 1], [0, 1]]);
  }
}

/** A box out of the middle, moved to the right by a share of the width. */
function moveMotif(doc: Y.Doc, pictureId: string, by: number): void {
  putMotif(doc, 'motif', {
    ...{ pictureId, name: 'Motif', order: 'a1', off: false, planeId: null },
    outline: [
      [0.3, 0.4],
      [0.45, 0.4],
      [0.45, 0.6],
      [0.3, 0.6],
    ],
    ...{ move: [by, 0], scale: 1, mirrored: false },
  });
}

/**
 * Milliseconds of each asking: the first with its thread to start, the others after a change. The change goes another way
 * than the asking, so that the server is known to have it before it is asked.
 */
async function asked(
  { server, host, id, path }: Board,
  what: string,
  change: (doc: Y.Doc, round: number) => void,
): Promise<number[]> {
  const taken: number[] = [];
  let before = '';
  for (let round = 0; round <= ROUNDS; round++) {
    await writeInto(server.url, host, id, 'setup', (doc) => change(doc, round));
    const begin = performance.now();
    const response = await server.call(host, path + what);
    if (!response.ok) throw new Error(`${what} was refused: ${await response.text()}`);
    const size = (await response.arrayBuffer()).byteLength;
    taken.push(performance.now() - begin);
    const tag = response.headers.get('etag') ?? '';
    if (size === 0 || tag === before) throw new Error(`${what} did not change with what it was made from.`);
    before = tag;
  }
  return taken;
}

/** Each pair is of its own light, so that none is kept. */
async function statesLaid({ server, host, id, path }: Board): Promise<number[]> {
  let before = await postPhoto(server, host, id, 0.9, { kind: 'painting' });
  const taken: number[] = [];
  for (let round = 0; round <= ROUNDS; round++) {
    const next = await postPhoto(server, host, id, 0.92 + round / 50, { kind: 'painting', follows: before });
    const begin = performance.now();
    const response = await server.call(host, `${path}/states/${next}/pictures/change`);
    if (!response.ok) throw new Error(`The states were not laid on one another: ${await response.text()}`);
    await response.arrayBuffer();
    taken.push(performance.now() - begin);
    before = next;
  }
  return taken;
}

async function yardstick(): Promise<number> {
  const photo = await readFile(PHOTO);
  const rounds: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const begin = performance.now();
    await sharp(photo).resize(WIDTH, HEIGHT, { fit: 'fill' }).jpeg({ quality: 92 }).toBuffer();
    rounds.push(performance.now() - begin);
  }
  return median(rounds);
}

function rowsOf(name: string, [first = Number.NaN, ...others]: number[], yardstickMs: number): BenchRow[] {
  const row = (which: string, ms: number): BenchRow => ({
    name: `${name}, ${which}`,
    measured: `${ms.toFixed(0)} ms`,
    yardstick: `libvips, one picture: ${yardstickMs.toFixed(0)} ms`,
    ratio: times(ms / yardstickMs),
    target: `≤ ${LIMIT_MS} ms`,
    met: ms <= LIMIT_MS,
  });
  return [row('the first time', first), row('after a change', median(others))];
}
