/** Outlines corrected by hand: followed along an edge, added to, taken from, split, joined, undone; a second browser sees it. */
import type { Page } from '@playwright/test';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, RIDGES, sceneFile } from './scenes.ts';
import { clickPoints, expect, makeBoard, placeOn, postPicture, stageOf, test } from './story.ts';

const [HILLS, MIDDLE, FRONT] = RIDGES;

/** Points of the line ahead of the hand, 0..1 of the picture. */
async function lineAhead(page: Page): Promise<[number, number][]> {
  const path = stageOf(page, 'Reference').locator('path[data-ahead]');
  await expect(path).toHaveCount(1);
  return await path.evaluate((line) => {
    const [, , width = 1, height = 1] = (line.closest('svg')?.getAttribute('viewBox') ?? '')
      .split(' ')
      .map(Number);
    const numbers = (line.getAttribute('d') ?? '').match(/[\d.]+/g)?.map(Number) ?? [];
    return Array.from({ length: numbers.length / 2 }, (_, at): [number, number] => [
      (numbers[2 * at] ?? 0) / width,
      (numbers[2 * at + 1] ?? 0) / height,
    ]);
  });
}

/** Every outline as it is drawn on the reference. */
const linesOn = (page: Page) =>
  stageOf(page, 'Reference')
    .locator('svg path')
    .evaluateAll((paths) => paths.map((path) => path.getAttribute('d')).join());

async function hoverAt(page: Page, x: number, y: number): Promise<void> {
  const at = await placeOn(stageOf(page, 'Reference'), x, y);
  await page.mouse.move(at.x - 2, at.y);
  await page.mouse.move(at.x, at.y);
}

async function dragOver(page: Page, points: readonly (readonly [number, number])[]): Promise<void> {
  const places = await Promise.all(points.map(([x, y]) => placeOn(stageOf(page, 'Reference'), x, y)));
  const [first, ...others] = places;
  if (!first) return;
  await page.mouse.move(first.x, first.y);
  await page.mouse.down();
  for (const { x, y } of others) await page.mouse.move(x, y, { steps: 6 });
  await page.mouse.up();
}

const hand = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const inList = (page: Page, number: number, name: string) =>
  page.getByRole('button', { name: new RegExp(`^Plane ${number}, ${name}\\.`) });

