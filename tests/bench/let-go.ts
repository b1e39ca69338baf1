/**
 * Row about an outline that is let go of: from the write into its room until the new figures are fetched.
 *
 * A reference and three paintings of 2048 px, five planes, on a running server; the yardstick is the figures fetched
 * once more, when nothing is left to measure. IO: a server.
 */
import { setTimeout } from 'node:timers/promises';
import type * as Y from 'yjs';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import type { Pending } from '#server/core/contract/responses.ts';
import type { Outline } from '#server/core/contract/setup.ts';
import { putPaintingOutline, putReferenceOutline } from '#server/core/live/outlines.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { type AServer, startAServer } from '#tests/helpers/a-server.ts';
import { joinRoom } from '#tests/helpers/joined-room.ts';
import { median, times } from './measured.ts';
import { postPhoto } from './post-photo.ts';
import type { BenchRow } from './row.ts';

const KINDS = ['sky', 'land', 'land', 'wood', 'land'] as const;
const TARGET_MS = 500;
const TIMES = 5;
/** Between two outlines, as long as a hand takes to find the next place. */
const PAUSE_MS = 2500;

/** One row for an outline on the painting, one for an outline on the reference. */
export async function letGoRows(): Promise<BenchRow[]> {
  const server = await startAServer();
  try {
    const board = await aBoard(server);
    const rows = [
      await letGoRow(board, 'on the painting', (index, away) =>
        putPaintingOutline(board.painting.doc, `p${index}`, bandFrom(index, away)),
      ),
      await letGoRow(board, 'on the reference', (index, away) =>
        putReferenceOutline(board.setup.doc, board.referenceId, `p${index}`, bandFrom(index, away)),
      ),
    ];
    board.setup.leave();
    board.painting.leave();
    return rows;
  } finally {
    await server.stop();
  }
}

interface Board {
  referenceId: string;
  setup: { doc: Y.Doc; leave(): void };
  /** The room of the painting that is looked at. */
  painting: { doc: Y.Doc; leave(): void };
  /** The figures of that painting, as its ladder fetches them. */
  figures(): Promise<MeasureDocument | Pending>;
}

async function aBoard(server: AServer): Promise<Board> {
  const host = await server.enter('Bench');
  const { id } = await server.json<{ id: string }>(host, '/api/boards', 'POST', { title: 'Bench' });
  const referenceId = await postPhoto(server, host, id, 1, { kind: 'reference', rights: 'mine' });
  const paintings: string[] = [];
  for (const gain of [1.15, 0.92, 1.05]) {
    paintings.push(await postPhoto(server, host, id, gain, { kind: 'painting' }));
  }
  const [setup, painting] = [
    await joinRoom(server.url, host, id, 'setup'),
    await joinRoom(server.url, host, id, `painting/${paintings[0]}`),
  ];
  setup.doc.transact(() => {
    for (const [index, kind] of KINDS.entries()) {
      addPlane(setup.doc, { id: `p${index}`, name: `Plane ${index}`, kind, tilt: null });
      putReferenceOutline(setup.doc, referenceId, `p${index}`, bandFrom(index, 0));
    }
  });
  const figures = () =>
    server.json<MeasureDocument | Pending>(host, `/api/boards/${id}/measures/${paintings[0]}`);
  while ('pending' in (await figures())) await setTimeout(100);
  return { referenceId, setup, painting, figures };
}

async function letGoRow(
  board: Board,
  where: string,
  write: (index: number, away: number) => void,
): Promise<BenchRow> {
  const taken: number[] = [];
  const bare: number[] = [];
  for (let time = 0; time < TIMES; time++) {
    await setTimeout(PAUSE_MS);
    const start = performance.now();
    const told = nextResult(board.painting.doc);
    write(2, 0.003 * (time + 1));
    await told;
    if ('pending' in (await board.figures()))
      throw new Error('The room was told before the figures were there.');
    taken.push(performance.now() - start);
    const again = performance.now();
    await board.figures();
    bare.push(performance.now() - again);
  }
  const [takenMs, bareMs] = [median(taken), median(bare)];
  return {
    name: `outline let go of ${where}, its figures fetched, 2048 px`,
    measured: `${takenMs.toFixed(0)} ms`,
    yardstick: `those figures fetched again ${bareMs.toFixed(0)} ms`,
    ratio: times(takenMs / bareMs),
    target: `≤ ${TARGET_MS} ms`,
    met: takenMs <= TARGET_MS,
  };
}

/** Resolves with the next result that the room is told of. */
function nextResult(doc: Y.Doc): Promise<void> {
  const result = doc.getMap('result');
  const before = result.get('number');
  return new Promise((resolve) => {
    const heard = () => {
      if (result.get('number') === before || result.get('pending')) return;
      result.unobserve(heard);
      resolve();
    };
    result.observe(heard);
  });
}

/** All below a ridge that a fifth of the height lies above each. */
function bandFrom(index: number, away: number): Outline {
  const top = index === 0 ? 0 : index * 0.2 + away;
  return [
    [0, top],
    [0.5, Math.max(0, top - 0.03)],
    [1, top],
    [1, 1],
    [0, 1],
  ];
}
