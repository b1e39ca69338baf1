/** The planned ladder in browsers: handles by mouse and key, air, taking a plan, the target seen by somebody else, weight. */
import type { Page } from '@playwright/test';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { putReferenceOutline } from '#server/core/live/outlines.ts';
import { addPlane } from '#server/core/live/planes.ts';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { writeInto } from '#tests/helpers/joined-room.ts';
import { barriersOf } from './barriers.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, RIDGES, sceneFile } from './scenes.ts';
import { aGuest, expect, makeBoard, postPicture, test } from './story.ts';

test.describe.configure({ timeout: 240_000 });

const PLANNED = { timeout: 90_000 };
const NAMES = ['sky', 'far hills', 'wood', 'meadow'];

/** A board with a photograph whose four planes are outlined, and a painting of it whose far hills are too dark. */
async function aBoard(server: AServer, who: Entered, title: string) {
  const { id: boardId } = await makeBoard(server, who, title);
  const photo = await sceneFile({ name: 'plan-reference', bands: REFERENCE_BANDS });
  const painted = await sceneFile({ name: 'plan-painting', bands: PAINTING_BANDS });
  const reference = await postPicture(server, who, boardId, photo, { kind: 'reference', rights: 'mine' });
  const painting = await postPicture(server, who, boardId, painted, { kind: 'painting' });
  await writeInto(server.url, who, boardId, 'setup', (doc) => {
    NAMES.forEach((name, at) => {
      const top = at === 0 ? 0 : (RIDGES[at - 1] as number);
      addPlane(doc, { id: `plane-${at}`, name, kind: at === 0 ? 'sky' : 'land', tilt: null });
      putReferenceOutline(doc, reference.id, `plane-${at}`, [
        [0, top],
        [1, top],
        [1, 1],
        [0, 1],
      ]);
    });
  });
  return { boardId, paintingId: painting.id };
}

const handle = (page: Page, name: string) => page.getByRole('slider', { name, exact: true });

async function valueNow(page: Page, name: string): Promise<number> {
  return Number(await handle(page, name).getAttribute('aria-valuenow'));
}

async function drag(page: Page, name: string, byPx: number): Promise<void> {
  await handle(page, name).scrollIntoViewIfNeeded();
  const box = await handle(page, name).boundingBox();
  if (!box) throw new Error(`There is no ${name} on the screen.`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y + byPx / 2);
  await page.mouse.move(x, y + byPx);
  await page.mouse.up();
}

test('a handle is dragged, the plan is taken, the gaps are against it, and somebody else sees it', async ({
  guest,
  server,
  browser,
}) => {
  const { page, who, troubles } = await guest('Ylva');
  const { boardId, paintingId } = await aBoard(server, who, 'Hills in the evening');
  const measures = async (target: MeasureDocument['target']) => {
    let found: MeasureDocument | null = null;
    await expect(async () => {
      const response = await server.call(who, `/api/boards/${boardId}/measures/${paintingId}`);
      expect(response.status).toBe(200);
      found = (await response.json()) as MeasureDocument;
      expect(found.target).toBe(target);
    }).toPass(PLANNED);
    return found as unknown as MeasureDocument;
  };
  const before = await measures('reference');

  await page.goto(`${server.url}/boards/${boardId}/plan`);
  await expect(handle(page, 'Middle of far hills')).toBeVisible(PLANNED);
  const proposed = await valueNow(page, 'Middle of far hills');
  await drag(page, 'Middle of far hills', 40);
  await expect.poll(() => valueNow(page, 'Middle of far hills')).toBeLessThan(proposed - 1);
  await page.getByRole('button', { name: 'Take this as the plan' }).click();
  await expect(page.getByText('This is the plan that was taken.')).toBeVisible();
  const planned = await valueNow(page, 'Middle of far hills');

  const after = await measures('plan');
  expect(after.planes[1]?.planned?.mid).toBeCloseTo(planned * 10, 0);
  const gap = (document: MeasureDocument) => document.planes[1]?.gap?.mid ?? Number.NaN;
  expect(gap(after)).toBeCloseTo((after.planes[1]?.painting.mid ?? Number.NaN) - planned * 10, 0);
  expect(Math.abs(gap(after) - gap(before))).toBeGreaterThan(5);

  const invited = await server.json<{ token: string }>(who, `/api/boards/${boardId}/invites`, 'POST', {
    role: 'painter',
    hours: 1,
  });
  const other = await aGuest(await browser.newContext(), server, 'Torge', invited.token);
  await other.page.goto(`${server.url}/boards/${boardId}`);
  const ladder = other.page.getByRole('region', { name: 'Ladder', exact: true });
  await expect(ladder.getByText('The painting against the plan.')).toBeVisible(PLANNED);
  await other.page.goto(`${server.url}/boards/${boardId}/plan`);
  await expect(handle(other.page, 'Middle of far hills')).toHaveAttribute(
    'aria-valuetext',
    (await handle(page, 'Middle of far hills').getAttribute('aria-valuetext')) ?? '',
    PLANNED,
  );
  await expect(other.page.getByRole('button', { name: 'Take this as the plan' })).toHaveCount(0);

  // What is moved by who may write it moves on the other's screen.
  await handle(page, 'Lights of meadow').focus();
  const lights = await valueNow(other.page, 'Lights of meadow');
  await page.keyboard.press('PageUp');
  await expect.poll(() => valueNow(other.page, 'Lights of meadow')).toBeGreaterThan(lights + 0.3);
  await page.getByRole('button', { name: 'Take this as the plan' }).click();
  await expect(page.getByText('This is the plan that was taken.')).toBeVisible();

  // The older one is taken again, then the photograph counts, then the plan.
  await page.getByRole('tab', { name: 'Ladder' }).click();
  await page.getByRole('button', { name: /^Take it again/ }).click();
  await expect.poll(() => valueNow(page, 'Lights of meadow')).toBeCloseTo(lights, 1);
  const held = page.getByRole('group', { name: 'Paintings are held against' });
  await held.getByRole('button', { name: 'the photograph' }).click();
  expect(gap(await measures('reference'))).toBeCloseTo(gap(before), 3);
  await held.getByRole('button', { name: 'the plan' }).click();
  expect((await measures('plan')).planes[1]?.planned?.mid).toBeCloseTo(planned * 10, 0);
  await other.context.close();
  expect(troubles).toEqual([]);
});

