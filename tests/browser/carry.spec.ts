/**
 * Planes carried from the reference to a painting of it: one click and one more by mouse, the same by keys; a second
 * browser sees it happen and then sees the result; undo brings back what was there.
 */
import type { Page } from '@playwright/test';
import type { Outline } from '#server/core/contract/setup.ts';
import { putReferenceOutline, readPaintingOutlines } from '#server/core/live/outlines.ts';
import { addPlane } from '#server/core/live/planes.ts';
import type { AServer } from '#tests/helpers/a-server.ts';
import { joinRoom, writeInto } from '#tests/helpers/joined-room.ts';
import { REFERENCE_BANDS, RIDGES, sceneFile } from './scenes.ts';
import { expect, type Guest, makeBoard, placeOn, postPicture, stageOf, test } from './story.ts';

const NAMES = ['Sky', 'Far hills', 'Middle ground', 'Foreground'];
/** The painting shows the reference from here on down, and a little more: everything lies higher. */
const HIGHER = 0.12;
/** How near a ridge must come to where it truly is, 0..1 of the painting. */
const NEAR = 0.02;

/** The reference's bands moved up: what a painter who left out some sky would have painted. */
async function paintingFile(): Promise<string> {
  return sceneFile({
    name: 'carry-painting',
    bands: REFERENCE_BANDS,
    ridges: RIDGES.map((ridge) => ridge - HIGHER),
  });
}

const below = (ridge: number): Outline => [
  [0, ridge],
  [0.5, ridge],
  [1, ridge],
  [1, 1],
  [0, 1],
];

/** A board with planes on its reference and none on its painting. */
async function carryBoard(server: AServer, who: Guest['who'], title: string) {
  const board = await makeBoard(server, who, title);
  const file = await sceneFile({ name: 'carry-reference', bands: REFERENCE_BANDS });
  const reference = await postPicture(server, who, board.id, file, { kind: 'reference', rights: 'mine' });
  const painting = await postPicture(server, who, board.id, await paintingFile(), { kind: 'painting' });
  await writeInto(server.url, who, board.id, 'setup', (doc) => {
    NAMES.forEach((name, at) => {
      addPlane(doc, { id: `plane-${at}`, name, kind: at === 0 ? 'sky' : 'land', tilt: null });
      const ridge = RIDGES[at - 1];
      putReferenceOutline(doc, reference.id, `plane-${at}`, below(ridge ?? 0));
    });
  });
  return { board, painting };
}

/** The height of each ridge on the painting as the room has it now, far to near. */
async function ridgesOn(server: AServer, who: Guest['who'], boardId: string, paintingId: string) {
  const room = await joinRoom(server.url, who, boardId, `painting/${paintingId}`);
  const outlines = readPaintingOutlines(room.doc);
  room.leave();
  return NAMES.slice(1).flatMap((_, at) => {
    const outline = outlines.get(`plane-${at + 1}`);
    return outline ? [Math.min(...outline.map(([, y]) => y))] : [];
  });
}

function expectRidges(ridges: readonly number[], off = 0): void {
  expect(ridges).toHaveLength(RIDGES.length);
  ridges.forEach((ridge, at) => {
    expect(Math.abs(ridge - ((RIDGES[at] ?? 0) - HIGHER + off))).toBeLessThan(NEAR);
  });
}

const takeButton = (page: Page) => page.getByRole('button', { name: 'Take them' });

