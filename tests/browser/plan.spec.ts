/** The plan before the painting: frames kept and refined, values, a planned ladder, and the painting held against it. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import sharp from 'sharp';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { putReferenceOutline } from '#server/core/live/outlines.ts';
import { readCrops } from '#server/core/live/plan/crops.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { type TracedPicture, tracedPictures } from '#tests/fixtures/traced/traced.ts';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { joinRoom, writeInto } from '#tests/helpers/joined-room.ts';
import { barriersOf } from './barriers.ts';
import { aGuest, expect, makeBoard, postPicture, test } from './story.ts';

/** Free-licensed, see the fixture's CREDITS.md; 1024 pixels on its long side. */
const PICTURE = 'castle-isle-on-loch.jpg';
const PHOTOGRAPH = fileURLToPath(new URL(`../fixtures/traced/${PICTURE}`, import.meta.url));
/** The server plans in a thread that first has to start. */
const PLANNED = { timeout: 90_000 };

test.describe.configure({ timeout: 240_000 });

const traced = () => tracedPictures().find(({ picture }) => picture === PICTURE) as TracedPicture;

async function aPhotographed(server: AServer, who: Entered, title: string) {
  const board = await makeBoard(server, who, title);
  const { id } = await postPicture(server, who, board.id, PHOTOGRAPH, { kind: 'reference', rights: 'mine' });
  await writeInto(server.url, who, board.id, 'setup', (doc) => {
    for (const [at, { name, kind, outline }] of traced().planes.entries()) {
      const planeId = `plane-${at}`;
      addPlane(doc, { id: planeId, name, kind, tilt: null });
      putReferenceOutline(doc, id, planeId, outline);
    }
  });
  return { boardId: board.id, photographId: id };
}

async function framesOf(server: AServer, who: Entered, boardId: string) {
  const { doc, leave } = await joinRoom(server.url, who, boardId, 'setup');
  const crops = readCrops(doc);
  leave();
  return crops;
}

const figure = (page: Page, name: string) =>
  page.getByRole('term').filter({ hasText: name }).locator('xpath=following-sibling::dd');

async function pull(page: Page, handle: string, by: readonly [number, number]): Promise<void> {
  const box = await page.getByRole('button', { name: new RegExp(`^${handle}`) }).boundingBox();
  if (!box) throw new Error(`There is no ${handle} on the screen.`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + by[0] / 2, y + by[1] / 2);
  await page.mouse.move(x + by[0], y + by[1]);
  await page.mouse.up();
}

test('from a photograph over two kept frames and a planned ladder to a painting held against the plan', async ({
  guest,
  server,
}) => {
  const { page, who, troubles } = await guest('Ragna');
  const { boardId } = await aPhotographed(server, who, 'The isle before rain');
  await page.goto(`${server.url}/boards/${boardId}`);
  await page.getByRole('link', { name: 'Plan', exact: true }).click();

  await page.getByRole('button', { name: /^Proposed frame 1:/ }).click(PLANNED);
  await expect(figure(page, 'Sky')).toHaveText(/\d+%/);
  await page.getByRole('button', { name: 'Keep this frame' }).click();
  const name = page.getByLabel('Name of this frame').first();
  await name.fill('The isle');
  await name.press('Enter');
  await page.getByRole('button', { name: 'Upright' }).click();
  await page.getByRole('button', { name: /^Proposed frame 1:/ }).click();
  await page.getByRole('button', { name: 'Keep this frame' }).click();
  await expect(page.getByLabel('Name of this frame')).toHaveCount(2);

  const pixels = figure(page, 'Pixels left');
  const before = await pixels.textContent();
  await pull(page, 'Bottom right corner', [-30, -30]);
  await expect(pixels).not.toHaveText(before ?? '');
  const pulled = await pixels.textContent();
  await page.getByRole('button', { name: /^Left side/ }).focus();
  await page.keyboard.press('Shift+ArrowRight');
  await expect(pixels).not.toHaveText(pulled ?? '');
  await expect(async () => {
    const kept = await framesOf(server, who, boardId);
    expect(kept.map((frame) => frame.name)).toEqual(['The isle', 'Frame 2']);
    const [x0, y0, x1, y1] = kept[1]?.box ?? [0, 0, 0, 0];
    const size = await sharp(PHOTOGRAPH).metadata();
    const [wide, high] = [Math.round((x1 - x0) * size.width), Math.round((y1 - y0) * size.height)];
    expect(await pixels.textContent()).toBe(`${wide} × ${high}`);
  }).toPass();

  await page.getByRole('tab', { name: 'Ladder' }).click();
  await page.getByRole('button', { name: 'Take this as the plan' }).click(PLANNED);
  await expect(page.getByText('This is the plan that was taken.')).toBeVisible();

  const painting = await sharp(PHOTOGRAPH).modulate({ brightness: 0.8 }).png().toBuffer();
  const form = new FormData();
  form.set('kind', 'painting');
  form.set('file', new Blob([new Uint8Array(painting)]), 'painting.png');
  const posted = await server.call(who, `/api/boards/${boardId}/pictures`, { method: 'POST', body: form });
  const { id: paintingId } = (await posted.json()) as { id: string };
  const measures = async () => {
    const response = await server.call(who, `/api/boards/${boardId}/measures/${paintingId}`);
    expect(response.status).toBe(200);
    return (await response.json()) as MeasureDocument;
  };

  await page.getByRole('link', { name: 'Back to the board' }).click();
  const ladder = page.getByRole('region', { name: 'Ladder' });
  await expect(ladder.getByText(/against the plan/i).first()).toBeVisible(PLANNED);
  const whole = await measures();
  expect(whole.target).toBe('plan');
  // The upright one: a first frame may well be nearly the whole photograph.
  await ladder.getByRole('combobox', { name: 'Held against' }).selectOption({ label: 'the frame ‘Frame 2’' });
  await expect(async () => {
    const framed = await measures();
    expect(framed.target).toBe('plan');
    expect(framed.planes[0]?.reference?.share).not.toBe(whole.planes[0]?.reference?.share);
  }).toPass({ timeout: 60_000 });
  expect(troubles).toEqual([]);
});

