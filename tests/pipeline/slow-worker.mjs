// Stands in for the worker in tests of its queue: waits, answers, refuses, fails or dies as its job says.
import { parentPort } from 'node:worker_threads';

parentPort.on('message', ({ name, path }) => {
  if (name === 'for ever') for (;;);
  if (name === 'die') process.exit(3);
  if (name === 'refuse') {
    parentPort.postMessage({ ok: false, code: 'picture-unreadable', message: path });
    return;
  }
  setTimeout(() => parentPort.postMessage({ ok: true, answer: path }), 20);
});
