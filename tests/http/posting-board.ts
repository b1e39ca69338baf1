/** A board with one person of every role, and the picture handlers called as they call them. Real store and runner. */
import { randomUUID } from 'node:crypto';
import { readdir } from 'node:fs/promises';
import { expect } from 'vitest';
import { POST as post } from '#app/api/boards/[boardId]/pictures/route.ts';
import { startSession } from '#server/access/session.ts';
import type { UploadedPicture } from '#server/core/contract/responses.ts';
import { offerServices, type Services } from '#server/http/services.ts';
import { createRunner, type Runner } from '#server/pipeline/runner.ts';
import { incomingFolder } from '#server/store/blobs.ts';
import { addBoard } from '#server/store/boards.ts';
import { database } from '#server/store/database.ts';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';
import { burdenedJpeg } from '#tests/imaging/pictures.ts';

let store: AStore;
let runner: Runner;
export let boardId: string;
export const cookies: Record<string, string> = {};
/** Pictures of which a change of their notes was told, in that order. */
export const noted: string[] = [];

export async function openPostingBoard(): Promise<void> {
  store = await openAStore();
  runner = await createRunner({ onResult: () => undefined });
  const some: Partial<Services> = {
    takeInPicture: (incoming) => runner.takeInPicture(incoming),
    measuresOf: (board, picture) => runner.measuresOf(board, picture),
    planOf: (board, picture) => runner.planOf(board, picture),
    isVeiled: async () => false,
    pictureNoted(board, picture) {
      noted.push(picture);
      runner.pictureNoted(board, picture);
    },
    async pictureRemoved(board, picture) {
      await runner.pictureRemoved(board, picture);
      return 0;
    },
  };
  // What is left out has nothing to do with posting.
  offerServices(some as Services);
  const people: Record<string, string> = {};
  for (const name of ['owner', 'teacher', 'painter', 'other', 'peer', 'viewer', 'stranger']) {
    const id = randomUUID();
    await database().person.create({ data: { id, name } });
    people[name] = id;
    cookies[name] = (await startSession(id, false)).split(';')[0] ?? '';
  }
  boardId = await addBoard(people.owner ?? '', 'Marsh at dawn');
  for (const [name, role] of Object.entries({
    teacher: 'teacher',
    painter: 'painter',
    other: 'painter',
    peer: 'peer',
    viewer: 'viewer',
  })) {
    await database().member.create({ data: { boardId, personId: people[name] ?? '', role } });
  }
}

export async function closePostingBoard(): Promise<void> {
  await runner.stop();
  await store.close();
}

export const url = (rest = '') => `http://localhost:4300/api/boards/${boardId}/pictures${rest}`;
export const context = <P extends object>(params: P) => ({ params: Promise.resolve({ boardId, ...params }) });

export function form(
  bytes: Uint8Array | string,
  fields: Record<string, string>,
  fileFirst = false,
): FormData {
  const body = new FormData();
  const file = new File([bytes as BlobPart], 'study.jpg', { type: 'image/jpeg' });
  if (fileFirst) body.set('file', file);
  for (const [name, value] of Object.entries(fields)) body.set(name, value);
  if (!fileFirst) body.set('file', file);
  return body;
}

export function send(who: string, body: BodyInit, headers: Record<string, string> = {}): Promise<Response> {
  const init = { method: 'POST', headers: { cookie: cookies[who] ?? '', ...headers }, body, duplex: 'half' };
  return post(new Request(url(), init as RequestInit), context({}));
}

export async function refusal(response: Response | Promise<Response>) {
  const answered = await response;
  const { error } = (await answered.json()) as { error: { code: string; message: string } };
  return { status: answered.status, ...error };
}

export async function posted(
  who: string,
  fields: Record<string, string>,
  fileFirst = false,
): Promise<UploadedPicture> {
  const response = await send(who, form(await burdenedJpeg(), fields, fileFirst));
  expect(response.status).toBe(201);
  return (await response.json()) as UploadedPicture;
}

export async function leftOnTheWay(): Promise<string[]> {
  return readdir(incomingFolder()).catch(() => []);
}