test('a frame that is too small to paint from is said in a sentence, and not kept', async ({
  guest,
  server,
}) => {
  const { page, who } = await guest('Tove');
  const { boardId } = await aPhotographed(server, who, 'A small frame');
  await page.goto(`${server.url}/boards/${boardId}/plan`);
  await page.getByRole('button', { name: 'Draw my own' }).click();
  await page.getByRole('button', { name: 'Keep this frame' }).click();
  await expect(page.getByLabel('Name of this frame')).toHaveCount(1);
  const [kept] = await framesOf(server, who, boardId);
  await page.getByRole('button', { name: /^Right side/ }).focus();
  for (let press = 0; press < 10; press++) await page.keyboard.press('Shift+ArrowLeft');
  await expect(page.getByText(/The frame has \d+ pixels on its shorter side; 300 are needed/)).toBeVisible();
  const [still] = await framesOf(server, who, boardId);
  const width = (box = [0, 0, 0, 0]) => ((box[2] as number) - (box[0] as number)) * 1024;
  expect(width(still?.box)).toBeGreaterThanOrEqual(300);
  expect(width(still?.box)).toBeLessThan(width(kept?.box));
  await page.reload();
  await expect(page.getByLabel('Name of this frame')).toHaveCount(1);
});

test('a cut that is moved is seen by somebody else, one plan is settled on, and the sheet is taken away', async ({
  guest,
  server,
  browser,
}) => {
  const { page, who } = await guest('Sunniva');
  const { boardId } = await aPhotographed(server, who, 'In a few values');
  await page.goto(`${server.url}/boards/${boardId}/plan`);
  await page.getByRole('tab', { name: 'Values' }).click();
  await expect(page.getByRole('button', { name: /Two values/ })).toBeVisible();
  await page.getByRole('button', { name: /Two values/ }).click();
  const cut = page.getByRole('slider', { name: 'Cut between dark and light' });
  const began = await cut.getAttribute('aria-valuetext');
  await cut.focus();
  await page.keyboard.press('PageUp');
  await expect(cut).not.toHaveAttribute('aria-valuetext', began ?? '');
  const moved = (await cut.getAttribute('aria-valuetext')) ?? '';
  await page.getByRole('button', { name: 'Paint from this one' }).click();

  const invited = await server.json<{ token: string }>(who, `/api/boards/${boardId}/invites`, 'POST', {
    role: 'painter',
    hours: 1,
  });
  const other = await aGuest(await browser.newContext(), server, 'Lovis', invited.token);
  await other.page.goto(`${server.url}/boards/${boardId}/plan`);
  await other.page.getByRole('tab', { name: 'Values' }).click();
  await expect(other.page.getByRole('slider', { name: 'Cut between dark and light' })).toHaveAttribute(
    'aria-valuetext',
    moved,
  );
  await expect(other.page.getByRole('button', { name: /Two values.*to paint from/ })).toBeVisible();
  await expect(other.page.getByRole('button', { name: 'Paint from this one' })).toHaveCount(0);
  await other.context.close();

  const [sheet] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Take the thumbnails away (PNG)' }).click(),
  ]);
  const { width, height, format } = await sharp(readFileSync(await sheet.path())).metadata();
  expect({ width, height, format }).toEqual({ width: 1754, height: 1240, format: 'png' });
});

for (const width of [1440, 390]) {
  test(`nobody is kept out of the plan at ${width} px, and nothing runs out of the window`, async ({
    guest,
    server,
  }) => {
    const { page, who } = await guest('Eyvind');
    const { boardId } = await aPhotographed(server, who, 'For everybody');
    await page.setViewportSize({ width, height: 900 });
    await page.goto(`${server.url}/boards/${boardId}/plan`);
    await page.getByRole('button', { name: /^Proposed frame 1:/ }).click(PLANNED);
    await page.getByRole('button', { name: 'Keep this frame' }).click();
    for (const part of ['Frames', 'Values']) {
      await page.getByRole('tab', { name: part }).click();
      if (part === 'Values') await expect(page.getByRole('button', { name: /Five values/ })).toBeVisible();
      expect(await barriersOf(page)).toEqual([]);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(width);
    }
  });
}
