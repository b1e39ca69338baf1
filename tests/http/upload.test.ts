/** Posting, showing and taking back pictures through the handlers themselves, on a real store and runner. */
import { randomUUID } from 'node:crypto';
import { open, readdir } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { GET as getMeasures } from '#app/api/boards/[boardId]/measures/[pictureId]/route.ts';
import { GET as getBytes } from '#app/api/boards/[boardId]/pictures/[pictureId]/[size]/route.ts';
import { GET as getView, DELETE as takeBack } from '#app/api/boards/[boardId]/pictures/[pictureId]/route.ts';
import { POST as post } from '#app/api/boards/[boardId]/pictures/route.ts';
import { startSession } from '#server/access/session.ts';
import type { UploadedPicture } from '#server/core/contract/responses.ts';
import { offerServices, type Services } from '#server/http/services.ts';
import { createRunner, type Runner } from '#server/pipeline/runner.ts';
import { incomingFolder, listBlobs } from '#server/store/blobs.ts';
import { addBoard } from '#server/store/boards.ts';
import { database } from '#server/store/database.ts';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';
import { burdenedJpeg, card, SECRET } from '#tests/imaging/pictures.ts';

let store: AStore;
let runner: Runner;
let boardId: string;
const cookies: Record<string, string> = {};

beforeAll(async () => {
  store = await openAStore();
  runner = await createRunner({ onResult: () => undefined });
  offerServices({
    takeInPicture: (incoming) => runner.takeInPicture(incoming),
    measuresOf: (board, picture) => runner.measuresOf(board, picture),
    pictureRemoved: (board, picture) => runner.pictureRemoved(board, picture),
  } as Services);
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
});
afterAll(async () => {
  await runner.stop();
  await store.close();
});

const url = (rest = '') => `http://localhost:4300/api/boards/${boardId}/pictures${rest}`;
const context = <P extends object>(params: P) => ({ params: Promise.resolve({ boardId, ...params }) });

function form(bytes: Uint8Array | string, fields: Record<string, string>, fileFirst = false): FormData {
  const body = new FormData();
  const file = new File([bytes as BlobPart], 'study.jpg', { type: 'image/jpeg' });
  if (fileFirst) body.set('file', file);
  for (const [name, value] of Object.entries(fields)) body.set(name, value);
  if (!fileFirst) body.set('file', file);
  return body;
}

function send(who: string, body: BodyInit, headers: Record<string, string> = {}): Promise<Response> {
  const init = { method: 'POST', headers: { cookie: cookies[who] ?? '', ...headers }, body, duplex: 'half' };
  return post(new Request(url(), init as RequestInit), context({}));
}

async function refusal(response: Response | Promise<Response>) {
  const answered = await response;
  const { error } = (await answered.json()) as { error: { code: string; message: string } };
  return { status: answered.status, ...error };
}

async function posted(
  who: string,
  fields: Record<string, string>,
  fileFirst = false,
): Promise<UploadedPicture> {
  const response = await send(who, form(await burdenedJpeg(), fields, fileFirst));
  expect(response.status).toBe(201);
  return (await response.json()) as UploadedPicture;
}

async function leftOnTheWay(): Promise<string[]> {
  return readdir(incomingFolder()).catch(() => []);
}

describe('posting', () => {
  test('a painter posts a painting and reads back what was said of it', async () => {
    const { id, width, height } = await posted('painter', { kind: 'painting', caption: 'Second sitting' });
    expect([width, height]).toEqual([256, 160]);
    const request = new Request(url(`/${id}`), { headers: { cookie: cookies.viewer ?? '' } });
    const view = await (await getView(request, context({ pictureId: id }))).json();
    expect(view).toMatchObject({ kind: 'painting', caption: 'Second sitting', width: 256, rights: null });
    expect(await leftOnTheWay()).toEqual([]);
  });

  test('fields may come before or after the file', async () => {
    const fields = { kind: 'reference', rights: 'free', credit: 'A. Nonymous, CC BY 4.0' };
    await posted('owner', fields, false);
    await posted('teacher', fields, true);
  });

  test.each([
    ['peer', { kind: 'painting' }],
    ['viewer', { kind: 'painting' }],
    ['painter', { kind: 'reference', rights: 'mine' }],
  ])('a %s may not post %o', async (who, fields) => {
    const before = await listBlobs();
    const body = form(await burdenedJpeg(), fields as Record<string, string>);
    await expect(refusal(send(who, body))).resolves.toMatchObject({ status: 403, code: 'not-allowed' });
    expect(await listBlobs()).toEqual(before);
    expect(await leftOnTheWay()).toEqual([]);
  });

  test('a stranger learns nothing of the board', async () => {
    const body = form(await burdenedJpeg(), { kind: 'painting' });
    await expect(refusal(send('stranger', body))).resolves.toMatchObject({ status: 404 });
  });

  test('a reference without rights, or free without a credit, is asked for them', async () => {
    const bytes = await burdenedJpeg();
    for (const fields of [{ kind: 'reference' }, { kind: 'reference', rights: 'free', credit: '  ' }]) {
      await expect(refusal(send('owner', form(bytes, fields)))).resolves.toMatchObject({
        status: 422,
        code: 'rights-missing',
      });
    }
    expect(await leftOnTheWay()).toEqual([]);
  });
});

