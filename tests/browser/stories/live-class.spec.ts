/**
 * A whole turn of a class in four browsers: silent look, intention, what works, the reveal, priorities, what to try, and
 * the painter saying it back. What the others' machines hold is read from their documents, frames and requests.
 */
import type { Page } from '@playwright/test';
import { joinRoom } from '#tests/helpers/joined-room.ts';
import { barriersOf } from '../barriers.ts';
import { anInvite, strip } from '../class-strip.ts';
import { PAINTING_BANDS, REFERENCE_BANDS, sceneFile } from '../scenes.ts';
import { expect, type Guest, makeBoard, postPicture, type Seat, stageOf, test } from '../story.ts';
import { Hands } from './hands.ts';

const SEEN: Record<string, string> = {
  teacher: 'A band of cold hills across the middle',
  painter: 'The sky holds me at the top',
  peer: 'Green first, then nothing behind it',
  late: 'How flat the meadow lies',
};
const TAKEN_BACK = 'Rather dull, I first thought';

interface Seated extends Guest {
  hands: Hands;
}
type Cast = Record<'teacher' | 'painter' | 'peer' | 'late', Seated>;

interface Heard {
  /** Everything that came over sockets and HTTP, as Latin-1, so that no byte is lost. */
  text(): string;
  /** Path and status of what was asked for. */
  asked: { path: string; status: number; bytes: number }[];
}

/** Everything that a browser is sent from now on. */
function listenIn(page: Page): Heard {
  const heard: string[] = [];
  const asked: Heard['asked'] = [];
  page.on('websocket', (socket) => {
    socket.on('framereceived', ({ payload }) => heard.push(Buffer.from(payload).toString('latin1')));
  });
  page.on('response', async (response) => {
    const body = await response.body().catch(() => Buffer.alloc(0)); // redirects and broken-off answers have none
    heard.push(body.toString('latin1'));
    asked.push({ path: new URL(response.url()).pathname, status: response.status(), bytes: body.length });
  });
  return { text: () => heard.join('\n'), asked };
}

/** Everybody's strip says which step it is. */
async function allAt(cast: Cast, step: string): Promise<void> {
  for (const { page } of Object.values(cast)) {
    await expect(strip(page).getByText(step, { exact: true }).first()).toBeVisible({ timeout: 30_000 });
  }
}

async function onTo({ teacher }: Cast, step: string): Promise<void> {
  await teacher.hands.press(strip(teacher.page).getByRole('button', { name: `On to: ${step}` }));
}

/** Sets a pin with words on the painting. */
async function mark({ page, hands }: Seated, x: number, y: number, text: string): Promise<void> {
  await hands.press(page.getByRole('button', { name: 'Mark', exact: true }));
  await hands.point(stageOf(page, 'Painting'), x, y);
  await hands.write(page.getByLabel('What do you see here?'), text);
  await hands.press(page.getByRole('button', { name: 'Say it' }));
}

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true };
/** A line that dropped is tried again after a while. */
const BACK = { timeout: 60_000 };

