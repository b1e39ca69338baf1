/**
 * Looking before numbers: values with cuts by keyboard, two patches, a guess, the check of the screen. Flat bands of known
 * L* are the answer from outside: what is shown must be what was painted.
 */
import type { Page } from '@playwright/test';
import { barriersOf } from './barriers.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, RIDGES, sceneFile } from './scenes.ts';
import { expect, type Guest, makeBoard, placeOn, postPicture, stageOf, test } from './story.ts';

async function noBarriers(page: Page, where: string): Promise<void> {
  expect(await barriersOf(page), where).toEqual([]);
}

/** A press on the picture, in 0..1 of it. */
async function tap(page: Page, side: 'Reference' | 'Painting', x: number, y: number): Promise<void> {
  const at = await placeOn(stageOf(page, side), x, y);
  await page.mouse.click(at.x, at.y);
}

/** Grey of the value map at a point of it, 0..255. */
function greyAt(page: Page, side: 'Reference' | 'Painting', x: number, y: number): Promise<number> {
  return stageOf(page, side)
    .locator('canvas[data-drawn]')
    .evaluate(
      (element, [px, py]) => {
        const canvas = element as HTMLCanvasElement; // the locator says so
        const at = canvas.getContext('2d')?.getImageData(px * canvas.width, py * canvas.height, 1, 1);
        return at?.data[0] ?? -1;
      },
      [x, y] as const,
    );
}

let one: Guest;
test.beforeEach(async ({ guest, server }) => {
  one = await guest('Runa');
  const board = await makeBoard(server, one.who, 'Looking first');
  await postPicture(
    server,
    one.who,
    board.id,
    await sceneFile({ name: 'looking-reference', bands: REFERENCE_BANDS }),
    {
      kind: 'reference',
      rights: 'mine',
    },
  );
  await postPicture(
    server,
    one.who,
    board.id,
    await sceneFile({ name: 'looking-painting', bands: PAINTING_BANDS }),
    {
      kind: 'painting',
    },
  );
  await one.page.goto(`${server.url}/boards/${board.id}`);
  await expect(stageOf(one.page, 'Painting').locator('img').first()).toBeVisible();
});

test('values are cut, moved by keys, and shared out in per cent', async () => {
  const { page } = one;
  await page.keyboard.press('v');
  const reference = page.getByRole('region', { name: 'Reference' });
  const shares = reference.getByRole('list', { name: 'Reference, dark to light' }).getByRole('listitem');
  // Bands of L* 86, 66, 42, 52: the two darkest, half of the picture, join first.
  await expect(shares).toHaveText([/^50% dark/, /^20% middle/, /^30% light/]);
  await noBarriers(page, 'values');

  await page.keyboard.press('2');
  await expect(shares).toHaveCount(2);
  await page.keyboard.press('4');
  await expect(shares).toHaveText([/^2[12]%/, /^2[89]%/, /^20%/, /^30%/]);
  await expect(async () => {
    expect(await greyAt(page, 'Reference', 0.5, 0.1)).toBeGreaterThan(
      await greyAt(page, 'Reference', 0.5, 0.4),
    );
  }).toPass();

  // The cut between half-dark and half-light is pulled up past the far hills: they turn half-dark.
  const cut = reference.getByRole('slider', { name: 'Reference: cut between half-dark and half-light' });
  await cut.focus();
  for (let press = 0; press < 3; press++) await page.keyboard.press('PageUp');
  await expect(shares).toHaveText([/^2[12]%/, /^(48|49|50)%/, /^[01]%/, /^30%/]);
  await expect(async () => {
    expect(await greyAt(page, 'Reference', 0.5, 0.4)).toBe(await greyAt(page, 'Reference', 0.5, 0.9));
  }).toPass();
  await page.getByRole('button', { name: 'Cut afresh' }).click();
  await expect(shares).toHaveText([/^2[12]%/, /^2[89]%/, /^20%/, /^30%/]);

  // The painting's far hills are two steps darker: cut alike, they leave the reference's middle.
  await page.keyboard.press('3');
  await page.getByRole('button', { name: 'Both at the same' }).click();
  await expect(page.getByRole('slider')).toHaveCount(2);
  const painted = page.getByRole('list', { name: 'Painting, dark to light' }).getByRole('listitem');
  await expect(painted).toHaveText([/^70% dark/, /^[01]% middle/, /^30% light/]);
  await page.keyboard.press('v');
  await expect(page.locator('canvas[data-drawn]')).toHaveCount(0);
  await expect(page.getByRole('heading', { name: 'Ladder' })).toBeVisible();
});

test('two patches stand side by side, in words first', async () => {
  const { page } = one;
  await page.keyboard.press('p');
  await tap(page, 'Reference', 0.3, 0.4);
  await expect(page.getByText('value 6.6, greyed, cool')).toBeVisible();
  await tap(page, 'Reference', 0.3, 0.6);
  await expect(page.getByText(/^B is two steps and a half darker than A, warmer, stronger\.$/)).toBeVisible();
  await expect(page.getByText('−2.4 steps')).toBeVisible();
  await noBarriers(page, 'patches');

  // The second is taken anew, on the painting, whose photo has no card: order only, no figure.
  await tap(page, 'Painting', 0.3, 0.4);
  await expect(page.getByText('B is darker than A.')).toBeVisible();
  await expect(page.getByText('Its photo has no grey card in it', { exact: false })).toBeVisible();
  await expect(page.getByText('steps', { exact: true })).toHaveCount(0);

  // By keys: the cross, then space.
  await page.getByRole('button', { name: 'Start again' }).click();
  await stageOf(page, 'Reference').focus();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press(' ');
  await expect(page.getByText(/^A Reference/)).toBeVisible();
});

