/**
 * What is taken along from a critique: the painter marks, takes the sheet and it is looked at, page and picture; a teacher
 * sets homework from a card, the painter finds it, posts through its slot, and the teacher sees that it is in.
 */
import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import sharp from 'sharp';
import type { AServer } from '#tests/helpers/a-server.ts';
import { readPdf } from '#tests/sheet/read-pdf.ts';
import { barriersOf } from './barriers.ts';
import { outlineScene } from './scene-planes.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, sceneFile } from './scenes.ts';
import { sayAt } from './several.ts';
import { expect, makeBoard, measuresWhenReady, placeOn, postPicture, stageOf, test } from './story.ts';

/** A board with a reference, its planes, and a painting by Pelle that is measured. */
async function aCritique(server: AServer) {
  const owner = await server.enter('Hedda');
  const { id: boardId } = await makeBoard(server, owner, 'Hills to take along');
  const reference = await sceneFile({ name: 'reference', bands: REFERENCE_BANDS });
  const there = await postPicture(server, owner, boardId, reference, { kind: 'reference', rights: 'mine' });
  await outlineScene(server, owner, boardId, there.id);
  const link = async (role: string) => {
    const body = { role, hours: 2 };
    return (await server.json<{ token: string }>(owner, `/api/boards/${boardId}/invites`, 'POST', body))
      .token;
  };
  return { boardId, painterLink: await link('painter'), teacherLink: await link('teacher') };
}

/** Presses a way to take the sheet and reads the file that arrives. */
async function taken(page: Page, name: string): Promise<{ bytes: Buffer; file: string }> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name }).click();
  const arrived = await download;
  return { bytes: await readFile(await arrived.path()), file: arrived.suggestedFilename() };
}

test('a critique is taken along as a page to print and as a picture, also on a phone', async ({
  guest,
  server,
}) => {
  test.setTimeout(240_000);
  const { boardId, painterLink } = await aCritique(server);
  const { page, who, troubles } = await guest('Pelle', painterLink);
  const file = await sceneFile({ name: 'painting', bands: PAINTING_BANDS });
  const caption = 'Hills after rain';
  const { id } = await postPicture(server, who, boardId, file, { kind: 'painting', caption });
  await measuresWhenReady(server, who, boardId, id);
  await page.goto(`${server.url}/boards/${boardId}`);
  await expect(page.getByRole('button', { name: /^Far hills, / })).toBeVisible({ timeout: 60_000 });
  const remark = 'The hills come forward here.';
  await sayAt(page, () => placeOn(stageOf(page, 'Painting'), 0.7, 0.4), remark);
  const headlines = await page.getByRole('heading', { level: 3 }).allTextContents();

  await page.getByText('A4', { exact: true }).click();
  const printed = await taken(page, 'Page to print (PDF)');
  expect(printed.file).toBe('hills-after-rain.pdf');
  const sheet = await readPdf(printed.bytes);
  expect(sheet.pages).toBe(1);
  expect(sheet.width).toBeCloseTo((210 / 25.4) * 72, 1);
  for (const words of [
    caption,
    'Pelle',
    remark,
    'Far hills',
    'This works',
    'To check:',
    '1 Sky',
    '4 Foreground',
  ]) {
    expect(sheet.text).toContain(words);
  }
  expect(headlines.some((headline) => sheet.text.includes(headline))).toBe(true);
  // The remark's number stands where it was marked, beside its spot.
  const picture = [...sheet.pictures].sort((one, two) => two.width - one.width)[0];
  const number = sheet.texts.find(({ text, x, y }) => {
    const [inX, inY] = [x - (picture?.x ?? 0), y - (picture?.y ?? 0)];
    return text === '1' && inX > 0 && inX < (picture?.width ?? 0) && inY > 0 && inY < (picture?.height ?? 0);
  });
  expect(Math.abs((number?.x ?? 0) - (picture?.x ?? 0) - 0.7 * (picture?.width ?? 0))).toBeLessThan(30);
  expect(Math.abs((number?.y ?? 0) - (picture?.y ?? 0) - 0.4 * (picture?.height ?? 0))).toBeLessThan(30);

  await page.getByText('Letter', { exact: true }).click();
  expect((await readPdf((await taken(page, 'Page to print (PDF)')).bytes)).width).toBeCloseTo(8.5 * 72, 1);
  expect(await barriersOf(page)).toEqual([]);

  await page.setViewportSize({ width: 390, height: 844 });
  await page.getByRole('tab', { name: 'Talk' }).click();
  const drawn = await taken(page, 'Page as a picture (PNG)');
  const { format, width = 0, height = 0 } = await sharp(drawn.bytes).metadata();
  expect(format).toBe('png');
  expect(height / width).toBeCloseTo(11 / 8.5, 2);
  await expect(page.getByText('The page is in your downloads, as hills-after-rain.png.')).toBeVisible();
  expect(await barriersOf(page)).toEqual([]);
  expect(troubles).toEqual([]);
});

