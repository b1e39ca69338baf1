import { afterEach, beforeEach, expect, test } from 'vitest';
import { createOneWorker, type OneWorker } from '#server/pipeline/one-worker.ts';

let worker: OneWorker;
beforeEach(() => {
  worker = createOneWorker(new URL('./slow-worker.mjs', import.meta.url));
});
afterEach(() => worker.stop());

const run = (name: string, path = '', seconds = 5) => worker.run({ kind: 'take-in', name, path }, seconds);

test('jobs are answered in the order they came', async () => {
  const answers: unknown[] = [];
  await Promise.all(
    ['one', 'two', 'three'].map((path) => run('answer', path).then((answer) => answers.push(answer))),
  );
  expect(answers).toEqual(['one', 'two', 'three']);
});

test('a job that never ends is stopped after its time, and the next one is done by a new thread', async () => {
  const endless = run('for ever', '', 0.4);
  const next = run('answer', 'still alive');
  await expect(endless).rejects.toMatchObject({
    code: 'picture-too-slow',
    message: expect.stringContaining('longer than 0.4 seconds'),
  });
  await expect(next).resolves.toBe('still alive');
});

test('a refusal comes back as a Problem with its sentence', async () => {
  await expect(run('refuse', 'It is damaged.')).rejects.toMatchObject({
    name: 'Problem',
    code: 'picture-unreadable',
    message: 'It is damaged.',
  });
});

test('a thread that dies fails its own job only', async () => {
  const dying = run('die');
  const next = run('answer', 'next');
  await expect(dying).rejects.toThrow('ended with status 3');
  await expect(next).resolves.toBe('next');
});

test('stopping refuses what runs, what waits and what comes', async () => {
  const jobs = [run('for ever', '', 60), run('answer')];
  const refused = Promise.all(jobs.map((job) => expect(job).rejects.toMatchObject({ code: 'stopping' })));
  await worker.stop();
  await refused;
  await expect(run('answer')).rejects.toMatchObject({ code: 'stopping' });
});
