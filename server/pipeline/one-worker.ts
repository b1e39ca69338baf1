/**
 * A queue in front of one worker thread, each job with its time limit.
 *
 * In the flow: runner → [one-worker] → worker. IO: starts a thread at the first job, again after a crash or a
 * job that took too long.
 */
import { Worker } from 'node:worker_threads';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { tooSlow } from '../imaging/problems.ts';
import type { Answer, AnyJob, Reply } from './jobs.ts';

export interface OneWorker {
  /**
   * Runs a job after those before it.
   *
   * @param seconds How long it may run, not counting its wait.
   * @throws Problem what the job threw, `picture-too-slow` past the limit, `stopping` after `stop`; an Error
   * when the thread died, which is a bug or a lack of memory.
   */
  run<J extends AnyJob>(job: J, seconds: number): Promise<Answer<J>>;
  /** Ends the thread; jobs that wait or run are refused. */
  stop(): Promise<void>;
}

interface Waiting {
  readonly job: AnyJob;
  readonly seconds: number;
  readonly resolve: (answer: never) => void;
  readonly reject: (reason: Error) => void;
}

const WORKER_FILE = new URL('./worker.mjs', import.meta.url);

/** @param file What the thread runs; tests hand in others. */
export function createOneWorker(file: URL = WORKER_FILE): OneWorker {
  const queue: Waiting[] = [];
  let thread: Worker | undefined;
  let running: { waiting: Waiting; timer: NodeJS.Timeout } | undefined;
  let stopped = false;

  function finish(settle: (waiting: Waiting) => void): void {
    if (!running) return;
    const { waiting, timer } = running;
    clearTimeout(timer);
    running = undefined;
    settle(waiting);
    next();
  }

  function dropThread(): Promise<number> | undefined {
    const dropped = thread;
    thread = undefined;
    dropped?.removeAllListeners();
    // A thread that dies while it is being dropped has nobody left to tell.
    dropped?.on('error', () => undefined);
    return dropped?.terminate();
  }

  function startThread(): Worker {
    // Options of the parent (its own loader, a test runner's) do not belong to the worker.
    const started = new Worker(file, { execArgv: [] });
    started.on('message', (reply: Reply) => finish((waiting) => settleWith(waiting, reply)));
    const died = (reason: Error) => {
      thread = undefined;
      finish((waiting) => waiting.reject(reason));
    };
    started.on('error', (cause) => died(new Error('The worker thread failed.', { cause })));
    started.on('exit', (status) => died(new Error(`The worker thread ended with status ${status}.`)));
    started.unref();
    return started;
  }

  function next(): void {
    if (running || stopped) return;
    const waiting = queue.shift();
    if (!waiting) {
      thread?.unref();
      return;
    }
    thread ??= startThread();
    thread.ref();
    const timer = setTimeout(() => {
      void dropThread();
      finish(({ reject }) => reject(tooSlow(waiting.seconds)));
    }, waiting.seconds * 1000);
    running = { waiting, timer };
    thread.postMessage(waiting.job);
  }

  return {
    run(job, seconds) {
      if (stopped) return Promise.reject(stopping());
      return new Promise((resolve, reject) => {
        queue.push({ job, seconds, resolve, reject });
        next();
      });
    },
    async stop() {
      stopped = true;
      for (const { reject } of queue.splice(0)) reject(stopping());
      finish(({ reject }) => reject(stopping()));
      await dropThread();
    },
  };
}

function settleWith(waiting: Waiting, reply: Reply): void {
  // The worker answers each kind of job with its own kind of answer; `Answer` ties the two for callers.
  if (reply.ok) waiting.resolve(reply.answer as never);
  else if (reply.code) waiting.reject(new Problem(reply.code, reply.message));
  else waiting.reject(new Error(reply.message));
}

function stopping(): Problem {
  return new Problem('stopping', say`The server is stopping. Try again once it runs again.`);
}
