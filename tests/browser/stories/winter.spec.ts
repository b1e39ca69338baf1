/**
 * Winter, and the rule is wrong: a reading that snow and a low sun explain is put to rest by saying so. It keeps its
 * reason, is no fault on any screen, what has nothing to do with it stays, and the teacher sees what was said and agrees.
 */
import { randomUUID } from 'node:crypto';
import type { Page } from '@playwright/test';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { putReferenceOutline } from '#server/core/live/outlines.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { CONDITION_REASONS } from '#server/core/readings/conditions.ts';
import type { AServer } from '#tests/helpers/a-server.ts';
import { writeInto } from '#tests/helpers/joined-room.ts';
import { barriersOf } from '../barriers.ts';
import { RIDGES, sceneFile } from '../scenes.ts';
import { expect, makeBoard, measuresWhenReady, postPicture, stageOf, test } from '../story.ts';
import { Hands } from './hands.ts';
import { seen } from './ways.ts';

const PLANES = [
  { name: 'Sky', kind: 'sky', top: 0, tilt: null },
  { name: 'Far range', kind: 'snow', top: RIDGES[0], tilt: 'slanted' },
  { name: 'Spruces', kind: 'wood', top: RIDGES[1], tilt: 'upright' },
  { name: 'Snowfield', kind: 'snow', top: RIDGES[2], tilt: 'flat' },
] as const;
const REFERENCE = [
  [84, -1, -6],
  [76, 0, -4],
  [30, -4, 2],
  [73, -1, -6],
] as const;
/** The sky sank below the snow, as it may in winter; the spruces became as light as the range, as they may not. */
const PAINTING = [
  [68, 0, 4],
  [74, 1, 2],
  [71, -2, 3],
  [85, 1, 4],
] as const;

const REASONS = [CONDITION_REASONS.snow, CONDITION_REASONS['low-sun']];

async function aWinter(server: AServer) {
  const owner = await server.enter('Hedda');
  const { id: boardId } = await makeBoard(server, owner, 'Snow towards evening');
  const there = await postPicture(
    server,
    owner,
    boardId,
    await sceneFile({ name: 'winter-r', bands: REFERENCE }),
    {
      ...{ kind: 'reference', rights: 'mine' },
    },
  );
  await writeInto(server.url, owner, boardId, 'setup', (doc) => {
    for (const { name, kind, top, tilt } of PLANES) {
      const id = randomUUID();
      addPlane(doc, { id, name, kind, tilt });
      putReferenceOutline(doc, there.id, id, [
        [0, top],
        [1, top],
        [1, 1],
        [0, 1],
      ]);
    }
  });
  const file = await sceneFile({ name: 'winter-p', bands: PAINTING });
  const { id: pictureId } = await postPicture(server, owner, boardId, file, { kind: 'painting' });
  const invite = { role: 'teacher', hours: 2 };
  const { token } = await server.json<{ token: string }>(
    owner,
    `/api/boards/${boardId}/invites`,
    'POST',
    invite,
  );
  return { owner, boardId, pictureId, token };
}

const readingsOf = (page: Page) => page.locator('details', { hasText: /^All \d+ readings/ });

test('what snow and a low sun explain is no fault, keeps its reason, and the rest still speaks', async ({
  guest,
  server,
}) => {
  test.setTimeout(180_000);
  const { owner, boardId, pictureId, token } = await aWinter(server);
  const { page, troubles } = await guest('Ilse');
  const teacher = await guest('Tilda', token);
  const measured = async () =>
    (await measuresWhenReady(server, owner, boardId, pictureId)) as unknown as MeasureDocument; // what the call answers
  const speaking = ({ readings }: MeasureDocument) =>
    readings.filter(({ muted }) => muted === null).map(({ id }) => id);
  let before: string[] = [];
  await expect(async () => {
    before = speaking(await measured());
    expect(before.length).toBeGreaterThan(1);
  }).toPass({ timeout: 60_000 });

  const hands = new Hands(page, 'mouse');
  await page.goto(`${server.url}/boards/${boardId}`);
  await expect(stageOf(page, 'Painting').locator('img').first()).toBeVisible();
  await hands.press(page.getByRole('tab', { name: 'Planes' }));
  await hands.press(page.getByText('Say what light and weather it was'));
  await hands.press(page.getByRole('checkbox', { name: 'Snow', exact: true }));
  await hands.press(page.getByRole('checkbox', { name: 'Low sun' }));

  let after: MeasureDocument | null = null;
  await expect(async () => {
    after = await measured();
    const quiet = after.readings.filter(
      ({ id, muted }) => muted && REASONS.includes(muted) && before.includes(id),
    );
    expect(quiet.length).toBeGreaterThan(0);
  }).toPass({ timeout: 60_000 });
  const now = after as MeasureDocument | null;
  const quiet = now?.readings.filter(({ muted }) => muted && REASONS.includes(muted)) ?? [];
  const left = now ? speaking(now) : [];
  // The spruces that merged with the range have nothing to do with the season.
  expect(left.length).toBeGreaterThan(0);
  for (const { id } of quiet) expect(left).not.toContain(id);

  await hands.press(page.getByRole('tab', { name: 'Talk' }));
  await hands.press(page.getByText(/^All \d+ readings$/));
  for (const reason of new Set(quiet.map(({ muted }) => muted ?? ''))) {
    await expect(readingsOf(page).getByText(reason).first()).toBeVisible();
  }
  expect(await barriersOf(page), 'quiet readings').toEqual([]);

  const hers = new Hands(teacher.page, 'mouse');
  await teacher.page.goto(`${server.url}/boards/${boardId}`);
  await hers.press(teacher.page.getByRole('tab', { name: 'Planes' }));
  await expect(teacher.page.getByText('Snow, Low sun', { exact: true })).toBeVisible();
  await hers.press(teacher.page.getByRole('button', { name: 'Mark', exact: true }));
  await hers.point(stageOf(teacher.page, 'Painting'), 0.5, 0.85);
  await hers.write(
    teacher.page.getByLabel('What do you see here?'),
    'Agreed: that evening the snow is the light.',
  );
  await hers.press(teacher.page.getByRole('button', { name: 'Say it' }));
  await expect(seen(page.getByText('Agreed: that evening the snow is the light.'))).toBeVisible();
  hands.told('Winter, the painter by mouse', 7);
  hers.told('Winter, the teacher by mouse', 5);
  expect(troubles).toEqual([]);
  expect(teacher.troubles).toEqual([]);
});
