/**
 * Sheets to take away, drawn one after another in a worker.
 *
 * In the flow: handlers → services → [sheets] → worker. Main process only. IO: starts a thread when it is warmed, at the
 * latest with the first sheet.
 */
import { isProblem, Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import type { SheetOrder } from '../core/sheet/content.ts';
import { createOneWorker } from './one-worker.ts';

/** Far more than a page takes, also the first one on a machine that is busy. */
const SHEET_SECONDS = 90;

export interface Sheets {
  /** @returns PDF or PNG. @throws Problem as `makeSheet`; `picture-too-slow`, `stopping`. */
  draw(order: SheetOrder): Promise<Uint8Array>;
  /** Starts the thread and has it make ready, so that the first sheet takes no longer than the others. Never throws. */
  warm(): Promise<void>;
  stop(): Promise<void>;
}

/** The worker's own sentence for what takes too long is about pictures that are posted. */
function inOwnWords(thrown: unknown): never {
  if (!isProblem(thrown) || thrown.code !== 'picture-too-slow') throw thrown;
  throw new Problem(
    'picture-too-slow',
    say`Drawing the sheet took longer than ${SHEET_SECONDS} seconds, so it was stopped. Try again in a moment.`,
    { cause: thrown },
  );
}

export function createSheets(): Sheets {
  const worker = createOneWorker(new URL('./sheet-worker.mjs', import.meta.url));
  return {
    draw: (order) => worker.run({ kind: 'sheet', order }, SHEET_SECONDS).catch(inOwnWords),
    // Whatever fails here is said to whoever asks for a sheet.
    warm: () =>
      worker.run({ kind: 'warm' }, SHEET_SECONDS).then(
        () => undefined,
        () => undefined,
      ),
    stop: () => worker.stop(),
  };
}
