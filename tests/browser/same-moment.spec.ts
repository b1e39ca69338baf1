/**
 * Two people at the same moment: both reorder planes, both nudge one outline, both correct one photo. Nothing
 * that either did is lost, and both screens and a third witness end with the same board.
 */
import type { Outline } from '#server/core/contract/setup.ts';
import { putPaintingOutline, putReferenceOutline } from '#server/core/live/outlines.ts';
import { readPhoto } from '#server/core/live/painting.ts';
import { addPlane, readPlanes } from '#server/core/live/planes.ts';
import { joinRoom } from '#tests/helpers/joined-room.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, RIDGES, sceneFile } from './scenes.ts';
import { expect, makeBoard, postPicture, stageOf, test } from './story.ts';

const NAMES = ['Sky', 'Far hills', 'Middle ground', 'Foreground'];

test('what two people do to one board in the same moment is all kept', async ({ guest, server }) => {
  const owner = await server.enter('Hedda');
  const board = await makeBoard(server, owner, 'The same moment');
  const reference = await postPicture(
    server,
    owner,
    board.id,
    await sceneFile({ name: 'reference', bands: REFERENCE_BANDS }),
    { kind: 'reference', rights: 'mine' },
  );
  const painting = await postPicture(
    server,
    owner,
    board.id,
    await sceneFile({ name: 'painting', bands: PAINTING_BANDS }),
    { kind: 'painting' },
  );
  const setup = await joinRoom(server.url, owner, board.id, 'setup');
  const paintingRoom = await joinRoom(server.url, owner, board.id, `painting/${painting.id}`);
  const tops = [0, ...RIDGES];
  NAMES.forEach((name, at) => {
    const top = tops[at] ?? 0;
    const outline: Outline = [
      [0, top],
      [0.5, top],
      [1, top],
      [1, 1],
      [0, 1],
    ];
    addPlane(setup.doc, { id: `plane-${at}`, name, kind: at === 0 ? 'sky' : 'land', tilt: null });
    putReferenceOutline(setup.doc, reference.id, `plane-${at}`, outline);
    putPaintingOutline(paintingRoom.doc, `plane-${at}`, outline);
  });
  const { token } = await server.json<{ token: string }>(owner, `/api/boards/${board.id}/invites`, 'POST', {
    role: 'teacher',
    hours: 2,
  });
  const people = [await guest('Teodor', token), await guest('Tilda', token)] as const;
  const [one, two] = people;
  for (const { page } of people) {
    await page.goto(`${server.url}/boards/${board.id}`);
    await expect(stageOf(page, 'Painting').locator('img').first()).toBeVisible();
    await page.getByRole('tab', { name: 'Planes' }).click();
    await expect(page.getByRole('button', { name: /^Plane 4, Foreground/ })).toBeVisible();
  }

  // One moves the far hills nearer, the other the foreground farther, at once.
  await one.page.getByRole('button', { name: /^Plane 2, Far hills/ }).click();
  await two.page.getByRole('button', { name: /^Plane 4, Foreground/ }).click();
  await Promise.all([
    one.page.getByRole('button', { name: 'Move Far hills nearer' }).click(),
    two.page.getByRole('button', { name: 'Move Foreground farther' }).click(),
  ]);

  // Both nudge a point of one outline on the reference, at once.
  for (const { page } of people) {
    await page
      .getByRole('button', { name: /^Outline/ })
      .first()
      .click();
    const middle = page.getByRole('button', { name: /^Plane \d, Middle ground/ });
    if ((await middle.getAttribute('aria-expanded')) === 'false') await middle.click();
  }
  const point = (page: typeof one.page, number: number) =>
    stageOf(page, 'Reference').getByRole('button', { name: `Middle ground, point ${number} of 5.` });
  for (const [{ page }, number] of [
    [one, 2],
    [two, 3],
  ] as const) {
    await point(page, 1).focus();
    for (let step = 1; step < number; step++) await page.keyboard.press('.');
    await expect(point(page, number)).toBeFocused();
  }
  await Promise.all([one.page.keyboard.press('Shift+ArrowUp'), two.page.keyboard.press('Shift+ArrowUp')]);

  // One sets the corners of the painting's photo, the other types its size, at once.
  for (const { page } of people)
    await page
      .getByRole('button', { name: /^Square up/ })
      .first()
      .click();
  await two.page.getByLabel('Width').fill('40');
  await two.page.getByLabel('Height', { exact: true }).fill('30');
  await Promise.all([
    one.page.getByRole('button', { name: 'Set them by hand' }).click(),
    two.page.keyboard.press('Tab'),
  ]);

  await expect(() => {
    const names = readPlanes(setup.doc).map(({ name }) => name);
    expect(names.toSorted()).toEqual(NAMES.toSorted());
    const outline = setup.doc.getMap('outlines').get(`${reference.id}/plane-2`) as Outline; // written above
    expect(outline[1]?.[1]).toBeLessThan(RIDGES[1]);
    expect(outline[2]?.[1]).toBeLessThan(RIDGES[1]);
    const photo = readPhoto(paintingRoom.doc);
    expect(photo.size).toEqual([40, 30]);
    expect(photo.corners).toHaveLength(4);
  }).toPass({ timeout: 20_000 });

  const order = readPlanes(setup.doc).map(({ name }) => name);
  expect(order[0]).toBe('Sky');
  expect(order.indexOf('Foreground')).toBeLessThan(3);
  expect(order.indexOf('Far hills')).toBeGreaterThan(1);
  for (const { page, troubles } of people) {
    await page.getByRole('tab', { name: 'Planes' }).click();
    for (const [at, name] of order.entries()) {
      await expect(
        page.getByRole('button', { name: new RegExp(`^Plane ${at + 1}, ${name}`) }),
      ).toBeAttached();
    }
    expect(troubles).toEqual([]);
  }
  for (const { leave } of [setup, paintingRoom]) leave();
});
