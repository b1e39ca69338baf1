import { afterEach, describe, expect, test } from 'vitest';
import { database } from '#server/store/database.ts';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';

let store: AStore | undefined;
afterEach(async () => {
  await store?.close();
  store = undefined;
});

describe('the embedded database', () => {
  test('a fresh store takes a person and finds them again', async () => {
    store = await openAStore();
    await database().person.create({ data: { id: 'p1', name: 'Ottoline' } });
    await expect(database().person.findUnique({ where: { id: 'p1' } })).resolves.toMatchObject({
      name: 'Ottoline',
    });
  });
});
