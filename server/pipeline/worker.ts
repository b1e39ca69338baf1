/**
 * One job at a time in a worker thread, so that pixels never hold up the sockets.
 *
 * In the flow: runner → pool → [worker] → imaging and core. IO: reads the files it is told of.
 */
import { parentPort } from 'node:worker_threads';
import type { PicturePlan } from '../core/plan/plan-picture.ts';
import { isProblem } from '../core/problem.ts';
import type { TakenIn } from '../imaging/take-in.ts';
import { takeIn } from '../imaging/take-in.ts';
import { compareStates } from './compare-states.ts';
import type { Compared, Job, Measured, Reply } from './jobs.ts';
import { measurePicture } from './measure-picture.ts';
import { planPhotograph } from './plan-photograph.ts';
import { relightPhotograph } from './relight-photograph.ts';

const port = parentPort;
if (!port) throw new Error('worker.ts runs in a worker thread only.');

port.on('message', (job: Job) => {
  answerJob(job).then(
    (answer) => port.postMessage({ ok: true, answer } satisfies Reply),
    (thrown: unknown) => port.postMessage(failure(thrown)),
  );
});

function answerJob(job: Job): Promise<TakenIn | Measured | PicturePlan | Compared | Uint8Array> {
  switch (job.kind) {
    case 'take-in':
      return takeIn(job.path, job.name);
    case 'measure':
      return measurePicture(job);
    case 'plan':
      return planPhotograph(job);
    case 'compare':
      return compareStates(job);
    case 'relight':
      return relightPhotograph(job);
  }
}

function failure(thrown: unknown): Reply {
  if (isProblem(thrown)) return { ok: false, code: thrown.code, message: thrown.message };
  const message = thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown);
  return { ok: false, code: null, message };
}
