/**
 * One sheet at a time in a thread of its own, so that laying out a page holds up neither sockets nor measuring.
 *
 * In the flow: sheets → [sheet-worker] → server/sheet. IO: reads the plates' files.
 */
import { parentPort } from 'node:worker_threads';
import { isProblem } from '../core/problem.ts';
import { makeSheet } from '../sheet/make-sheet.ts';
import { warmUp } from '../sheet/warm-up.ts';
import type { Reply, SheetJob, WarmJob } from './jobs.ts';

const port = parentPort;
if (!port) throw new Error('sheet-worker.ts runs in a worker thread only.');

port.on('message', (job: SheetJob | WarmJob) => {
  (job.kind === 'warm' ? warmUp() : makeSheet(job.order)).then(
    (answer) => port.postMessage({ ok: true, answer } satisfies Reply),
    (thrown: unknown) => port.postMessage(failure(thrown)),
  );
});

function failure(thrown: unknown): Reply {
  if (isProblem(thrown)) return { ok: false, code: thrown.code, message: thrown.message };
  const message = thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown);
  return { ok: false, code: null, message };
}
