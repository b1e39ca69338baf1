/**
 * Planned before it is painted: frames kept, a plane enlarged, weight looked at, four values settled on, the planned
 * ladder taken, a page to take along, and the painting held against the frame it was made after; by mouse and by touch.
 */
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import sharp from 'sharp';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { readCrops } from '#server/core/live/plan/crops.ts';
import { joinRoom } from '#tests/helpers/joined-room.ts';
import { aPhotographed, PHOTOGRAPH } from '../planned-picture.ts';
import { aGuest, expect, test } from '../story.ts';
import { Hands } from './hands.ts';
import { seen, TOUCH_AND_MOUSE } from './ways.ts';

/** The server plans in a thread that first has to start; edges of a whole picture are worked out once. */
const PLANNED = 90_000;

const part = (page: Page, name: string) => page.getByRole('tab', { name, exact: true });
const button = (page: Page, name: string | RegExp) => seen(page.getByRole('button', { name }));

async function keepTwoFrames(hands: Hands): Promise<void> {
  const { page } = hands;
  await hands.press(part(page, 'Frames'));
  await hands.press(button(page, /^Proposed frame 1:/), PLANNED);
  await hands.press(button(page, 'Keep this frame'));
  await hands.press(button(page, 'Upright'));
  await hands.press(button(page, /^Proposed frame 1:/), PLANNED);
  await hands.press(button(page, 'Keep this frame'));
  await expect(page.getByLabel('Name of this frame')).toHaveCount(2);
  const pixels = page
    .getByRole('term')
    .filter({ hasText: 'Pixels left' })
    .locator('xpath=following-sibling::dd');
  const before = (await pixels.textContent()) ?? '';
  await hands.pull(page.getByRole('button', { name: /^Bottom right corner/ }), [-14, -14]);
  await expect(pixels).not.toHaveText(before);
}

async function enlarge(hands: Hands): Promise<void> {
  const { page } = hands;
  await hands.press(part(page, 'Rearrange'));
  await hands.choose(page.getByLabel('Plane', { exact: true }), 'plane-3');
  await hands.press(button(page, 'Lift this plane'));
  const size = page.getByRole('slider', { name: 'Size' });
  await hands.write(size, '140');
  await expect(page.getByText('140 %')).toBeVisible();
}

async function settleOnFour(hands: Hands): Promise<void> {
  const { page } = hands;
  await hands.press(part(page, 'Values'));
  await hands.press(button(page, /Two values/), PLANNED);
  await hands.press(button(page, /Four values/));
  await hands.press(button(page, 'Paint from this one'));
  await expect(page.getByText('This is the plan to paint from')).toBeVisible();
}

async function weigh(hands: Hands): Promise<void> {
  const { page } = hands;
  await hands.press(part(page, 'Weight'));
  await expect(page.getByText(/side weighs more\.|sides are in balance\./).first()).toBeVisible({
    timeout: PLANNED,
  });
}

async function takeThePlan(hands: Hands): Promise<void> {
  const { page } = hands;
  await hands.press(part(page, 'Ladder'));
  await hands.press(button(page, 'Take this as the plan'), PLANNED);
  await expect(page.getByText('This is the plan that was taken.')).toBeVisible();
}

for (const { name, way, viewport } of TOUCH_AND_MOUSE) {
  test(`planned before it is painted ${name}`, async ({ browser, server }) => {
    test.setTimeout(300_000);
    const context = await browser.newContext({ viewport, hasTouch: way === 'touch' });
    const { page, who, troubles } = await aGuest(context, server, 'Ragna');
    const { boardId } = await aPhotographed(server, who, 'The castle before rain');
    const hands = new Hands(page, way);
    await page.goto(`${server.url}/boards/${boardId}`);
    await hands.press(seen(page.getByRole('link', { name: 'Plan', exact: true })));
    await keepTwoFrames(hands);
    hands.part('to two frames');
    await enlarge(hands);
    await weigh(hands);
    hands.part('to the motif enlarged and weighed');
    await settleOnFour(hands);
    await takeThePlan(hands);
    hands.part('to the plan taken');
    const sheet = page.waitForEvent('download', { timeout: PLANNED });
    await hands.press(button(page, 'Page to print (PDF)'));
    expect(
      readFileSync(await (await sheet).path())
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-');
    hands.part('to the page to take along');

    await hands.press(page.getByRole('link', { name: 'Back to the board' }));
    const painting = test.info().outputPath('painting.png');
    await sharp(PHOTOGRAPH).modulate({ brightness: 0.8 }).png().toFile(painting);
    await hands.chooseFiles(() => hands.press(button(page, 'Post pictures')), [painting]);
    await hands.press(page.getByRole('dialog').getByLabel('A painting'));
    await hands.press(page.getByRole('dialog').getByRole('button', { name: 'Post it' }));
    const ladder = page.getByRole('region', { name: 'Ladder' });
    await expect(ladder.getByText(/against the plan/i).first()).toBeVisible({ timeout: PLANNED });
    const held = ladder.getByRole('combobox', { name: 'Held against' });
    const { doc, leave } = await joinRoom(server.url, who, boardId, 'setup');
    const upright = readCrops(doc).find(({ name: called }) => called === 'Frame 2');
    leave();
    await hands.choose(held, upright?.id ?? '');
    const { pictures } = await server.json<{ pictures: { id: string; kind: string }[] }>(
      who,
      `/api/boards/${boardId}`,
    );
    const paintingId = pictures.find(({ kind }) => kind === 'painting')?.id ?? '';
    await expect(async () => {
      const answer = await server.call(who, `/api/boards/${boardId}/measures/${paintingId}`);
      expect(answer.status).toBe(200);
      expect(((await answer.json()) as MeasureDocument).target).toBe('plan');
    }).toPass({ timeout: PLANNED });
    hands.part('to the painting held against its frame');
    hands.told(test.info().title, 32);
    expect(troubles).toEqual([]);
    await context.close();
  });
}