test('four browsers play a whole turn', async ({ guest, server }) => {
  test.setTimeout(600_000);
  const host = await server.enter('Hedda');
  const { id: boardId } = await makeBoard(server, host, 'The Thursday class');
  const as = async (name: string, role: string, seat?: Seat): Promise<Seated> => {
    const made = await guest(name, await anInvite(server, host, boardId, role), seat);
    return { ...made, hands: new Hands(made.page, seat ? 'touch' : 'mouse') };
  };
  const cast: Cast = {
    teacher: await as('Teodor', 'teacher'),
    painter: await as('Pelle', 'painter'),
    peer: await as('Pia', 'peer', PHONE),
    late: await as('Lova', 'peer'),
  };
  const reference = await postPicture(
    server,
    host,
    boardId,
    await sceneFile({ name: 'reference', bands: REFERENCE_BANDS }),
    { kind: 'reference', rights: 'mine' },
  );
  const painting = await postPicture(
    server,
    cast.painter.who,
    boardId,
    await sceneFile({ name: 'painting', bands: PAINTING_BANDS }),
    { kind: 'painting' },
  );
  const address = `${server.url}/boards/${boardId}`;
  const heard: Record<string, Heard> = {};
  for (const [name, { page }] of Object.entries(cast)) heard[name] = listenIn(page);
  for (const { page } of [cast.teacher, cast.painter, cast.peer]) await page.goto(address);

  await test.step('the teacher begins', async () => {
    const { page } = cast.teacher;
    await cast.teacher.hands.press(page.getByRole('button', { name: 'Begin a class' }));
    const dialog = page.getByRole('dialog', { name: 'Begin a class' });
    await expect(dialog.getByText('9.5 min a painting, 9.5 min for all.')).toBeVisible();
    await cast.teacher.hands.write(dialog.getByLabel('Silent look, minutes'), '2');
    await expect(dialog.getByText('10.5 min a painting')).toBeVisible();
    expect(await barriersOf(page), 'beginning').toEqual([]);
    await cast.teacher.hands.press(dialog.getByRole('button', { name: 'Begin with the silent look' }));
  });

  await test.step('silent look: the painting alone, and nobody’s words on anybody else’s machine', async () => {
    await cast.late.page.goto(address);
    await allAt(cast, 'Silent look');
    for (const [name, { page }] of Object.entries(cast)) {
      await expect(stageOf(page, 'Painting').locator('img').first()).toBeVisible();
      await expect(stageOf(page, 'Reference')).toHaveCount(0);
      await expect(page.getByRole('heading', { name: 'Ladder' })).toHaveCount(0);
      await expect(page.getByRole('heading', { name: 'Remarks' })).toHaveCount(0);
      await expect(page.getByText(/^[12]:\d\d$/).first()).toBeVisible();
      const field = page.getByLabel('The first thing you see');
      await expect(field).toBeEnabled();
      if (name === 'peer') await field.fill(TAKEN_BACK);
      await cast[name as keyof Cast].hands.write(field, SEEN[name] ?? '');
    }
    const from = await stageOf(cast.teacher.page, 'Painting').boundingBox();
    const box = await strip(cast.teacher.page).boundingBox();
    expect(box && from && box.y + box.height).toBeLessThanOrEqual((from?.y ?? 0) + 1);
    expect(await barriersOf(cast.teacher.page), 'silent look').toEqual([]);
    expect(await barriersOf(cast.peer.page), 'silent look on a phone').toEqual([]);

    // Whatever is asked for now, by whoever: reference, figures, impressions.
    for (const { page } of Object.values(cast)) {
      const statuses = await page.evaluate(
        async ({ board, ref, paint }) => {
          const at = `/api/boards/${board}`;
          const paths = [
            ...['640', '1280', '2560', 'lossless-640'].map((size) => `${at}/pictures/${ref}/${size}`),
            `${at}/measures/${paint}`,
            `${at}/measures/${ref}`,
            `${at}/impressions/${paint}`,
          ];
          return Promise.all(paths.map(async (path) => (await fetch(path)).status));
        },
        { board: boardId, ref: reference.id, paint: painting.id },
      );
      expect(statuses).toEqual([403, 403, 403, 403, 403, 403, 403]);
    }
    // A page that is loaded anew in the middle comes to the same place, with one's own words.
    await cast.painter.page.reload();
    await expect(cast.painter.page.getByLabel('The first thing you see')).toHaveValue(SEEN.painter ?? '');

    // Documents of the others: each room that they may join, read as it is given to them.
    for (const reader of Object.values(cast)) {
      const { doc, leave } = await joinRoom(server.url, reader.who, boardId, 'class');
      const said = JSON.stringify([...doc.share].map(([key, type]) => [key, type.toJSON()]));
      for (const text of [...Object.values(SEEN), TAKEN_BACK]) expect(said).not.toContain(text);
      leave();
    }
    for (const [name] of Object.entries(cast)) {
      for (const [other, text] of Object.entries(SEEN)) {
        if (other !== name) expect(heard[name]?.text(), `${name} hears ${other}`).not.toContain(text);
      }
      if (name !== 'peer') expect(heard[name]?.text()).not.toContain(TAKEN_BACK);
    }
    // Who came in the middle of it was never given a byte of the reference, nor any figure.
    const given = heard.late?.asked.filter(({ path, status }) => {
      return status === 200 && (path.includes(`/pictures/${reference.id}/`) || path.includes('/measures/'));
    });
    expect(given).toEqual([]);
  });

  await test.step('intention: the painter writes, the others read it and what was seen first', async () => {
    await onTo(cast, 'Intention');
    await allAt(cast, 'Intention');
    for (const { page } of Object.values(cast)) {
      for (const text of Object.values(SEEN))
        await expect(page.getByText(text)).toBeVisible({ timeout: 30_000 });
      await expect(page.getByText(TAKEN_BACK)).toHaveCount(0);
      await expect(stageOf(page, 'Reference')).toHaveCount(0);
    }
    await cast.painter.page
      .getByLabel('What it is about')
      .fill('Cold hills that keep their distance; I warmed them on purpose.');
    for (const { page } of [cast.teacher, cast.peer, cast.late]) {
      await expect(page.getByText('Cold hills that keep their distance').first()).toBeVisible();
      await expect(page.getByRole('button', { name: 'Mark', exact: true })).toHaveCount(0);
    }
  });

  await test.step('what works: two strengths placed on the picture', async () => {
    await onTo(cast, 'What works');
    await allAt(cast, 'What works');
    await mark(cast.late, 0.3, 0.2, 'The sky is one calm shape.');
    await mark(cast.late, 0.6, 0.8, 'The meadow lies flat.');
    await expect(cast.painter.page.getByText('The meadow lies flat.').first()).toBeVisible();
    // The phone's line drops; what is said meanwhile comes with it, and what the others said is there.
    await cast.peer.context.setOffline(true);
    await mark(cast.peer, 0.4, 0.85, 'Its green is one green.');
    await mark(cast.late, 0.8, 0.15, 'And it is light enough to read by.');
    await cast.peer.context.setOffline(false);
    await expect(cast.painter.page.getByText('Its green is one green.').first()).toBeVisible(BACK);
    await expect(cast.peer.page.getByText('And it is light enough to read by.').first()).toBeAttached(BACK);
  });

  await test.step('reveal: reference and figures are there for everybody', async () => {
    await onTo(cast, 'Reference and values');
    await allAt(cast, 'Reference and values');
    for (const { page } of Object.values(cast)) {
      const shown = stageOf(page, 'Reference').locator('img').first();
      await expect(shown).toBeVisible({ timeout: 30_000 });
      await expect
        .poll(() => shown.evaluate((image: HTMLImageElement) => image.naturalWidth), { timeout: 30_000 })
        .toBeGreaterThan(0);
    }
    await expect(cast.teacher.page.getByRole('heading', { name: 'Ladder' })).toBeVisible();
    // What the painter wanted stands before cards and readings until somebody goes on to them.
    await expect(cast.late.page.getByRole('button', { name: 'Now the cards and readings' })).toBeVisible();
  });

  await test.step('priorities: the teacher first, then all', async () => {
    await onTo(cast, 'Priorities');
    await allAt(cast, 'Priorities');
    await expect(cast.late.page.getByRole('button', { name: 'Mark', exact: true })).toHaveCount(0);
    await mark(cast.teacher, 0.5, 0.4, 'First: the far hills come forward.');
    await cast.teacher.hands.press(cast.teacher.page.getByRole('button', { name: 'Let everybody mark' }));
    await mark(cast.late, 0.7, 0.45, 'Their darks are as heavy as the wood.');
    await expect(cast.painter.page.getByText('Their darks are as heavy as the wood.').first()).toBeVisible();
  });

  await test.step('what to try: the teacher writes a card, the painter takes it on', async () => {
    await onTo(cast, 'What to try');
    await allAt(cast, 'What to try');
    // Cards are shown once there are figures, which need a plane; the room takes a card at once.
    const room = `painting/${painting.id}` as const;
    const teacher = await joinRoom(server.url, cast.teacher.who, boardId, room);
    teacher.doc.getMap('cards').set('own-hills.what', 'Lift the darks of the far hills half a step');
    const painter = await joinRoom(server.url, cast.painter.who, boardId, room);
    await expect.poll(() => painter.doc.getMap('cards').get('own-hills.what')).toBeTruthy();
    painter.doc.getMap('answers').set('own-hills', { state: 'accepted', words: '', about: [] });
    await expect.poll(() => teacher.doc.getMap('answers').get('own-hills')).toBeTruthy();
    teacher.leave();
    painter.leave();
  });

  await test.step('say it back: the painter’s own sentence reaches everybody', async () => {
    await onTo(cast, 'Say it back');
    await allAt(cast, 'Say it back');
    await cast.painter.page
      .getByLabel('The first thing I will do')
      .fill('I lift the darks of the far hills.');
    for (const { page } of [cast.teacher, cast.peer, cast.late]) {
      await expect(page.getByText('I lift the darks of the far hills.')).toBeVisible();
    }
    expect(await barriersOf(cast.late.page), 'saying back').toEqual([]);
  });

  await test.step('the class is over: nobody was left out, and everything is as before', async () => {
    await cast.teacher.hands.press(strip(cast.teacher.page).getByRole('button', { name: 'End the class' }));
    await expect(cast.teacher.page.getByText('Everybody in the order had a turn.')).toBeVisible();
    for (const { page } of Object.values(cast)) await expect(strip(page)).toHaveCount(0);
    await expect(cast.late.page.getByRole('button', { name: 'Mark', exact: true })).toBeVisible();
  });

  for (const [name, { troubles, hands }] of Object.entries(cast)) {
    hands.told(`A whole turn, ${name}`, 26);
    // The refusals that each page asked for on purpose, references asked for as the veil came down, the dropped line.
    expect(
      troubles.filter((text) => !/403|WebSocket|ERR_INTERNET_DISCONNECTED/.test(text)),
      name,
    ).toEqual([]);
  }
});