test('planes are corrected by hand, and a second browser sees it', async ({ guest, server }) => {
  test.slow();
  const owner = await guest('Hedda');
  const board = await makeBoard(server, owner.who, 'By hand');
  const [reference, painting] = await Promise.all([
    sceneFile({ name: 'reference', bands: REFERENCE_BANDS }),
    sceneFile({ name: 'painting', bands: PAINTING_BANDS }),
  ]);
  await postPicture(server, owner.who, board.id, reference, { kind: 'reference', rights: 'mine' });
  const painted = await postPicture(server, owner.who, board.id, painting, { kind: 'painting' });
  const { token } = await server.json<{ token: string }>(
    owner.who,
    `/api/boards/${board.id}/invites`,
    'POST',
    { role: 'teacher', hours: 2 },
  );
  const teacher = await guest('Teodor', token);
  for (const { page } of [owner, teacher]) {
    await page.goto(`${server.url}/boards/${board.id}`);
    await expect(stageOf(page, 'Reference').locator('img').first()).toBeVisible();
    await page.getByRole('tab', { name: 'Planes' }).click();
  }
  const { page } = owner;
  const { page: other } = teacher;
  /** Waits until the planes' shares of the reference, as the server measured them, are as they should be. */
  const measured = (check: (shares: number[]) => void) =>
    expect(async () => {
      const response = await server.call(owner.who, `/api/boards/${board.id}/measures/${painted.id}`);
      expect(response.status).toBe(200);
      const { planes } = (await response.json()) as MeasureDocument;
      const shares = planes.map((plane) => plane.reference?.share ?? 0);
      // Whatever was done, nothing falls bare.
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 3);
      check(shares);
    }).toPass({ timeout: 60_000 });

  await test.step('a line follows the edge ahead of the hand, and Shift makes it straight', async () => {
    await page.getByRole('button', { name: 'Add Sky' }).click();
    await page.getByRole('button', { name: 'The whole picture' }).click();
    await page.getByRole('button', { name: 'Add Far hills' }).click();
    await clickPoints(page, stageOf(page, 'Reference'), [[0.02, HILLS]]);
    await expect(async () => {
      await hoverAt(page, 0.6, HILLS);
      const line = await lineAhead(page);
      expect(Math.max(...line.map(([, y]) => Math.abs(y - HILLS)))).toBeLessThan(0.01);
    }).toPass();
    // Off the edge the line keeps to it as long as it can; straight, it goes there at once.
    await expect(async () => {
      await hoverAt(page, 0.6, HILLS + 0.08);
      const line = await lineAhead(page);
      expect(line.some(([x, y]) => x > 0.3 && Math.abs(y - HILLS) < 0.01)).toBe(true);
    }).toPass();
    await page.keyboard.down('Shift');
    await hoverAt(page, 0.6, HILLS + 0.081);
    await expect.poll(() => lineAhead(page)).toHaveLength(2);
    await page.keyboard.up('Shift');
    await clickPoints(page, stageOf(page, 'Reference'), [
      [0.5, HILLS],
      [0.98, HILLS],
    ]);
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Add Foreground' }).click();
    await clickPoints(page, stageOf(page, 'Reference'), [
      [0.02, MIDDLE],
      [0.98, MIDDLE],
    ]);
    await page.keyboard.press('Enter');
    await expect(inList(other, 3, 'Foreground')).toBeVisible();
    await measured(([sky = 0, hills = 0, front = 0]) => {
      expect(sky).toBeCloseTo(HILLS, 2);
      expect(hills).toBeCloseTo(MIDDLE - HILLS, 2);
      expect(front).toBeCloseTo(1 - MIDDLE, 2);
    });
  });

  await test.step('patches join a plane and leave it again', async () => {
    await inList(page, 2, 'Far hills').click();
    const before = await linesOn(other);
    await hand(page, 'Add to it').click();
    await expect(async () => {
      await hoverAt(page, 0.5, HILLS - 0.02);
      await expect(stageOf(page, 'Reference').locator('path[class*="patch"]')).toHaveCount(1, {
        timeout: 1000,
      });
    }).toPass({ timeout: 30_000 });
    await dragOver(page, [
      [0.4, HILLS + 0.03],
      [0.4, HILLS - 0.06],
      [0.6, HILLS - 0.06],
      [0.6, HILLS + 0.03],
    ]);
    await expect.poll(() => linesOn(other)).not.toBe(before);
    let grown = 0;
    await measured(([, hills = 0, front = 0]) => {
      expect(hills).toBeGreaterThan(0.205);
      expect(front).toBeCloseTo(1 - MIDDLE, 2);
      grown = hills;
    });

    await hand(page, 'Take away').click();
    await dragOver(page, [
      [0.4, HILLS - 0.06],
      [0.6, HILLS - 0.06],
    ]);
    await measured(([, hills = 0]) => {
      expect(hills).toBeLessThan(grown - 0.003);
    });
  });

  await test.step('what cannot be is said, and nothing changes', async () => {
    const before = await linesOn(other);
    await hand(page, 'Add to it').click();
    await clickPoints(page, stageOf(page, 'Reference'), [[0.5, 0.9]]);
    await expect(page.getByText('That lies in the middle of another plane.')).toBeVisible();
    expect(await linesOn(other)).toBe(before);
  });

  await test.step('the cross paints by key', async () => {
    const before = await linesOn(other);
    await inList(page, 3, 'Foreground').click();
    const stage = stageOf(page, 'Reference');
    await stage.focus();
    // From the middle of the picture, where the foreground begins, a hair upwards: Shift takes small steps.
    for (let step = 0; step < 2; step++) await page.keyboard.press('Shift+ArrowUp');
    await page.keyboard.press(' ');
    await expect.poll(() => linesOn(other)).not.toBe(before);
    await page.keyboard.press('Control+z');
    await expect.poll(() => linesOn(other)).toBe(before);
  });

  await test.step('a plane is split by a line drawn in one go, and one step takes it back', async () => {
    await hand(page, 'Split it').click();
    await dragOver(page, [
      [0.03, FRONT],
      [0.5, FRONT],
      [0.97, FRONT],
    ]);
    await expect(inList(other, 4, 'Foreground, nearer part')).toBeVisible();
    await measured(([, , , part = 0]) => expect(part).toBeCloseTo(1 - FRONT, 2));
    await page.keyboard.press('Control+z');
    await expect(inList(other, 4, 'Foreground, nearer part')).toHaveCount(0);
    await page.keyboard.press('Control+Shift+z');
    await expect(inList(other, 4, 'Foreground, nearer part')).toBeVisible();
  });

  await test.step('two neighbours become one, and one step brings both back', async () => {
    await page.getByRole('button', { name: 'Join …' }).click();
    await page
      .getByRole('region', { name: 'Easel' })
      .getByRole('button', { name: 'Foreground, nearer part', exact: true })
      .click();
    await expect(inList(other, 4, 'Foreground, nearer part')).toHaveCount(0);
    await measured((shares) => {
      expect(shares).toHaveLength(3);
      expect(shares[2]).toBeCloseTo(1 - MIDDLE, 2);
    });
    await page.keyboard.press('Control+z');
    await expect(inList(other, 4, 'Foreground, nearer part')).toBeVisible();
  });
  expect(owner.troubles).toEqual([]);
  expect(teacher.troubles).toEqual([]);
});

test('a painter may draw on their painting but not change which planes there are', async ({
  guest,
  server,
}) => {
  const owner = await server.enter('Hedda');
  const board = await makeBoard(server, owner, 'Not for everyone');
  const { token } = await server.json<{ token: string }>(owner, `/api/boards/${board.id}/invites`, 'POST', {
    role: 'painter',
    hours: 2,
  });
  const { page, who } = await guest('Maren', token);
  const file = await sceneFile({ name: 'painting', bands: PAINTING_BANDS });
  await postPicture(server, who, board.id, file, { kind: 'painting' });
  const host = await guest('Hedda', undefined);
  await host.page.goto(`${server.url}/boards/${board.id}`);
  await host.page.getByRole('tab', { name: 'Planes' }).click();
  for (const name of ['Sky', 'Foreground']) {
    await host.page.getByRole('button', { name: `Add ${name}` }).click();
  }
  await page.goto(`${server.url}/boards/${board.id}`);
  await page.getByRole('tab', { name: 'Planes' }).click();
  await page
    .getByRole('button', { name: /^Outline/ })
    .first()
    .click();
  await inList(page, 2, 'Foreground').click();
  await clickPoints(page, stageOf(page, 'Painting'), [
    [0.02, FRONT],
    [0.98, FRONT],
  ]);
  await page.getByRole('button', { name: 'Finish' }).click();
  for (const name of ['Split it', 'Join …']) {
    await hand(page, 'Pull its line').click();
    await page.getByRole('button', { name }).click();
    await expect(page.getByText('Splitting and joining change the planes for everybody.')).toBeVisible();
  }
  await expect(hand(page, 'Pull its line')).toHaveAttribute('aria-pressed', 'true');
});
