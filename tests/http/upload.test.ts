/** Posting pictures through the handler itself, on a real store and runner. */
import { open } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { GET as getView } from '#app/api/boards/[boardId]/pictures/[pictureId]/route.ts';
import { listBlobs } from '#server/store/blobs.ts';
import { database } from '#server/store/database.ts';
import { burdenedJpeg, card } from '#tests/imaging/pictures.ts';
import {
  closePostingBoard,
  context,
  cookies,
  form,
  leftOnTheWay,
  openPostingBoard,
  posted,
  refusal,
  send,
  url,
} from './posting-board.ts';

beforeAll(openPostingBoard);
afterAll(closePostingBoard);

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

function filePart(boundary: string): Uint8Array {
  return new TextEncoder().encode(
    `--${boundary}\r\ncontent-disposition: form-data; name="kind"\r\n\r\npainting\r\n--${boundary}\r\n` +
      'content-disposition: form-data; name="file"; filename="big.jpg"\r\ncontent-type: image/jpeg\r\n\r\n',
  );
}
