/**
 * One board with people of every role and a live server, for all tests of the file that imports this.
 *
 * Importing it is enough: it is opened before the file's own preparations and closed after its last test.
 */
import { afterAll, beforeAll } from 'vitest';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';
import { aBoardWithPeople, type Cast, type LiveServer, startLive } from './a-live-server.ts';

let store: AStore;
export let server: LiveServer;
export let cast: Cast;

beforeAll(async () => {
  store = await openAStore();
  cast = await aBoardWithPeople();
  server = await startLive();
});
afterAll(async () => {
  await server.stop();
  await store.close();
});

/** A new server on the same store, after the old one was stopped. */
export async function startAgain(): Promise<void> {
  server = await startLive();
}
