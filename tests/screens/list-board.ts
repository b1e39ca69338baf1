/** The board screen and its states, on the demo board unless the name says otherwise. */
import type { Locator, Page } from '@playwright/test';
import { type At, isNarrow, quiet, type Screen } from './screen.ts';

const BOARD = 'app/boards/[boardId]/page.tsx';

type BoardName = keyof At['made']['boards'];

const stageOf = (page: Page, side: 'Reference' | 'Painting'): Locator =>
  page.getByRole('application', { name: new RegExp(`^${side}`) });

async function openBoard({ page, url, made }: At, name: BoardName): Promise<void> {
  await page.goto(`${url}/boards/${made.boards[name]}`);
  await stageOf(page, 'Painting').or(stageOf(page, 'Reference')).locator('img').first().waitFor();
}

/** The board's own records have come, so that it no longer says that it fetches them. */
const fetched = (page: Page): Promise<void> =>
  page.getByText('Fetching the planes').waitFor({ state: 'hidden' });

/** The painting where it is shown: squared, and in the light of its cards, which is worked out on the spot. */
async function paintingRighted({ page }: At): Promise<void> {
  const painting = stageOf(page, 'Painting');
  if (await painting.isVisible()) await painting.locator('canvas').first().waitFor();
}

/** What a way of looking lays over every picture shown is drawn. */
const softened = ({ page }: At): Promise<unknown> =>
  page.waitForFunction(() => {
    const stages = [...document.querySelectorAll('[role="application"]')];
    return stages.every((stage) => stage.querySelector('canvas[data-drawn]') !== null);
  });

/** The demo board with its figures there. */
async function openDemo(at: At): Promise<void> {
  await openBoard(at, 'demo');
  await at.page
    .getByRole('heading', { name: 'Ladder' })
    .or(at.page.getByRole('tab', { name: 'Ladder' }))
    .first()
    .waitFor();
  await at.page
    .getByRole('region', { name: 'Ladder' })
    .getByTitle(/on the pictures$/)
    .first()
    .waitFor();
  await paintingRighted(at);
}

/** A state of the demo board, reached by what it offers. */
function demo(name: string, go: (at: At) => Promise<void>, who: Screen['who'] = 'host'): Screen {
  const open = async (at: At) => {
    await openDemo(at);
    await go(at);
  };
  return { name: `board-${name}`, page: BOARD, who, open };
}

async function leaf({ page }: At, name: string): Promise<void> {
  await page.getByRole('tab', { name }).click();
}

/** Cards and readings of the demo: they stay folded until one has read what the painter wanted. */
async function cards(at: At): Promise<void> {
  await leaf(at, 'Talk');
  await press(at, 'Now the cards and readings');
}

/** By the whole name, beside which a key may stand: a remark whose words hold the name is a button as well. */
const press = ({ page }: At, name: string | RegExp) =>
  page
    .getByRole('button', { name: typeof name === 'string' ? new RegExp(`^${name}( ?[A-Z0-9])?$`) : name })
    .first()
    .click();

/** A place on the painting, 0..1 of it; one where no mark lies, which would be opened. */
async function tap({ page }: At, x: number, y: number): Promise<void> {
  const box = await stageOf(page, 'Painting').locator('img').first().boundingBox();
  if (!box) throw new Error('The painting is not on the screen.');
  await page.mouse.click(box.x + x * box.width, box.y + y * box.height);
}

async function letter(at: At, key: string): Promise<void> {
  await at.page.locator('body').press(key);
}

const showPainting = async (at: At) => {
  if (isNarrow(at))
    await at.page
      .getByRole('group', { name: 'Which picture is shown' })
      .getByRole('button', { name: 'Painting' })
      .click();
};

async function chooseFile({ page }: At, name: string, mimeType: string, bytes: Buffer): Promise<void> {
  await page.locator('input[type=file][multiple]').first().setInputFiles({ name, mimeType, buffer: bytes });
  await page.getByRole('dialog', { name: 'Post pictures' }).waitFor();
}