test('by keys alone: a handle, its undoing, an air picked from the picture; what does not recede is said at once', async ({
  guest,
  server,
}) => {
  const { page, who } = await guest('Signe');
  const { boardId } = await aBoard(server, who, 'By keys');
  await page.goto(`${server.url}/boards/${boardId}/plan`);
  await expect(handle(page, 'Darks of wood')).toBeVisible(PLANNED);
  const darks = await valueNow(page, 'Darks of wood');
  await handle(page, 'Darks of wood').focus();
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => valueNow(page, 'Darks of wood')).toBeCloseTo(darks - 0.1, 1);
  await page.getByRole('button', { name: 'Undo' }).press('Enter');
  await expect.poll(() => valueNow(page, 'Darks of wood')).toBeCloseTo(darks, 1);

  // A far plane darker than the near one, on purpose: said in a sentence, and kept.
  await handle(page, 'Darks of far hills').focus();
  for (let press = 0; press < 9; press++) await page.keyboard.press('PageDown');
  await expect(
    page.getByText(/The darks of the far hills are .* darker than those of the wood .* Kept as you set it/),
  ).toBeVisible();
  await page.keyboard.press('Delete');
  await expect(page.getByText(/Kept as you set it/)).toHaveCount(0);

  await page.getByRole('tab', { name: 'Frames' }).focus();
  await page.keyboard.press('ArrowLeft');
  await expect(page.getByRole('tab', { name: 'Ladder' })).toHaveAttribute('aria-selected', 'true');
  await page.getByRole('button', { name: 'Red-violet' }).press('Enter');
  await expect(page.getByRole('button', { name: 'Red-violet' })).toHaveAttribute('aria-pressed', 'true');
  await page.getByRole('button', { name: 'Pick it from the picture' }).press('Enter');
  await expect(page.getByRole('button', { name: 'Where the colour of the air is taken' })).toBeFocused();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Picked' })).toHaveAttribute('aria-pressed', 'true');
});

test('figures that are out of date cannot be taken: what is taken is what was asked for', async ({
  guest,
  server,
}) => {
  const { page, who } = await guest('Aslaug');
  const { boardId } = await aBoard(server, who, 'A slow worker');
  await page.goto(`${server.url}/boards/${boardId}/plan`);
  await page.getByRole('tab', { name: 'Ladder' }).click();
  await expect(handle(page, 'Darks of wood')).toBeVisible(PLANNED);
  const take = page.getByRole('button', { name: 'Take this as the plan' });
  await expect(take).toBeEnabled();
  // From here on the worker is asked late, as on a machine with much else to do.
  await page.evaluate(() => {
    const post = Worker.prototype.postMessage;
    Worker.prototype.postMessage = function (message: unknown, over?: unknown) {
      setTimeout(() => post.call(this, message, over as StructuredSerializeOptions), 1500);
    };
  });
  await page.getByRole('button', { name: 'Red-violet' }).click();
  await expect(take).toBeDisabled();
  await take.click();
  await expect(page.getByText('This is the plan that was taken.')).toBeVisible();
});

test('a photograph without outlined planes says what to do; weight is told all the same', async ({
  guest,
  server,
}) => {
  const { page, who } = await guest('Orm');
  const { id: boardId } = await makeBoard(server, who, 'Nothing outlined');
  const photo = await sceneFile({ name: 'plan-reference', bands: REFERENCE_BANDS });
  await postPicture(server, who, boardId, photo, { kind: 'reference', rights: 'mine' });
  await page.goto(`${server.url}/boards/${boardId}/plan`);
  await expect(page.getByText(/No plane is outlined on this photograph yet/).first()).toBeVisible();
  await page.getByRole('tab', { name: 'Weight' }).click();
  await expect(page.getByRole('img', { name: /^The beam/ })).toBeVisible(PLANNED);
  await expect(page.getByText('The sides are in balance.').first()).toBeVisible();
});

for (const width of [1440, 390]) {
  test(`nobody is kept out of ladder and weight at ${width} px, and nothing runs out of the window`, async ({
    guest,
    server,
  }) => {
    const { page, who } = await guest('Aud');
    const { boardId } = await aBoard(server, who, 'For everybody');
    await page.setViewportSize({ width, height: 900 });
    await page.goto(`${server.url}/boards/${boardId}/plan`);
    await expect(handle(page, 'Darks of wood')).toBeAttached(PLANNED);
    for (const part of ['Ladder', 'Weight']) {
      await page.getByRole('tab', { name: part }).click();
      if (part === 'Weight') {
        await expect(page.getByRole('img', { name: /^The beam/ })).toBeVisible(PLANNED);
        await page
          .getByRole('button', { name: /^Look at/ })
          .first()
          .click();
        // A level line has no height, so it counts as hidden; that it is drawn is what matters.
        await expect(page.locator('svg [data-kind]')).toBeAttached();
      }
      expect(await barriersOf(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
  });
}
