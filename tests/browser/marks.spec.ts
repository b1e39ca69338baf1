/**
 * Marks of every kind, made in one browser and seen in the others: states, nods, hidden remarks, sketches that need
 * leave, layers by person, taking back, and all of it by keys.
 */
import type { Locator, Page } from '@playwright/test';
import { putMark, readMarks } from '#server/core/live/marks.ts';
import type { AServer } from '#tests/helpers/a-server.ts';
import { joinRoom } from '#tests/helpers/joined-room.ts';
import { barriersOf } from './barriers.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, sceneFile } from './scenes.ts';
import { clickPoints, expect, makeBoard, placeOn, postPicture, stageOf, test } from './story.ts';

/** A board with a painting by Maren, a teacher and a peer beside her, each to be opened in a browser of their own. */
async function aScene(server: AServer) {
  const host = await server.enter('Hedda');
  const board = await makeBoard(server, host, 'Marked in every way');
  const file = (name: string, bands: typeof PAINTING_BANDS) => sceneFile({ name, bands });
  await postPicture(server, host, board.id, await file('reference', REFERENCE_BANDS), {
    kind: 'reference',
    rights: 'mine',
  });
  const invited = async (role: string) => {
    const made = await server.json<{ token: string }>(host, `/api/boards/${board.id}/invites`, 'POST', {
      role,
      hours: 2,
    });
    return made.token;
  };
  const tokens = {
    painter: await invited('painter'),
    teacher: await invited('teacher'),
    peer: await invited('peer'),
  };
  return { board, tokens, paintingFile: await file('painting', PAINTING_BANDS) };
}

const kind = (page: Page, name: string) => page.getByRole('radio', { name, exact: true });
const spot = (page: Page, name: RegExp) => stageOf(page, 'Painting').getByRole('button', { name });
const remark = (page: Page, text: string): Locator => page.locator('[data-remark]').filter({ hasText: text });

async function drag(page: Page, from: readonly [number, number], to: readonly [number, number]) {
  const stage = stageOf(page, 'Painting');
  const [start, end] = [await placeOn(stage, ...from), await placeOn(stage, ...to)];
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move((start.x + end.x) / 2, (start.y + end.y) / 2 + 6, { steps: 4 });
  await page.mouse.move(end.x, end.y, { steps: 4 });
  await page.mouse.up();
}