test('a value is guessed before it is shown, and kept for oneself', async () => {
  const { page } = one;
  const sent: string[] = [];
  page.on('request', (request) => {
    // How far one looked is told to the server, and nothing of a guess with it.
    const body = request.postData() ?? '';
    if (request.url().endsWith('/since') && !/guess|4\.0|4\.6/.test(body)) return;
    if (request.method() !== 'GET') sent.push(`${request.method()} ${request.url()} ${body}`);
  });
  await page.keyboard.press('u');
  await expect(page.getByRole('heading', { name: 'Ladder' })).toBeHidden();
  const guessOne = async (presses: number) => {
    await tap(page, 'Painting', 0.5, (RIDGES[0] + RIDGES[1]) / 2);
    const slider = page.getByRole('slider', { name: 'Your guess of its value, 0 black to 10 white' });
    await slider.focus();
    for (let press = 0; press < presses; press++) await page.keyboard.press('ArrowLeft');
    await page.getByRole('button', { name: 'Show it' }).click();
  };
  // The far hills of the painting are L* 46; two and a half steps of the key below 5.0 make 4.0.
  await guessOne(2);
  await expect(page.getByText('You said 4.0, it is 4.6: seen about half a step too dark.')).toBeVisible();
  await noBarriers(page, 'guess');
  for (let more = 0; more < 3; more++) {
    await page.getByRole('button', { name: 'Another one' }).click();
    await guessOne(2);
  }
  await expect(page.getByText('You tend to see middles about half a step too dark.')).toBeVisible();
  await expect(page.getByText('Kept in this browser only', { exact: false })).toBeVisible();
  expect(sent).toEqual([]);

  await page.reload();
  await expect(async () => {
    await page.keyboard.press('u');
    await expect(page.getByRole('heading', { name: 'Guess first' })).toBeVisible({ timeout: 1000 });
  }).toPass();
  await expect(page.getByText('4 guesses so far.', { exact: false })).toBeVisible();
  await page.getByRole('button', { name: 'Forget my guesses' }).click();
  await expect(page.getByText('After a few guesses', { exact: false })).toBeVisible();
  expect(await page.evaluate(() => localStorage.getItem('veilstep-guesses'))).toBeNull();
});

test('ways of looking: one word opens them, one key turns each, the screen can be checked', async () => {
  const { page } = one;
  const image = stageOf(page, 'Reference').locator('img').first();
  await page.getByRole('button', { name: 'Ways of looking' }).click();
  const ways = page.getByRole('region', { name: 'Ways of looking' });
  await expect(ways).toBeVisible();
  await noBarriers(page, 'ways of looking');
  const whole = await image.boundingBox();
  await page.keyboard.press('v');
  await page.keyboard.press('p');
  expect((await image.boundingBox())?.y, 'nothing jumps from one to the next').toBeCloseTo(whole?.y ?? 0, 0);
  await page.keyboard.press('v');
  await page.keyboard.press('w');

  await page.keyboard.press('s');
  await expect(page.locator('canvas[data-drawn]')).toHaveCount(2);
  await page.getByRole('slider', { name: 'How far the eyes are closed' }).press('Home');
  await expect(ways.getByText('a little')).toBeVisible();
  await page.keyboard.press('s');
  await expect(page.locator('canvas[data-drawn]')).toHaveCount(0);
  await page.keyboard.press('9');
  await expect(page.getByRole('list', { name: 'Nine steps of grey, 9 the lightest' })).toHaveCount(2);
  await page.keyboard.press('9');
  await page.keyboard.press('h');
  await expect.poll(async () => (await image.boundingBox())?.width).toBeCloseTo((whole?.width ?? 0) / 2, 0);
  await page.keyboard.press('h');
  await page.keyboard.press('r');
  await expect(page.getByRole('button', { name: 'Ways of looking: Mirrored' })).toBeVisible();
  await page.keyboard.press('r');

  await page.getByRole('button', { name: /^Check this screen/ }).click();
  const check = page.getByRole('dialog');
  await noBarriers(page, 'screen check');
  // The square that is apart is found as an eye would: by its colour.
  for (const end of ['The two darkest greys', 'The two lightest greys']) {
    const squares = check.getByRole('group', { name: end }).getByRole('button', { name: /square$/ });
    const colours = await squares.evaluateAll((all) =>
      all.map((square) => getComputedStyle(square).backgroundColor),
    );
    await squares
      .nth(colours.findIndex((colour) => colours.filter((other) => other === colour).length === 1))
      .click();
  }
  await expect(check.getByText('This screen tells both ends apart.', { exact: false })).toBeVisible();
  await check.getByRole('button', { name: 'Done' }).click();
  await expect(ways.getByText('both ends are told apart', { exact: false })).toBeVisible();
  await page.reload();
  // Keys are heard once the page has come to life.
  await expect(async () => {
    if (!(await ways.isVisible())) await page.keyboard.press('w');
    await expect(ways).toBeVisible({ timeout: 1000 });
  }).toPass();
  await expect(ways.getByText('both ends are told apart', { exact: false })).toBeVisible();
  expect(one.troubles).toEqual([]);
});
