import sharp from 'sharp';
import { readSteps } from '#server/core/live/plan/rearranging.ts';
import { joinRoom } from '#tests/helpers/joined-room.ts';
import { barriersOf } from './barriers.ts';
import { aPhotographed, drag, middleOf, openPart, PAINTED } from './planned-picture.ts';
import { expect, test } from './story.ts';

test.describe.configure({ timeout: 300_000 });

test('a motif is lifted by a loop, moved by hand, seen by somebody else, and the photograph is one key away', async ({
  guest,
  server,
}) => {
  const { page, who, troubles } = await guest('Sunniva');
  const { boardId, photographId, address } = await aPhotographed(server, who, 'The tower elsewhere');
  await openPart(page, address, 'Rearrange');
  await page.getByRole('button', { name: 'Lift a motif' }).click();
  const paper = await page.getByTestId('loop').boundingBox();
  if (!paper) throw new Error('There is nothing to draw on.');
  const at = (x: number, y: number) => [paper.x + x * paper.width, paper.y + y * paper.height] as const;

  // A loop of nothing is said, and nothing is written.
  await page.mouse.move(...at(0.3, 0.3));
  await page.mouse.down();
  await page.mouse.move(...at(0.302, 0.302));
  await page.mouse.up();
  await expect(page.getByRole('alert').filter({ hasText: /loop/ })).toBeVisible();

  const corners = [
    [0.64, 0.27],
    [0.74, 0.27],
    [0.74, 0.56],
    [0.64, 0.56],
    [0.64, 0.28],
  ] as const;
  await page.mouse.move(...at(0.64, 0.27));
  await page.mouse.down();
  for (const [x, y] of corners.slice(1)) {
    const [u, v] = at(x, y);
    await page.mouse.move(u, v, { steps: 6 });
  }
  await page.mouse.up();
  const body = page.getByRole('button', { name: 'Move Motif 1' });
  await expect(body).toBeVisible();

  await drag(page, await middleOf(page, 'Move Motif 1'), [Math.round(0.15 * paper.width), 0]);
  const rearranged = page.getByRole('img', { name: 'The photograph, rearranged' });
  await expect(rearranged).toHaveAttribute('data-by', /webgl|plain/, PAINTED);
  const steps = async () => {
    const { doc, leave } = await joinRoom(server.url, who, boardId, 'setup');
    const found = readSteps(doc, photographId);
    leave();
    return found;
  };
  await expect(async () => {
    const [step] = await steps();
    expect(step?.kind === 'motif' && step.move[0]).toBeCloseTo(0.15, 2);
  }).toPass();

  // The tower is white before the sky; where it was is now sky or plain, and where it is now it is white.
  const lightAt = (x: number, y: number) =>
    page.evaluate(
      ([u, v]) => {
        const canvas = document.querySelector<HTMLCanvasElement>('[data-by] canvas');
        const copy = document.createElement('canvas');
        const context = copy.getContext('2d');
        if (!canvas || !context) throw new Error('There is no painted canvas.');
        [copy.width, copy.height] = [canvas.width, canvas.height];
        context.drawImage(canvas, 0, 0);
        const { data } = context.getImageData(u * canvas.width - 4, v * canvas.height - 4, 8, 8);
        let sum = 0;
        for (let at = 0; at < data.length; at += 4) sum += (data[at] ?? 0) / 64;
        return sum;
      },
      [x, y] as const,
    );
  await expect(async () => {
    expect(await lightAt(0.683 + 0.15, 0.43)).toBeGreaterThan((await lightAt(0.683, 0.43)) + 20);
  }).toPass(PAINTED);

  await page.keyboard.press('o');
  await expect(rearranged).toBeHidden();
  await page.keyboard.press('o');
  await expect(rearranged).toBeVisible();

  const invited = await server.json<{ token: string }>(who, `/api/boards/${boardId}/invites`, 'POST', {
    role: 'painter',
    hours: 1,
  });
  const other = await guest('Lovis', invited.token);
  await openPart(other.page, address, 'Rearrange');
  await expect(other.page.getByText('Motif 1')).toBeVisible();
  await expect(other.page.getByRole('img', { name: 'The photograph, rearranged' })).toHaveAttribute(
    'data-by',
    /webgl|plain/,
    PAINTED,
  );

  await page.getByRole('checkbox', { name: 'Done: Motif 1' }).uncheck();
  await expect(rearranged).toHaveCount(0);
  await page.getByRole('button', { name: 'Leave out: Motif 1' }).click();
  await expect(page.getByText('Nothing is rearranged yet.')).toBeVisible();
  await expect(other.page.getByText('Nothing is rearranged yet.')).toBeVisible();
  expect(troubles).toEqual([]);
});

test('by key alone a plane is lifted, moved and enlarged, its ridge bent, and each taken back', async ({
  guest,
  server,
}) => {
  const { page, who } = await guest('Eldbjørg');
  const { boardId, photographId, address } = await aPhotographed(server, who, 'By key');
  await openPart(page, address, 'Rearrange');
  await page.getByLabel('Plane', { exact: true }).selectOption({ label: 'castle' });
  await page.getByRole('button', { name: 'Lift this plane' }).press('Enter');
  const body = page.getByRole('button', { name: 'Move castle, lifted' });
  await body.focus();
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('+');
  await page.getByLabel('Plane', { exact: true }).selectOption({ label: 'green plain' });
  await page.getByRole('button', { name: 'Bend its ridge' }).press('Enter');
  await page.getByRole('button', { name: /^Bend Ridge of green plain/ }).focus();
  await page.keyboard.press('ArrowUp');
  const steps = async () => {
    const { doc, leave } = await joinRoom(server.url, who, boardId, 'setup');
    const found = readSteps(doc, photographId);
    leave();
    return found;
  };
  await expect(async () => {
    const found = await steps();
    expect(found).toMatchObject([{ kind: 'motif', move: [0.05, 0], scale: 1.05 }, { kind: 'bend' }]);
    expect(found[1]?.kind === 'bend' && found[1].lift).toBeCloseTo(0.035, 6);
  }).toPass();
  await expect(page.getByRole('img', { name: 'The photograph, rearranged' })).toHaveAttribute(
    'data-by',
    /webgl|plain/,
    PAINTED,
  );
  expect(await barriersOf(page)).toEqual([]);

  const response = await server.call(who, `/api/boards/${boardId}/plan/${photographId}/rearranged`);
  expect(response.status).toBe(200);
  expect(response.headers.get('content-type')).toBe('image/jpeg');
  const made = await sharp(Buffer.from(await response.arrayBuffer())).metadata();
  expect(made.chromaSubsampling).toBe('4:4:4');

  await page.getByRole('button', { name: 'Later: castle, lifted' }).press('Enter');
  await expect(async () => {
    expect((await steps()).map(({ kind }) => kind)).toEqual(['bend', 'motif']);
  }).toPass();
  for (let taken = 0; taken < 6; taken++) {
    const undo = page.getByRole('button', { name: 'Undo' });
    if (await undo.isEnabled()) await undo.press('Enter');
  }
  await expect(page.getByText('Nothing is rearranged yet.')).toBeVisible();
});