export const BOARD_SCREENS: readonly Screen[] = [
  {
    ...{ name: 'board-missing', page: BOARD, expects: ['404'] },
    open: async ({ page, url }) => {
      await page.goto(`${url}/boards/no-such-board`);
      await page.getByRole('heading', { name: 'There is no such board for you' }).waitFor();
    },
  },
  {
    ...{ name: 'board-empty', page: BOARD },
    open: async ({ page, url, made }) => {
      await page.goto(`${url}/boards/${made.boards.empty}`);
      await page.getByRole('heading', { name: 'Begin with a picture' }).waitFor();
      await fetched(page);
    },
  },
  {
    ...{ name: 'board-posting', page: BOARD },
    open: async (at) => {
      await openBoard(at, 'bare');
      const bytes = await at.made.server.call(
        at.made.host,
        `/api/boards/${at.made.boards.bare}/pictures/${at.made.statesOf.pictureId}/640`,
      );
      await chooseFile(at, 'third evening.jpg', 'image/jpeg', Buffer.from(await bytes.arrayBuffer()));
    },
  },
  {
    ...{ name: 'board-refused-file', page: BOARD, expects: ['415', '400', '422'] },
    open: async (at) => {
      await openBoard(at, 'bare');
      await chooseFile(
        at,
        'notes.jpg',
        'image/jpeg',
        Buffer.from('Only words about a picture.\n'.repeat(20)),
      );
      await at.page.getByRole('dialog').getByRole('radio', { name: 'A painting' }).check();
      await press(at, 'Post it');
      await at.page
        .getByText(/not a picture/)
        .first()
        .waitFor();
    },
  },
  {
    ...{ name: 'board-without-planes', page: BOARD },
    open: async (at) => {
      await openBoard(at, 'bare');
      await at.page.getByRole('button', { name: 'Find the planes' }).waitFor();
    },
  },
  {
    ...{ name: 'board-finding-planes', page: BOARD },
    open: async (at) => {
      await openBoard(at, 'bare');
      await press(at, 'Find the planes');
      await at.page.getByRole('radio', { name: /^Four planes/ }).click();
      await at.page.getByRole('button', { name: 'Take these four planes' }).waitFor();
    },
  },
  demo('first-look', async () => undefined),
  demo('onlooker', async () => undefined, 'viewer'),
  demo('air', (at) => at.page.getByRole('button', { name: 'Air', exact: true }).click()),
  demo('words', async (at) => {
    await press(at, 'What the words mean');
    await at.page.getByRole('dialog').getByText('Aerial perspective').waitFor();
  }),
  demo('table', (at) => at.page.getByRole('button', { name: 'Table', exact: true }).click()),
  demo('talk', (at) => leaf(at, 'Talk')),
  demo('card-open', async (at) => {
    await cards(at);
    await at.page.getByText('Why', { exact: true }).first().click();
    await at.page.getByRole('button', { name: 'I’ll do this' }).first().scrollIntoViewIfNeeded();
  }),
  demo('readings', async (at) => {
    await cards(at);
    await at.page.getByText(/^All \d+ readings$/).click();
  }),
  demo('planes', (at) => leaf(at, 'Planes')),
  demo('plane-open', async (at) => {
    await leaf(at, 'Planes');
    await at.page.getByRole('button', { name: /^Plane 2, / }).click();
  }),
  demo('photo', (at) => leaf(at, 'Photo')),
  demo('outlining', async (at) => {
    await press(at, 'Outline');
    await at.page.getByRole('button', { name: /^Plane 2, / }).click();
  }),
  demo('squaring-up', (at) => press(at, 'Square up')),
  demo('marking', (at) => press(at, 'Mark')),
  demo('mark-being-written', async (at) => {
    await press(at, 'Mark');
    await showPainting(at);
    await quiet(at.page);
    await tap(at, 0.2, 0.85);
    await at.page.getByLabel('What do you see here?').fill('The wood could lose a few of its small lights.');
  }),
  demo('remark-open', async (at) => {
    await leaf(at, 'Talk');
    await at.page
      .getByRole('button', { name: /^Show remark/ })
      .first()
      .click();
  }),
  demo('squint', async (at) => {
    await press(at, 'Squint');
    await softened(at);
  }),
  demo('over-one-another', async (at) => {
    await letter(at, 'a');
    await at.page.getByRole('slider', { name: /^Edge between the two pictures/ }).waitFor();
  }),
  demo('ways-of-looking', (at) => press(at, /Ways of looking/)),
  demo('values', async (at) => {
    await press(at, 'Values');
    await softened(at);
  }),
  demo('nine-steps', (at) => letter(at, '9')),
  demo('patches', async (at) => {
    await press(at, 'Patch');
    await showPainting(at);
    // The hand comes with a script of its own.
    await quiet(at.page);
    const untaken = at.page.getByText('not taken yet');
    await tap(at, 0.7, 0.25);
    await untaken.nth(1).waitFor({ state: 'hidden' });
    await tap(at, 0.6, 0.8);
    await untaken.first().waitFor({ state: 'hidden' });
  }),
  demo('guess', (at) => letter(at, 'u')),
  demo('dark-surround', (at) => letter(at, 'b')),
  demo('light-surround', async (at) => {
    await letter(at, 'b');
    await letter(at, 'b');
  }),
  demo('keys', async (at) => {
    await letter(at, '?');
    await at.page.getByRole('dialog', { name: 'Keys' }).waitFor();
  }),
  demo('more', (at) => at.page.getByText('More', { exact: true }).click()),
  demo('deleting', async (at) => {
    await at.page.getByText('More', { exact: true }).click();
    await press(at, /^Delete the board/);
    await at.page.getByRole('dialog', { name: 'Delete this board' }).waitFor();
  }),
  demo('people', async (at) => {
    await press(at, /^People/);
    await at.page.getByRole('dialog', { name: 'People' }).waitFor();
  }),
  demo('beginning-a-class', async (at) => {
    await leaf(at, 'Talk');
    await press(at, 'Begin a class');
    await at.page.getByRole('dialog', { name: 'Begin a class' }).waitFor();
  }),
  {
    ...demo('line-down', async (at) => {
      await at.page.context().setOffline(true);
      await at.page
        .getByText(/^The line has been down since/)
        .first()
        .waitFor();
    }),
    expects: ['ERR_INTERNET_DISCONNECTED', 'ERR_NETWORK', 'WebSocket'],
  },
  {
    ...{ name: 'board-class-silent', page: BOARD, expects: ['403'] },
    open: async (at) => {
      await openBoard(at, 'silent');
      await fetched(at.page);
    },
  },
  {
    ...{ name: 'board-class-priorities', page: BOARD },
    open: async (at) => {
      await openBoard(at, 'priorities');
      await fetched(at.page);
    },
  },
];
