/**
 * Planes in under a minute: from two files to planes on both pictures with few actions, by mouse and by keys alone; and
 * what is said where a picture has no planes to find.
 */
import type { Page } from '@playwright/test';
import sharp from 'sharp';
import { readOutlinesOf, readPaintingOutlines } from '#server/core/live/outlines.ts';
import { readPlanes } from '#server/core/live/planes.ts';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { joinRoom } from '#tests/helpers/joined-room.ts';
import { barriersOf } from './barriers.ts';
import { CountedHands } from './counted-hands.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, RIDGES, sceneFile } from './scenes.ts';
import { expect, makeBoard, postPicture, stageOf, test } from './story.ts';

const MOST_ACTIONS = 12;
const MOST_SECONDS = 60;

function bothPictures(): Promise<string[]> {
  return Promise.all([
    sceneFile({ name: 'reference', bands: REFERENCE_BANDS }),
    sceneFile({ name: 'painting', bands: PAINTING_BANDS }),
  ]);
}

/** Both pictures' outlines as everybody has them, by plane far to near: the height where each begins. */
async function ridgesOf(server: AServer, who: Entered, boardId: string) {
  const { pictures } = await server.json<{ pictures: { id: string; kind: string }[] }>(
    who,
    `/api/boards/${boardId}`,
  );
  const idOf = (kind: string) => pictures.find((picture) => picture.kind === kind)?.id ?? '';
  const setup = await joinRoom(server.url, who, boardId, 'setup');
  const painting = await joinRoom(server.url, who, boardId, `painting/${idOf('painting')}`);
  const planes = readPlanes(setup.doc);
  const on = [readOutlinesOf(setup.doc, idOf('reference')), readPaintingOutlines(painting.doc)];
  const [reference, copied] = on.map((outlines) =>
    planes.map(({ id }) => Math.min(...(outlines.get(id) ?? []).map(([, y]) => y))),
  );
  setup.leave();
  painting.leave();
  return { planes, reference, copied };
}

/** The scene's own bands, on both pictures: there are four, and their ridges are level. */
async function expectTheBands(server: AServer, who: Entered, boardId: string): Promise<void> {
  await expect(async () => {
    const { planes, reference = [], copied = [] } = await ridgesOf(server, who, boardId);
    expect(planes.map(({ kind }) => kind)[0]).toBe('sky');
    expect(planes).toHaveLength(4);
    for (const ridges of [reference, copied]) {
      for (const [at, ridge] of [0, ...RIDGES].entries()) expect(ridges[at]).toBeCloseTo(ridge, 1);
    }
  }).toPass({ timeout: 15_000 });
}

const taken = (page: Page) => page.getByText(/^Four planes on the reference, far to near\./);
const carried = (page: Page) => page.getByRole('button', { name: /^Plane 4, .* outlined on both/ });

interface Story {
  page: Page;
  server: AServer;
  who: Entered;
  hands: CountedHands;
  files: string[];
}

type Counted = Awaited<ReturnType<CountedHands['result']>>;

/**
 * The story within both limits. Since other work on the machine makes the page slow, and not the person, a go that took
 * too long is gone through again on a new board, twice at most; the actions must be few each time.
 */
async function withinTheLimits(
  story: Omit<Story, 'files' | 'hands'>,
  go: (story: Story) => Promise<Counted>,
) {
  const { page, server, who } = story;
  const files = await bothPictures();
  const hands = await CountedHands.on(page);
  let seconds = Number.POSITIVE_INFINITY;
  for (let round = 1; round <= 3 && seconds > MOST_SECONDS; round++) {
    const board = await makeBoard(server, who, `In under a minute, go ${round}`);
    const alive = comeToLife(page);
    await page.goto(`${server.url}/boards/${board.id}`);
    await expect(page.getByRole('heading', { name: 'Begin with a picture' })).toBeVisible();
    await alive;
    hands.begin();
    const counted = await go({ ...story, hands, files });
    await expectTheBands(server, who, board.id);
    console.log(`${test.info().title}: ${counted.actions} actions, ${counted.seconds.toFixed(1)} s`);
    expect(counted.actions).toBeLessThanOrEqual(MOST_ACTIONS);
    seconds = counted.seconds;
  }
  expect(seconds).toBeLessThanOrEqual(MOST_SECONDS);
}

