/**
 * The far ridge that will not go back: two files, the phone's photo put right, planes found and carried over, what it is
 * about, the card of the far hills taken on, and a later photo that shows how far it went; by
 * mouse, by touch and by keyboard alone.
 */
import type { Page } from '@playwright/test';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import type { AServer } from '#tests/helpers/a-server.ts';
import { phoneShot } from '../phone-shot.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, sceneFile } from '../scenes.ts';
import { aGuest, expect, type Guest, makeBoard, measuresWhenReady, stageOf, test } from '../story.ts';
import { Hands } from './hands.ts';
import { BY_KEYS, seen, TOUCH_AND_MOUSE } from './ways.ts';

/** How much lighter the far hills are painted a week later, L*: the reference asks for twenty. */
const LIFTED = 14;
/** For what waits on the server and on the workers of the page. */
const PATIENT = { timeout: 60_000 };

interface Files {
  reference: string;
  first: Awaited<ReturnType<typeof phoneShot>>;
  later: Awaited<ReturnType<typeof phoneShot>>;
}

async function theFiles(): Promise<Files> {
  const repainted = PAINTING_BANDS.map((band, at) =>
    at === 1 ? ([band[0] + LIFTED, band[1], band[2] - 8] as const) : band,
  );
  const shown = { kelvin: 5200, turnDeg: 5, tiltDeg: 4, cards: 1 };
  const [reference, first, later] = await Promise.all([
    sceneFile({ name: 'far-ridge-reference', bands: REFERENCE_BANDS }),
    phoneShot(PAINTING_BANDS, { ...shown, name: 'first evening', seed: 11 }),
    phoneShot(repainted, { ...shown, name: 'a week later', turnDeg: 3, seed: 12 }),
  ]);
  return { reference, first, later };
}

const button = (page: Page, name: string | RegExp) => seen(page.getByRole('button', { name }));

/** The corners are found and the card is tapped: the photo is graded and its colour is spoken of. */
async function putRight(hands: Hands, { shot }: Files['first']): Promise<void> {
  const { page } = hands;
  await hands.letter('q', button(page, /^Square up/));
  await hands.press(button(page, 'Find the corners'));
  await expect(page.getByRole('button', { name: /^Top left corner/ })).toBeVisible(PATIENT);
  await hands.press(button(page, 'Mark a grey or white card'));
  const [x0, y0, x1, y1] = shot.cards[0]?.box ?? [0, 0, 0, 0];
  await hands.point(stageOf(page, 'Painting'), (x0 + x1) / 2, (y0 + y1) / 2, 'exact');
  await expect(page.getByLabel('Card 1 is')).toHaveValue('grey');
}

async function findPlanes(hands: Hands): Promise<void> {
  const { page } = hands;
  await hands.letter('f', page.getByRole('tab', { name: 'Planes' }));
  await hands.press(page.getByRole('radio', { name: /^Four planes/ }));
  await hands.press(button(page, 'Take these four planes'));
  await hands.press(button(page, 'Carry the planes over'), PATIENT.timeout);
  const take = button(page, 'Take them');
  await expect(take).toBeEnabled(PATIENT);
  await hands.press(take);
  await expect(page.getByRole('button', { name: /^Plane 4, .* outlined on both/ })).toBeVisible(PATIENT);
}

/** What it is about, then the card of the far hills taken on. */
async function takeCardOn(hands: Hands): Promise<void> {
  const { page } = hands;
  await hands.press(page.getByRole('tab', { name: 'Talk' }));
  await hands.write(page.getByLabel('What it is about'), 'Quiet and hazy, the eye on the barn.');
  const card = button(page, /^Far .*lift/i);
  await hands.press(card, PATIENT.timeout);
  const answer = page.getByRole('group', { name: /^Answer to far/i });
  await hands.press(answer.getByRole('button', { name: 'I’ll do this' }));
  await expect(page.getByText('You will do this.').first()).toBeVisible();
}

