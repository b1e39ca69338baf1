/** A demo painting, painted beside the main thread so that sockets are not held up. IO: starts a thread. */
import { Worker } from 'node:worker_threads';
import type { DemoPaintingName } from './paintings.ts';

/** @returns The painting as a JPEG. @throws Error when the thread fails: a bug or a lack of memory. */
export function paintAside(name: DemoPaintingName): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    const thread = new Worker(new URL('./paint-worker.mjs', import.meta.url), {
      workerData: name,
      // Options of the parent (its own loader, a test runner's) do not belong to the worker.
      execArgv: [],
    });
    thread.once('message', (bytes: Uint8Array) => resolve(Buffer.from(bytes)));
    thread.once('error', reject);
    thread.once('exit', (status) => reject(new Error(`The painting thread ended with status ${status}.`)));
  });
}