/** For what waits on the server and on the workers of the page. */
const PATIENT = { timeout: 45_000 };

async function byMouse({ page, hands, files }: Story): Promise<Counted> {
  const choose = page.getByRole('main').getByRole('button', { name: 'Choose files' });
  await hands.chooseFiles(() => hands.click(choose), files);
  await hands.click(page.getByRole('dialog').getByLabel('I took it myself'));
  await hands.click(page.getByRole('dialog').getByRole('button', { name: 'Post all 2' }));
  await hands.click(page.getByRole('button', { name: 'Find the planes' }).first());
  await hands.click(page.getByRole('radio', { name: /^Four planes: / }));
  await hands.click(page.getByRole('button', { name: 'Take these four planes' }));
  await expect(taken(page)).toBeVisible(PATIENT);
  await hands.click(page.getByRole('button', { name: 'Carry the planes over' }));
  await hands.click(page.getByRole('button', { name: 'Take them' }));
  await expect(carried(page)).toBeVisible(PATIENT);
  return hands.result();
}

async function byKeys({ page, hands, files }: Story): Promise<Counted> {
  await hands.chooseFiles(() => hands.press('c'), files);
  const mine = page.getByRole('dialog').getByLabel('I took it myself');
  await expect(mine).toBeFocused(PATIENT);
  await hands.press('Space');
  await expect(mine).toBeChecked();
  await hands.press('Enter');
  await expect(stageOf(page, 'Reference')).toBeVisible(PATIENT);
  await expect(stageOf(page, 'Painting')).toBeVisible(PATIENT);
  await hands.press('f');
  await expect(page.getByRole('radio', { checked: true })).toBeFocused(PATIENT);
  await hands.press('3');
  await expect(page.getByRole('radio', { name: /^Three planes/ })).toBeFocused();
  await hands.press('ArrowRight');
  await expect(page.getByRole('radio', { name: /^Four planes/ })).toBeFocused();
  await hands.press('Enter');
  await expect(taken(page)).toBeVisible(PATIENT);
  await expect(page.getByRole('button', { name: 'Carry the planes over' })).toBeFocused();
  await hands.press('Enter');
  const take = page.getByRole('button', { name: 'Take them' });
  await expect(take).toBeFocused(PATIENT);
  await expect(take).toBeEnabled(PATIENT);
  await hands.press('Enter');
  await expect(carried(page)).toBeVisible(PATIENT);
  return hands.result();
}

for (const [way, go] of [
  ['by mouse', byMouse],
  ['by keys alone, each key counted', byKeys],
] as const) {
  test(`from two files to planes on both pictures ${way}`, async ({ guest, server }) => {
    test.setTimeout(300_000);
    const { page, who, troubles } = await guest('Ilse');
    await withinTheLimits({ page, server, who }, go);
    expect(troubles).toEqual([]);
  });
}

/** What is pressed is heard once the page has come to life, and with it its line to the others. */
async function comeToLife(page: Page): Promise<void> {
  await page.waitForEvent('websocket', { predicate: (socket) => socket.url().endsWith('/setup') });
}

