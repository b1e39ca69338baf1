/**
 * One job at a time in a worker thread, so that pixels never hold up the sockets.
 *
 * In the flow: runner → pool → [worker] → imaging and core. IO: reads the files it is told of.
 */
import { parentPort } from 'node:worker_threads';
import { isProblem } from '../core/problem.ts';
import type { TakenIn } from '../imaging/take-in.ts';
import { takeIn } from '../imaging/take-in.ts';
import type { Job, Measured, Reply } from './jobs.ts';
import { measurePicture } from './measure-picture.ts';

const port = parentPort;
if (!port) throw new Error('worker.ts runs in a worker thread only.');

port.on('message', (job: Job) => {
  answerJob(job).then(
    (answer) => port.postMessage({ ok: true, answer } satisfies Reply),
    (thrown: unknown) => port.postMessage(failure(thrown)),
  );
});

function answerJob(job: Job): Promise<TakenIn | Measured> {
  return job.kind === 'take-in' ? takeIn(job.path, job.name) : measurePicture(job);
}

function failure(thrown: unknown): Reply {
  if (isProblem(thrown)) return { ok: false, code: thrown.code, message: thrown.message };
  const message = thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown);
  return { ok: false, code: null, message };
}