describe('what is wrong with a form is said, and nothing stays', () => {
  test('a text file named .jpg', async () => {
    await expect(refusal(send('painter', form('Buy white.', { kind: 'painting' })))).resolves.toMatchObject({
      status: 415,
      message: expect.stringContaining('study.jpg is not a picture: it begins like plain text'),
    });
    expect(await leftOnTheWay()).toEqual([]);
  });

  test('a file of 0 bytes', async () => {
    await expect(refusal(send('painter', form('', { kind: 'painting' })))).resolves.toMatchObject({
      status: 422,
      code: 'file-empty',
    });
    expect(await leftOnTheWay()).toEqual([]);
  });

  test('an unknown field, by its name', async () => {
    const body = form(await burdenedJpeg(), { kind: 'painting', mood: 'grim' });
    await expect(refusal(send('painter', body))).resolves.toMatchObject({
      status: 400,
      message: expect.stringContaining('mood'),
    });
    expect(await leftOnTheWay()).toEqual([]);
  });

  test('no file, no multipart, no kind', async () => {
    const without = new FormData();
    without.set('kind', 'painting');
    await expect(refusal(send('painter', without))).resolves.toMatchObject({ status: 400 });
    await expect(refusal(send('painter', 'hello'))).resolves.toMatchObject({ status: 400 });
    await expect(refusal(send('painter', form(await burdenedJpeg(), {})))).resolves.toMatchObject({
      status: 400,
    });
    expect(await leftOnTheWay()).toEqual([]);
  });

  test('more than 60 MB, while it streams', async () => {
    const boundary = 'veilstep-test';
    const chunk = new Uint8Array(1_000_000).fill(7);
    let sent = 0;
    const body = new ReadableStream<Uint8Array>({
      pull(controller) {
        if (sent === 0) controller.enqueue(filePart(boundary));
        if (sent++ < 62) controller.enqueue(chunk);
        else {
          controller.enqueue(new TextEncoder().encode(`\r\n--${boundary}--\r\n`));
          controller.close();
        }
      },
    });
    const headers = { 'content-type': `multipart/form-data; boundary=${boundary}` };
    await expect(refusal(send('painter', body, headers))).resolves.toMatchObject({
      status: 413,
      message: expect.stringContaining('more than 60 MB'),
    });
    expect(await leftOnTheWay()).toEqual([]);
  });

  test('an upload that breaks off half way', async () => {
    const before = await listBlobs();
    const boundary = 'veilstep-test';
    const half = (await burdenedJpeg()).subarray(0, 1500);
    for (const end of ['error', 'close'] as const) {
      let step = 0;
      const body = new ReadableStream<Uint8Array>({
        pull(controller) {
          if (step++ === 0) controller.enqueue(filePart(boundary));
          else if (step === 2) controller.enqueue(half);
          else if (end === 'error')
            controller.error(Object.assign(new Error('aborted'), { code: 'ECONNRESET' }));
          else controller.close();
        },
      });
      const headers = { 'content-type': `multipart/form-data; boundary=${boundary}` };
      await expect(refusal(send('painter', body, headers))).resolves.toMatchObject({
        status: 400,
        message: expect.stringContaining('broke off'),
      });
      expect(await leftOnTheWay()).toEqual([]);
    }
    expect(await listBlobs()).toEqual(before);
  });

  test('a disk that fills up while the files are put in their place', async () => {
    const pictures = await database().picture.count();
    const before = await listBlobs();
    const probe = await open('/dev/null');
    const fileHandle = Object.getPrototypeOf(probe) as { sync(): Promise<void> };
    await probe.close();
    const full = Object.assign(new Error('ENOSPC: no space left on device, write'), { code: 'ENOSPC' });
    vi.spyOn(fileHandle, 'sync').mockRejectedValue(full);
    const bytes = await card().flop().jpeg().toBuffer();
    await expect(refusal(send('painter', form(bytes, { kind: 'painting' })))).resolves.toMatchObject({
      status: 507,
      code: 'disk-full',
    });
    vi.restoreAllMocks();
    expect(await listBlobs()).toEqual(before);
    expect(await leftOnTheWay()).toEqual([]);
    expect(await database().picture.count()).toBe(pictures);
  });
});