test('a grouping is looked at on the picture, taken, seen by the others, and taken back', async ({
  guest,
  server,
}) => {
  const { page, who } = await guest('Hedda');
  const board = await makeBoard(server, who, 'Looked at first');
  const [path = ''] = await bothPictures();
  await postPicture(server, who, board.id, path, { kind: 'reference', rights: 'mine' });
  const { token } = await server.json<{ token: string }>(who, `/api/boards/${board.id}/invites`, 'POST', {
    role: 'peer',
    hours: 2,
  });
  const other = await guest('Oda', token);
  await other.page.goto(`${server.url}/boards/${board.id}`);
  await other.page.getByRole('tab', { name: 'Planes' }).click();
  await expect(
    other.page.getByText(/Whoever made the board, its teacher or the host chooses them/),
  ).toBeVisible();

  await page.goto(`${server.url}/boards/${board.id}`);
  await page.getByRole('tab', { name: 'Planes' }).click();
  const three = page.getByRole('radio', { name: /^Three planes/ });
  await three.click();
  await expect(page.getByText(/^1 sky/)).toBeVisible();
  await expect(other.page.getByText('Hedda is choosing planes just now.')).toBeVisible();
  const numbers = stageOf(page, 'Reference').getByText(/^[1-7]$/);
  await expect(numbers).toHaveCount(3);
  await page.getByRole('radio', { name: /^Four planes/ }).hover();
  await expect(numbers).toHaveCount(4);
  expect(await barriersOf(page), 'groupings').toEqual([]);
  await expect(stageOf(other.page, 'Reference').getByText(/^[1-7]$/)).toHaveCount(0);

  await page.getByRole('button', { name: 'Take these three planes' }).click();
  await expect(other.page.getByRole('button', { name: /^Plane 3, / })).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await expect(other.page.getByRole('button', { name: /^Plane 3, / })).toHaveCount(0);
});

test('planes that are there keep their names, or give way, as one chooses', async ({ guest, server }) => {
  const { page, who } = await guest('Tilda');
  const board = await makeBoard(server, who, 'Names kept');
  const [path = ''] = await bothPictures();
  await postPicture(server, who, board.id, path, { kind: 'reference', rights: 'mine' });
  await page.goto(`${server.url}/boards/${board.id}`);
  await page.getByRole('tab', { name: 'Planes' }).click();
  await page.getByRole('radio', { name: /^Four planes/ }).click();
  await page.getByRole('button', { name: 'Take these four planes' }).click();
  await page.getByRole('button', { name: /^Plane 1, / }).click();
  await page.getByLabel('Name', { exact: true }).fill('Evening sky');
  await page.getByLabel('Name', { exact: true }).press('Enter');
  const sky = page.getByRole('button', { name: /^Plane 1, Evening sky/ });
  await expect(sky).toBeVisible();

  await page.getByRole('button', { name: 'Find the planes again' }).click();
  await page.getByRole('radio', { name: /^Four planes/ }).click();
  await expect(page.getByText(/Names, kinds and everything said of them stay/)).toBeVisible();
  await page.getByRole('button', { name: 'Take these four planes' }).click();
  await expect(page.getByText('New outlines lie on the reference.')).toBeVisible();
  await expect(sky).toBeVisible();

  await page.getByRole('button', { name: 'Find the planes again' }).click();
  await page.getByRole('radio', { name: /^Two planes/ }).click();
  await expect(page.getByText(/The four planes of now go/)).toBeVisible();
  await page.getByRole('button', { name: 'Take these two planes' }).click();
  await expect(page.getByRole('button', { name: /^Plane 2, / })).toBeVisible();
  await expect(page.getByRole('button', { name: /^Plane 3, / })).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await expect(sky).toBeVisible();
  await expect(page.getByRole('button', { name: /^Plane 4, .* outlined/ })).toBeVisible();
});

test('a picture without planes to find says why, and leaves the hand its own way', async ({
  guest,
  server,
}) => {
  const { page, who } = await guest('Ottilie');
  const board = await makeBoard(server, who, 'One even grey');
  const path = test.info().outputPath('grey.png');
  await sharp({ create: { width: 1200, height: 900, channels: 3, background: '#777777' } }).toFile(path);
  await postPicture(server, who, board.id, path, { kind: 'reference', rights: 'mine' });
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(`${server.url}/boards/${board.id}`);
  await page.getByRole('button', { name: 'Find the planes' }).click();
  await expect(
    page.getByText(/the picture is one even tone, its lightness varies by 0\.0 L\* only;/),
  ).toBeVisible();
  await expect(page.getByText('You can still draw them by hand.')).toBeVisible();
  await page.getByRole('button', { name: 'Add Sky' }).click();
  await expect(page.getByRole('button', { name: /^Plane 1, Sky/ })).toBeVisible();
});