test('one click places and fits the planes, one more takes them; others see it and undo brings it back', async ({
  guest,
  server,
}) => {
  const { page, who, troubles } = await guest('Ragna');
  const { board, painting } = await carryBoard(server, who, 'Carried by mouse');
  const other = await guest('Sunniva');
  await page.goto(`${server.url}/boards/${board.id}`);
  await other.page.goto(`${server.url}/boards/${board.id}`);
  await page.getByRole('tab', { name: 'Planes' }).click();

  await page.getByRole('button', { name: 'Carry the planes over' }).click();
  await expect(takeButton(page)).toBeEnabled({ timeout: 60_000 });
  await expect(page.getByText('Every ridge found its edge.')).toBeVisible();
  await expect(
    stageOf(other.page, 'Painting').getByText('Ragna is placing planes on this painting just now.'),
  ).toBeVisible();
  // Nobody else has them before they are taken.
  expect(await ridgesOn(server, who, board.id, painting.id)).toEqual([]);

  await takeButton(page).click();
  await expect(page.getByText('4 planes were carried over.')).toBeVisible();
  await expect(async () => {
    expectRidges(await ridgesOn(server, who, board.id, painting.id));
  }).toPass({ timeout: 20_000 });
  await other.page.getByRole('tab', { name: 'Planes' }).click();
  await expect(stageOf(other.page, 'Painting').getByText('Ragna is placing')).toHaveCount(0);
  await expect(other.page.getByRole('button', { name: 'Carry the planes over anew' })).toBeVisible();

  await page.getByRole('button', { name: 'Undo' }).first().click();
  await expect(async () => {
    expect(await ridgesOn(server, who, board.id, painting.id)).toEqual([]);
  }).toPass({ timeout: 20_000 });
  await expect(other.page.getByRole('button', { name: 'Carry the planes over', exact: true })).toBeVisible();
  expect(troubles).toEqual([]);
});

test('all planes and single ones are dragged, and what is dragged stays where the hand left it', async ({
  guest,
  server,
}) => {
  const { page, who } = await guest('Gyda');
  const { board, painting } = await carryBoard(server, who, 'Carried and dragged');
  await page.goto(`${server.url}/boards/${board.id}`);
  await page.getByRole('tab', { name: 'Planes' }).click();
  await page.getByRole('button', { name: 'Carry the planes over' }).click();
  await expect(takeButton(page)).toBeEnabled({ timeout: 60_000 });
  await page.getByRole('button', { name: 'As in the reference' }).click();
  await expect(page.getByText(/they are not drawn to the painted edges/)).toBeVisible();

  const stage = stageOf(page, 'Painting');
  const drag = async (dy: number) => {
    const [from, to] = [await placeOn(stage, 0.5, 0.5), await placeOn(stage, 0.5, 0.5 + dy)];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x, (from.y + to.y) / 2, { steps: 4 });
    await page.mouse.move(to.x, to.y, { steps: 4 });
    await page.mouse.up();
  };
  await drag(0.1);
  await page.getByRole('button', { name: '4, Foreground', exact: true }).click();
  await expect(page.getByText(/Drag ‘Foreground’/)).toBeVisible();
  await drag(-0.05);
  await expect(takeButton(page)).toBeEnabled();
  await takeButton(page).click();
  await expect(async () => {
    const ridges = await ridgesOn(server, who, board.id, painting.id);
    const [, , last = 0] = ridges;
    expectRidges([...ridges.slice(0, 2), last + 0.05], 0.1);
  }).toPass({ timeout: 20_000 });
});

test('the same by keys alone: moved, fitted again, taken, undone', async ({ guest, server }) => {
  const { page, who } = await guest('Torhild');
  const { board, painting } = await carryBoard(server, who, 'Carried by keys');
  await page.goto(`${server.url}/boards/${board.id}`);
  await page.getByRole('tab', { name: 'Planes' }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Carry the planes over' }).focus();
  await page.keyboard.press('Enter');
  // The keys are on taking as soon as there is something to take.
  await expect(takeButton(page)).toBeFocused({ timeout: 60_000 });
  await page.keyboard.press('Shift+ArrowDown');
  await expect(takeButton(page)).toBeEnabled({ timeout: 30_000 });
  await page.keyboard.press('Escape');
  await expect(takeButton(page)).toHaveCount(0);
  expect(await ridgesOn(server, who, board.id, painting.id)).toEqual([]);

  await page.getByRole('button', { name: 'Carry the planes over' }).focus();
  await page.keyboard.press('Enter');
  await expect(takeButton(page)).toBeFocused({ timeout: 60_000 });
  await page.keyboard.press('Enter');
  await expect(page.getByText('4 planes were carried over.')).toBeVisible();
  await expect(async () => {
    expectRidges(await ridgesOn(server, who, board.id, painting.id));
  }).toPass({ timeout: 20_000 });
  await page.keyboard.press('Control+z');
  await expect(async () => {
    expect(await ridgesOn(server, who, board.id, painting.id)).toEqual([]);
  }).toPass({ timeout: 20_000 });
});