describe('showing', () => {
  const get = (id: string, size: string, headers: Record<string, string> = {}) =>
    getBytes(
      new Request(url(`/${id}/${size}`), { headers: { cookie: cookies.viewer ?? '', ...headers } }),
      context({ pictureId: id, size }),
    );

  test('every size is there, asked about each time, and says nothing of its maker', async () => {
    const { id } = await posted('painter', { kind: 'painting' });
    for (const size of ['640', '1280', '2560', 'lossless-640']) {
      const response = await get(id, size);
      expect(response.status).toBe(200);
      expect(response.headers.get('content-type')).toBe(size === 'lossless-640' ? 'image/png' : 'image/jpeg');
      expect(response.headers.get('cache-control')).toBe('private, max-age=0, must-revalidate');
      const bytes = Buffer.from(await response.arrayBuffer());
      expect(bytes.length).toBe(Number(response.headers.get('content-length')));
      expect(bytes.includes(SECRET)).toBe(false);
      const again = await get(id, size, { 'if-none-match': response.headers.get('etag') ?? '' });
      expect(again.status).toBe(304);
    }
  });

  test('neither the plate nor an unknown size is served', async () => {
    const { id } = await posted('painter', { kind: 'painting' });
    for (const size of ['plate', 'clip-map', '..', '9999']) {
      await expect(refusal(get(id, size))).resolves.toMatchObject({ status: 400 });
    }
  });
});

describe('taking back', () => {
  const remove = (who: string, id: string) =>
    takeBack(
      new Request(url(`/${id}`), { method: 'DELETE', headers: { cookie: cookies[who] ?? '' } }),
      context({ pictureId: id }),
    );

  test('another painter may not; its painter may, and then nothing of it is left', async () => {
    const before = await listBlobs();
    const bytes = await card().flip().modulate({ brightness: 0.7 }).jpeg().toBuffer();
    const { id } = (await (
      await send('painter', form(bytes, { kind: 'painting' }))
    ).json()) as UploadedPicture;
    await expect(refusal(remove('other', id))).resolves.toMatchObject({ status: 403 });
    expect((await remove('painter', id)).status).toBe(204);
    const request = new Request(url(`/${id}/640`), { headers: { cookie: cookies.owner ?? '' } });
    await expect(refusal(getBytes(request, context({ pictureId: id, size: '640' })))).resolves.toMatchObject({
      status: 404,
      code: 'picture-not-found',
    });
    expect((await listBlobs()).sort()).toEqual(before.sort());
  });

  test('a teacher may take back any picture', async () => {
    const { id } = await posted('painter', { kind: 'painting' });
    expect((await remove('teacher', id)).status).toBe(204);
  });
});

test('measures are a fact to wait for: 202 with the sentence', async () => {
  const { id } = await posted('painter', { kind: 'painting' });
  const request = new Request(`http://localhost:4300/api/boards/${boardId}/measures/${id}`, {
    headers: { cookie: cookies.viewer ?? '' },
  });
  const response = await getMeasures(request, context({ pictureId: id }));
  expect(response.status).toBe(202);
  expect(await response.json()).toEqual({ pending: expect.stringMatching(/^Waiting for planes/) });
});

function filePart(boundary: string): Uint8Array {
  return new TextEncoder().encode(
    `--${boundary}\r\ncontent-disposition: form-data; name="kind"\r\n\r\npainting\r\n--${boundary}\r\n` +
      'content-disposition: form-data; name="file"; filename="big.jpg"\r\ncontent-type: image/jpeg\r\n\r\n',
  );
}