const dayIn = (days: number) => {
  const at = new Date(Date.now() + days * 24 * 3_600_000);
  const two = (part: number) => String(part).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
};

test('homework from a card: set for a day, found at home, posted through its slot, seen to be in, closed', async ({
  guest,
  server,
}) => {
  test.setTimeout(240_000);
  const { boardId, painterLink, teacherLink } = await aCritique(server);
  const painter = await guest('Pelle', painterLink);
  const file = await sceneFile({ name: 'painting', bands: PAINTING_BANDS });
  const { id } = await postPicture(server, painter.who, boardId, file, { kind: 'painting' });
  await measuresWhenReady(server, painter.who, boardId, id);
  const teacher = await guest('Tilda', teacherLink);
  const homework = (page: Page) => page.getByRole('region', { name: 'Homework' });

  await test.step('the teacher sets it, by keyboard', async () => {
    const { page } = teacher;
    await page.goto(`${server.url}/boards/${boardId}`);
    const set = page.getByRole('button', { name: 'Set homework' });
    await expect(set).toBeVisible({ timeout: 60_000 });
    await set.focus();
    await page.keyboard.press('Enter');
    const from = page.getByLabel('What is there to try?');
    const hills = await from.locator('option', { hasText: /^Far hills: / }).getAttribute('value');
    await from.selectOption(hills);
    await page.getByLabel('For which day?').fill(dayIn(1));
    expect(await barriersOf(page)).toEqual([]);
    await page.getByRole('button', { name: 'Set it' }).focus();
    await page.keyboard.press('Enter');
    await expect(homework(page).getByText('for tomorrow')).toBeVisible();
    await expect(homework(page).getByText('Not in yet.')).toBeVisible();
  });

  await test.step('the painter finds it on the page of boards and posts the next state through the slot', async () => {
    const { page } = painter;
    await page.goto(server.url);
    await page
      .getByRole('link', { name: /^Homework on “Hills to take along”, for tomorrow: Far hills/ })
      .click();
    await expect(homework(page).getByText('for tomorrow from Tilda')).toBeVisible({ timeout: 60_000 });
    const chooser = page.waitForEvent('filechooser');
    await homework(page).getByRole('button', { name: 'Post the next state' }).click();
    const next = await sceneFile({ name: 'next-state', bands: REFERENCE_BANDS });
    await (await chooser).setFiles(next);
    await expect(homework(page).getByText('It is in, since today.')).toBeVisible({ timeout: 60_000 });
    expect(await barriersOf(page)).toEqual([]);
  });

  await test.step('it follows the painting; the teacher sees that it is in and closes it', async () => {
    const board = await server.json<{ pictures: { id: string; follows: string | null }[] }>(
      teacher.who,
      `/api/boards/${boardId}`,
    );
    expect(board.pictures.some(({ follows }) => follows === id)).toBe(true);
    const { page } = teacher;
    await expect(homework(page).getByText('It is in, since today.')).toBeVisible({ timeout: 30_000 });
    await homework(page).getByRole('button', { name: 'Close it' }).click();
    await homework(page).getByText('Homework that is closed').click();
    await expect(homework(page).getByText('Closed.', { exact: true })).toBeVisible();
    await page.setViewportSize({ width: 390, height: 844 });
    await page.getByRole('tab', { name: 'Talk' }).click();
    expect(await barriersOf(page)).toEqual([]);
  });
  for (const { troubles } of [painter, teacher]) expect(troubles).toEqual([]);
});