test('marks of every kind are made in one browser and seen in the others', async ({ guest, server }) => {
  test.setTimeout(420_000);
  const { board, tokens, paintingFile } = await aScene(server);
  const painter = await guest('Maren', tokens.painter);
  const picture = await postPicture(server, painter.who, board.id, paintingFile, { kind: 'painting' });
  const teacher = await guest('Teodor', tokens.teacher);
  const peer = await guest('Pia', tokens.peer);
  for (const { page } of [painter, teacher, peer]) {
    await page.goto(`${server.url}/boards/${board.id}`);
    await expect(stageOf(page, 'Painting').locator('img').first()).toBeVisible();
  }
  const [mine, theirs, third] = [teacher.page, painter.page, peer.page];

  await test.step('a pin, a line, an arrow, a loop, words and a colour', async () => {
    await mine.getByRole('button', { name: /^Mark/ }).first().click();
    await clickPoints(mine, stageOf(mine, 'Painting'), [[0.2, 0.4]]);
    await mine.getByLabel('What do you see here?').fill('The hills come forward.');
    await mine.getByRole('button', { name: 'Say it' }).click();
    await expect(
      spot(theirs, /^Remark 1 by Teodor, on the painting, middle left: The hills come/),
    ).toBeVisible();
    await kind(mine, 'Line').click();
    await drag(mine, [0.1, 0.6], [0.3, 0.62]);
    await expect(spot(theirs, /^Line 2 by Teodor/)).toBeVisible();
    await kind(mine, 'Arrow').click();
    await drag(mine, [0.3, 0.8], [0.45, 0.6]);
    await mine.getByLabel('What do you mean by it? (if you like)').fill('The eye goes up here.');
    await mine.getByRole('button', { name: 'Keep' }).click();
    await expect(spot(theirs, /^Arrow 3 by Teodor, .*The eye goes up here\.$/)).toBeVisible();
    await kind(mine, 'Loop').click();
    await clickPoints(mine, stageOf(mine, 'Painting'), [
      [0.6, 0.55],
      [0.75, 0.55],
      [0.7, 0.68],
    ]);
    await mine.getByRole('button', { name: 'Finish' }).click();
    await expect(spot(theirs, /^Loop 4 by Teodor/)).toBeVisible();
    await kind(mine, 'Words').click();
    await clickPoints(mine, stageOf(mine, 'Painting'), [[0.4, 0.9]]);
    await mine.getByLabel('What should stand here?').fill('rest');
    await mine.keyboard.press('Enter');
    await expect(spot(theirs, /^Words 5 by Teodor, .*: rest$/)).toHaveText('5rest');
    await kind(mine, 'Colour').click();
    await clickPoints(mine, stageOf(mine, 'Painting'), [[0.85, 0.4]]);
    await expect(spot(theirs, /^Colour 6 by Teodor/)).toBeVisible();
    // The photo is not graded here: a swatch, and no figure.
    await expect(remark(theirs, 'a colour')).toContainText('its colours say nothing in figures');
  });

  await test.step('sketching over is refused until the painter allows it, on the screen and by the server', async () => {
    await kind(mine, 'Sketch over').click();
    await expect(mine.getByText('Maren has not allowed sketching over this painting.')).toBeVisible();
    await drag(mine, [0.5, 0.2], [0.6, 0.25]);
    const past = await joinRoom(server.url, teacher.who, board.id, 'marks');
    putMark(past.doc, {
      ...{ id: 'forced', author: teacher.who.id, pictureId: picture.id, kind: 'sketch', text: '', at: 1 },
      ...{ planeId: null, parent: null, paint: { hex: '#808080', width: 0.02, opacity: 1 } },
      points: [
        [0.1, 0.1],
        [0.2, 0.2],
      ],
    });
    const fresh = await joinRoom(server.url, painter.who, board.id, 'marks');
    expect(readMarks(fresh.doc).map(({ kind: made }) => made)).not.toContain('sketch');
    for (const room of [past, fresh]) room.leave();
    await expect(theirs.locator('[data-sketch]')).toHaveCount(0);
  });

  await test.step('allowed, it is painted with a colour of the picture and shown or not by one key', async () => {
    await theirs.getByRole('checkbox', { name: 'Others may sketch over this painting' }).check();
    await mine.getByRole('button', { name: 'From the picture' }).click();
    await clickPoints(mine, stageOf(mine, 'Painting'), [[0.9, 0.9]]);
    await expect(mine.getByText('Paint what you would try.')).toBeVisible();
    await expect(mine.getByRole('button', { name: 'The colour that was taken' })).toBeVisible();
    await drag(mine, [0.5, 0.2], [0.62, 0.22]);
    await drag(mine, [0.5, 0.24], [0.62, 0.26]);
    await expect(theirs.locator('[data-sketch]')).toHaveCount(2);
    await expect(spot(theirs, /^Sketch 7 by Teodor/)).toBeVisible();
    await stageOf(theirs, 'Painting').focus();
    await theirs.keyboard.press('1');
    await expect(theirs.locator('[data-sketch]')).toHaveCount(0);
    await expect(mine.locator('[data-sketch]')).toHaveCount(2);
    await theirs.keyboard.press('1');
    await expect(theirs.locator('[data-sketch]')).toHaveCount(2);
  });

  await test.step('the leave is taken back: the sketch is kept for its author alone', async () => {
    await theirs.getByRole('checkbox', { name: 'Others may sketch over this painting' }).uncheck();
    await expect(theirs.locator('[data-sketch]')).toHaveCount(0);
    await expect(third.locator('[data-sketch]')).toHaveCount(0);
    await expect(mine.locator('[data-sketch]')).toHaveCount(2);
    await expect(remark(mine, 'a sketch')).toContainText('Kept for you alone');
  });

  await test.step('the painter says what became of a remark, and nods at it', async () => {
    const hills = remark(theirs, 'The hills come forward.');
    await hills.getByRole('button', { name: 'Done' }).click();
    await expect(spot(mine, /^Remark 1 by Teodor, .*, done: The hills/)).toBeVisible();
    await expect(mine.locator('[data-remark]').last()).toContainText('The hills come forward.');
    await hills.getByRole('button', { name: 'Nod at what Teodor says' }).click();
    await expect(remark(mine, 'The hills come forward.')).toContainText('Maren agrees');
    // A nod is a name: no number of any kind stands beside it.
    await expect(remark(mine, 'The hills come forward.').getByText(/agree/)).toHaveText('Maren agrees');
  });

  await test.step('the painter hides a remark, and takes that back', async () => {
    await spot(theirs, /^Arrow 3/).click();
    await theirs.getByRole('button', { name: 'Hide what Teodor says from the others' }).click();
    await expect(spot(third, /^Arrow 3/)).toHaveCount(0);
    await expect(remark(third, 'The eye goes up here.')).toHaveCount(0);
    await expect(remark(mine, 'The eye goes up here.')).toContainText('Hidden by the painter');
    await theirs.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect(spot(third, /^Arrow 3/)).toBeVisible();
  });

  await test.step('whose marks are shown is each screen’s own choice', async () => {
    await third.getByRole('button', { name: 'Choose which remarks' }).click();
    await third.getByRole('checkbox', { name: 'Teodor' }).uncheck();
    await expect(spot(third, /by Teodor/)).toHaveCount(0);
    await expect(third.getByText('Shown: everyone’s but those of Teodor.')).toBeVisible();
    await expect(spot(theirs, /^Remark 1 by Teodor/)).toBeVisible();
    await third.getByRole('button', { name: 'Show all' }).click();
    await expect(spot(third, /^Remark 1 by Teodor/)).toBeVisible();
  });

  await test.step('by keys alone: an arrow, a loop, and taking back one’s own', async () => {
    const stage = stageOf(third, 'Painting');
    await stage.focus();
    await third.keyboard.press('e');
    for (const key of ['ArrowLeft', 'Enter', 'ArrowUp', 'ArrowUp', 'ArrowRight', 'Enter']) {
      await third.keyboard.press(key);
    }
    await expect(spot(theirs, /^Arrow 8 by Pia/)).toBeVisible();
    await third.keyboard.press('j');
    for (const key of ['Space', 'ArrowDown', 'Space', 'ArrowRight', 'ArrowRight', 'Space', 'Enter']) {
      await third.keyboard.press(key);
    }
    await expect(spot(theirs, /^Loop 9 by Pia/)).toBeVisible();
    await third.keyboard.press('Control+z');
    await expect(spot(theirs, /^Loop 9 by Pia/)).toHaveCount(0);
    await third.keyboard.press('Control+z');
    await expect(spot(theirs, /by Pia/)).toHaveCount(0);
    await third.keyboard.press('Control+Shift+z');
    await expect(spot(theirs, /^Arrow 8 by Pia/)).toBeVisible();
    await expect(spot(theirs, /by Teodor/)).toHaveCount(6);
  });

  await test.step('no barrier, wide or narrow', async () => {
    await mine.getByRole('button', { name: 'Choose which remarks' }).click();
    expect(await barriersOf(mine), 'wide').toEqual([]);
    await mine.setViewportSize({ width: 390, height: 844 });
    expect(await barriersOf(mine), 'narrow').toEqual([]);
  });
  for (const { troubles } of [painter, teacher, peer]) expect(troubles).toEqual([]);
});