async function darksOfHills(server: AServer, { who }: Guest, boardId: string, pictureId: string) {
  let figures: MeasureDocument | null = null;
  await expect(async () => {
    figures = (await measuresWhenReady(server, who, boardId, pictureId)) as unknown as MeasureDocument; // its contract
    expect(figures.capture.grade).toBe('B');
    expect(figures.planes).toHaveLength(4);
  }).toPass(PATIENT);
  const hills = (figures as MeasureDocument | null)?.planes[1];
  return { dark: hills?.painting.dark ?? 0, reference: hills?.reference?.dark ?? 0 };
}

async function paintingsOf(server: AServer, { who }: Guest, boardId: string): Promise<string[]> {
  const { pictures } = await server.json<{ pictures: { id: string; kind: string }[] }>(
    who,
    `/api/boards/${boardId}`,
  );
  return pictures.filter(({ kind }) => kind === 'painting').map(({ id }) => id);
}

async function play(hands: Hands, server: AServer, guest: Guest, files: Files): Promise<void> {
  const { page } = hands;
  const { id: boardId } = await makeBoard(server, guest.who, 'The valley before noon');
  const alive = page.waitForEvent('websocket', { predicate: (socket) => socket.url().endsWith('/setup') });
  await page.goto(`${server.url}/boards/${boardId}`);
  await alive;

  const main = page.getByRole('main').getByRole('button', { name: 'Choose files' });
  await hands.chooseFiles(() => hands.letter('c', main), [files.reference, files.first.path]);
  await hands.press(page.getByRole('dialog').getByLabel('I took it myself'));
  await hands.press(page.getByRole('dialog').getByRole('button', { name: 'Post all 2' }));
  await expect(stageOf(page, 'Painting').locator('img').first()).toBeVisible(PATIENT);
  hands.part('to two pictures');
  await putRight(hands, files.first);
  hands.part('to the photo put right');
  await findPlanes(hands);
  hands.part('to planes on both');
  await takeCardOn(hands);
  hands.part('to the card taken on');

  const [first = ''] = await paintingsOf(server, guest, boardId);
  const before = await darksOfHills(server, guest, boardId, first);
  await hands.chooseFiles(() => hands.letter('c', button(page, 'Post pictures')), [files.later.path]);
  const follows = page.getByRole('dialog').getByLabel('Is it a later state of a painting here?');
  const [, state] = await follows.locator('option').all();
  await hands.choose(follows, (await state?.getAttribute('value')) ?? '');
  await hands.press(page.getByRole('dialog').getByRole('button', { name: 'Post it' }));
  await expect.poll(async () => (await paintingsOf(server, guest, boardId)).length, PATIENT).toBe(2);
  await expect(stageOf(page, 'Painting').locator('img').first()).toBeVisible(PATIENT);
  await putRight(hands, files.later);
  await hands.press(page.getByRole('tab', { name: 'Talk' }));
  const went = page
    .getByRole('region', { name: 'Since the last state' })
    .getByRole('listitem')
    .filter({ hasText: /far/i })
    .first();
  await expect(went.getByText(/^(about half of it|all of it)/).first()).toBeVisible({
    timeout: 90_000,
  });
  hands.part('to how far it went');

  const second = (await paintingsOf(server, guest, boardId)).find((id) => id !== first) ?? '';
  const after = await darksOfHills(server, guest, boardId, second);
  // At least half of what was missing, as the figures have it.
  expect(after.dark - before.dark).toBeGreaterThanOrEqual((before.reference - before.dark) / 2);
}

/** By keyboard each of the two cards is up to four arrows held, and leaves of a row are walked past. */
const MOST_STEPS = { mouse: 34, touch: 34, keys: 33 } as const;

for (const { name, way, viewport } of [...TOUCH_AND_MOUSE, BY_KEYS]) {
  test(`the far ridge goes back ${name}`, async ({ browser, server }) => {
    // By keyboard each way from part to part is Tabs, several hundred of them.
    test.setTimeout(way === 'keys' ? 480_000 : 300_000);
    const files = await theFiles();
    const context = await browser.newContext({ viewport, hasTouch: way === 'touch' });
    const guest = await aGuest(context, server, 'Ilse');
    const hands = new Hands(guest.page, way);
    await play(hands, server, guest, files);
    hands.told(test.info().title, MOST_STEPS[way]);
    expect(guest.troubles).toEqual([]);
    await context.close();
  });
}
