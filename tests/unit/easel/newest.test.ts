/** Questions of a moving hand: one at a time, the newest next, and one that fails holds up nothing. */
import { expect, test } from 'vitest';
import { Newest } from '#app/_easel/newest.ts';

function asked() {
  const answered: string[] = [];
  const waiting: (() => void)[] = [];
  const ask = (name: string) => () =>
    new Promise<void>((resolve) => {
      waiting.push(() => {
        answered.push(name);
        resolve();
      });
    });
  return { answered, waiting, ask };
}

test('while one is answered, only the newest of the others waits', async () => {
  const { answered, waiting, ask } = asked();
  const newest = new Newest();
  for (const name of ['first', 'second', 'third']) newest.run(ask(name));
  expect(waiting).toHaveLength(1);
  waiting[0]?.();
  await Promise.resolve().then(() => undefined);
  await new Promise((resolve) => setTimeout(resolve));
  waiting[1]?.();
  expect(answered).toEqual(['first', 'third']);
});

test('what was forgotten is not asked, and a failure lets the next one through', async () => {
  const { answered, waiting, ask } = asked();
  const newest = new Newest();
  newest.run(() => Promise.reject(new Error('The picture is gone.')));
  newest.run(ask('after the failure'));
  await new Promise((resolve) => setTimeout(resolve));
  newest.run(ask('forgotten'));
  newest.forget();
  waiting[0]?.();
  await new Promise((resolve) => setTimeout(resolve));
  expect(answered).toEqual(['after the failure']);
  expect(waiting).toHaveLength(1);
});
