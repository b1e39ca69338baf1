/**
 * The mentor and the queue: what waits, what was wanted, remarks with phrases of one's own, homework in words, and the
 * next one; by mouse and by keyboard alone.
 */
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { barriersOf } from '../barriers.ts';
import { PAINTING_BANDS, sceneFile } from '../scenes.ts';
import { aGuest, expect, makeBoard, postPicture, stageOf, test } from '../story.ts';
import { Hands } from './hands.ts';
import { BY_KEYS, seen, TOUCH_AND_MOUSE } from './ways.ts';

const PAINTERS = ['Pia', 'Oda'] as const;
const PHRASES = ['Squint at this edge.', 'Join these two values.'];
/** Two reviews; by keys each place on a picture is two arrows held. */
const MOST_STEPS = { mouse: 34, touch: 34, keys: 46 } as const;

async function invited(server: AServer, owner: Entered, boardId: string, role: string): Promise<string> {
  const invite = { role, hours: 2 };
  return (await server.json<{ token: string }>(owner, `/api/boards/${boardId}/invites`, 'POST', invite))
    .token;
}

/** Two painters who asked for a look on one board, and the mentor's link. */
async function aQueue(server: AServer) {
  const owner = await server.enter('Hedda');
  const { id: boardId } = await makeBoard(server, owner, 'The reed bank');
  const file = await sceneFile({
    name: 'mentor-painting',
    bands: PAINTING_BANDS,
    widthPx: 900,
    heightPx: 600,
  });
  const painters: Entered[] = [];
  for (const name of PAINTERS) {
    const who = await server.enter(name, await invited(server, owner, boardId, 'painter'));
    const { id } = await postPicture(server, who, boardId, file, {
      kind: 'painting',
      caption: `Reeds by ${name}`,
    });
    const ask = { picture: id, of: null, words: 'Does the bank lie flat?' };
    await server.json(who, `/api/boards/${boardId}/asks`, 'POST', ask);
    painters.push(who);
  }
  return { boardId, painters, link: await invited(server, owner, boardId, 'teacher') };
}

async function remark(hands: Hands, x: number, phrase: string): Promise<void> {
  const { page } = hands;
  const mark = seen(page.getByRole('button', { name: 'Mark', exact: true }));
  if ((await mark.getAttribute('aria-pressed')) !== 'true') await hands.letter('m', mark);
  await hands.point(stageOf(page, 'Painting'), x, 0.6);
  const field = page.getByLabel('What do you see here?');
  await hands.write(field, 'Here.');
  await hands.press(page.getByRole('button', { name: 'Phrases', exact: true }));
  if (hands.way === 'keys') {
    await hands.write(page.getByRole('combobox', { name: 'Find a phrase' }), phrase.slice(0, 6));
    await expect(page.getByRole('option')).toHaveText([phrase]);
    await hands.key('Enter');
  } else await hands.press(page.getByRole('option', { name: phrase }));
  await expect(field).toHaveValue(`Here. ${phrase}`);
  await hands.press(page.getByRole('button', { name: 'Say it' }));
  await expect(seen(page.getByText(`Here. ${phrase}`))).toBeVisible();
}

/** One review, from the row of the queue to "looked at". */
async function review(hands: Hands, painter: string): Promise<void> {
  const { page } = hands;
  await hands.press(page.getByRole('link', { name: `Open ${painter}’s painting` }));
  await expect(page.getByRole('button', { name: 'Looked at' })).toBeVisible({ timeout: 45_000 });
  for (const [at, phrase] of PHRASES.entries()) await remark(hands, 0.4 + at * 0.2, phrase);
  await setHomework(hands);
  await hands.press(page.getByRole('button', { name: 'Looked at' }));
  await hands.press(page.getByRole('link', { name: 'See what waits' }));
  await expect(page.getByRole('heading', { name: 'Waiting for you' })).toBeVisible();
}

async function setHomework(hands: Hands): Promise<void> {
  const { page } = hands;
  await hands.press(page.getByRole('button', { name: 'Set homework' }));
  await hands.write(page.getByLabel('What is there to try?'), 'Three values, ten minutes.');
  await hands.press(page.getByRole('button', { name: 'Set it' }));
  await expect(page.getByRole('region', { name: 'Homework' }).getByText('Not in yet.')).toBeVisible();
}

for (const { name, way, viewport } of [...TOUCH_AND_MOUSE.slice(0, 1), BY_KEYS]) {
  test(`the mentor goes through the queue ${name}`, async ({ browser, server }) => {
    test.setTimeout(240_000);
    const { boardId, painters, link } = await aQueue(server);
    const context = await browser.newContext({ viewport });
    const { page, who, troubles } = await aGuest(context, server, 'Torolf', link);
    for (const words of PHRASES) await server.json(who, '/api/phrases', 'POST', { words });
    const hands = new Hands(page, way);
    await page.goto(`${server.url}/queue`);
    await expect(page.getByRole('heading', { name: 'Waiting for you' })).toBeVisible();
    expect(await barriersOf(page), 'the queue').toEqual([]);
    for (const painter of PAINTERS) {
      await review(hands, painter);
      hands.part(`for ${painter}`);
      await expect(page.getByRole('link', { name: `Open ${painter}’s painting` })).toHaveCount(0);
    }
    // The day that was set, and what was said, are the painter's.
    const homework = await server.json<{ words: string }[]>(
      painters[0] ?? null,
      `/api/boards/${boardId}/homework`,
    );
    expect(homework).toMatchObject([{ words: 'Three values, ten minutes.' }]);
    hands.told(test.info().title, MOST_STEPS[way]);
    expect(troubles).toEqual([]);
    await context.close();
  });
}
