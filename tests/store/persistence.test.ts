/** What has to hold of the store, on the embedded database; `postgres.test.ts` tries the same on a server. */
import { afterAll, beforeAll, test } from 'vitest';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';
import { PERSISTENCE } from './persistence-cases.ts';

let store: AStore;
beforeAll(async () => {
  store = await openAStore();
});
afterAll(() => store.close());

test.each(PERSISTENCE)('$name', ({ run }) => run());
