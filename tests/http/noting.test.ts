/** Noting what a painting is, at upload and later, through the handlers on a real store and runner. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { GET as getView, PATCH as note } from '#app/api/boards/[boardId]/pictures/[pictureId]/route.ts';
import { readBoardView } from '#server/store/board-view.ts';
import { notePicture, readPictureView } from '#server/store/pictures.ts';
import { burdenedJpeg } from '#tests/imaging/pictures.ts';
import {
  boardId,
  closePostingBoard,
  context,
  cookies,
  form,
  noted,
  openPostingBoard,
  posted,
  refusal,
  send,
  url,
} from './posting-board.ts';

beforeAll(openPostingBoard);
afterAll(closePostingBoard);

const view = async (id: string) => {
  const request = new Request(url(`/${id}`), { headers: { cookie: cookies.viewer ?? '' } });
  return (await getView(request, context({ pictureId: id }))).json();
};

const patch = (who: string, id: string, notes: unknown) =>
  note(
    new Request(url(`/${id}`), {
      method: 'PATCH',
      headers: { cookie: cookies[who] ?? '', 'content-type': 'application/json' },
      body: JSON.stringify(notes),
    }),
    context({ pictureId: id }),
  );

describe('at upload', () => {
  test('paint, drying and light go with a painting, in our words or the painter’s own', async () => {
    const oil = await posted('painter', { kind: 'painting', medium: 'oil', drying: 'wet', light: 'lamp' });
    expect(await view(oil.id)).toMatchObject({ medium: 'oil', drying: 'wet', light: 'lamp' });
    const own = await posted('painter', { kind: 'painting', medium: '  ink and wash ' });
    expect(await view(own.id)).toMatchObject({ medium: 'ink and wash', drying: null, light: null });
  });

  test('nothing is noted where nothing was said, nor of a reference', async () => {
    const bare = await posted('painter', { kind: 'painting' });
    expect(await view(bare.id)).toMatchObject({ medium: null, drying: null, light: null });
    const reference = await posted('owner', {
      kind: 'reference',
      rights: 'mine',
      medium: 'oil',
      drying: 'wet',
    });
    expect(await view(reference.id)).toMatchObject({ medium: null, drying: null, light: null });
  });

  test.each([
    ['drying', { drying: 'damp' }],
    ['light', { light: 'moon' }],
    ['medium', { medium: 'x'.repeat(61) }],
  ])('an unknown %s is refused by its name', async (field, wrong) => {
    const body = form(await burdenedJpeg(), { kind: 'painting', ...(wrong as Record<string, string>) });
    await expect(refusal(send('painter', body))).resolves.toMatchObject({
      status: 400,
      message: expect.stringContaining(field),
    });
  });
});

describe('later', () => {
  test.each(['painter', 'teacher'])(
    'a %s notes, corrects and takes away; what is not named stays',
    async (who) => {
      const { id } = await posted('painter', { kind: 'painting', medium: 'oil' });
      const first = await patch(who, id, { drying: 'wet', light: 'shade' });
      expect(await first.json()).toMatchObject({ id, medium: 'oil', drying: 'wet', light: 'shade' });
      await patch(who, id, { drying: 'dry', light: null });
      expect(await view(id)).toMatchObject({ medium: 'oil', drying: 'dry', light: null });
      expect(noted.at(-1)).toBe(id);
    },
  );

  test('the board tells everyone of it', async () => {
    const { id } = await posted('painter', { kind: 'painting', medium: 'gouache', drying: 'dry' });
    const board = await readBoardView(boardId, { id: 'anyone', name: 'Anyone' }, 'viewer');
    const told = board?.pictures.find((picture) => picture.id === id);
    expect(told).toMatchObject({ medium: 'gouache', drying: 'dry', light: null });
  });

  test.each(['owner', 'other', 'peer', 'viewer'])('the %s of the board may not', async (who) => {
    const { id } = await posted('painter', { kind: 'painting', medium: 'oil' });
    await expect(refusal(patch(who, id, { medium: 'acrylic' }))).resolves.toMatchObject({ status: 403 });
    expect(await view(id)).toMatchObject({ medium: 'oil' });
  });

  test('a stranger and a picture that is not there are not found', async () => {
    const { id } = await posted('painter', { kind: 'painting' });
    await expect(refusal(patch('stranger', id, { drying: 'dry' }))).resolves.toMatchObject({ status: 404 });
    await expect(refusal(patch('painter', 'nowhere', { drying: 'dry' }))).resolves.toMatchObject({
      status: 404,
      code: 'picture-not-found',
    });
  });

  test('a reference has no paint, and nothing or something strange is no note', async () => {
    const reference = await posted('owner', { kind: 'reference', rights: 'mine' });
    await expect(refusal(patch('teacher', reference.id, { drying: 'wet' }))).resolves.toMatchObject({
      status: 400,
      message: expect.stringContaining('reference'),
    });
    const { id } = await posted('painter', { kind: 'painting' });
    for (const wrong of [{}, { drying: 'damp' }, { medium: '' }, { mood: 'grim' }]) {
      await expect(refusal(patch('painter', id, wrong))).resolves.toMatchObject({ status: 400 });
    }
  });

  test('the store writes notes to paintings of that board only', async () => {
    const reference = await posted('owner', { kind: 'reference', rights: 'mine' });
    const { id } = await posted('painter', { kind: 'painting' });
    await notePicture(boardId, reference.id, { medium: 'oil' });
    await notePicture('another-board', id, { medium: 'oil' });
    expect((await readPictureView(boardId, reference.id))?.medium).toBeNull();
    expect((await readPictureView(boardId, id))?.medium).toBeNull();
  });
});
