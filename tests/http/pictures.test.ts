/** Showing, measuring and taking back pictures through the handlers themselves, on a real store and runner. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { GET as getMeasures } from '#app/api/boards/[boardId]/measures/[pictureId]/route.ts';
import { GET as getBytes } from '#app/api/boards/[boardId]/pictures/[pictureId]/[size]/route.ts';
import { DELETE as takeBack } from '#app/api/boards/[boardId]/pictures/[pictureId]/route.ts';
import type { UploadedPicture } from '#server/core/contract/responses.ts';
import { listBlobs } from '#server/store/blobs.ts';
import { card, SECRET } from '#tests/imaging/pictures.ts';
import {
  boardId,
  closePostingBoard,
  context,
  cookies,
  form,
  openPostingBoard,
  posted,
  refusal,
  send,
  url,
} from './posting-board.ts';

beforeAll(openPostingBoard);
afterAll(closePostingBoard);

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
