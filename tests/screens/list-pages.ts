/** Screens besides the board, the plan and the wall: ways in, the page of boards, oneself, house, groups, states. */
import { type At, quiet, type Screen } from './screen.ts';

/** Opens a page by its address and waits for its heading. */
const heading =
  (address: (at: At) => string, name: string | RegExp) =>
  async (at: At): Promise<void> => {
    await at.page.goto(`${at.url}${address(at)}`);
    await at.page.getByRole('heading', { name }).first().waitFor();
  };

/** The same, and what it says while it looks something up has gone again. */
const lookedUp =
  (address: (at: At) => string, name: string | RegExp, meanwhile: string) =>
  async (at: At): Promise<void> => {
    await heading(address, name)(at);
    await quiet(at.page);
    await at.page.getByText(meanwhile).waitFor({ state: 'hidden' });
  };

/** A page that is not there answers 404, which the browser logs. */
const MISSING = ['404'];
/** The cover of a board whose class looks in silence is not given; the place stays grey. */
const VEILED = ['403'];

export const PAGE_SCREENS: readonly Screen[] = [
  {
    ...{ name: 'enter', page: 'app/enter/page.tsx', who: 'stranger' },
    open: async ({ page, url, made }) => {
      await page.goto(`${url}/enter?key=${made.server.hostKey}`);
      await page.getByLabel('Your name').waitFor();
    },
  },
  {
    ...{ name: 'enter-without-key', page: 'app/enter/page.tsx', who: 'stranger' },
    open: heading(() => '/enter', 'This address needs its link'),
  },
  {
    ...{ name: 'enter-refused', page: 'app/enter/page.tsx', who: 'stranger', expects: ['403'] },
    open: async ({ page, url }) => {
      await page.goto(`${url}/enter?key=a-key-that-no-server-has-given`);
      await page.getByLabel('Your name').fill('Liv');
      await page.getByRole('button', { name: 'Enter' }).click();
      await page.getByText('A host link works once.').waitFor();
    },
  },
  {
    ...{ name: 'join', page: 'app/join/[token]/page.tsx', who: 'stranger' },
    open: async ({ page, url, made }) => {
      await page.goto(`${url}/join/${made.inviteToken}`);
      await page.getByLabel('Your name').waitFor();
    },
  },
  {
    ...{ name: 'join-ended', page: 'app/join/[token]/page.tsx', who: 'stranger', expects: ['403', '404'] },
    open: async ({ page, url }) => {
      await page.goto(`${url}/join/an-invitation-that-was-never-given`);
      await page.getByLabel('Your name').fill('Liv');
      await page.getByRole('button', { name: 'Enter' }).click();
      await page.getByText('Whoever sent it to you can make another').waitFor();
    },
  },
  {
    ...{ name: 'return', page: 'app/return/[token]/page.tsx', who: 'stranger' },
    open: heading(({ made }) => new URL(made.returnUrl).pathname, 'Welcome back'),
  },
  {
    ...{ name: 'return-ended', page: 'app/return/[token]/page.tsx', who: 'stranger', expects: MISSING },
    open: heading(() => '/return/no-such-link', 'This link does not work'),
  },
  {
    ...{ name: 'sign-in', page: 'app/sign-in/page.tsx', who: 'stranger' },
    open: heading(() => '/sign-in', 'Sign in'),
  },
  {
    ...{ name: 'boards-stranger', page: 'app/page.tsx', who: 'stranger' },
    open: heading(() => '/', 'Ask for a link'),
  },
  { ...{ name: 'boards', page: 'app/page.tsx', expects: VEILED }, open: heading(() => '/', 'Boards') },
  {
    ...{ name: 'boards-painter', page: 'app/page.tsx', who: 'painter' },
    open: heading(() => '/', 'Boards'),
  },
  {
    ...{ name: 'boards-new', page: 'app/page.tsx', expects: VEILED },
    open: async (at) => {
      await heading(() => '/', 'Boards')(at);
      await at.page.getByRole('button', { name: 'New board' }).first().click();
      await at.page.getByLabel('What is the scene?').waitFor();
    },
  },
  {
    ...{ name: 'boards-take-in', page: 'app/page.tsx', expects: VEILED },
    open: async (at) => {
      await heading(() => '/', 'Boards')(at);
      await at.page.getByRole('button', { name: 'Bring a board in from a file' }).first().click();
      await at.page.getByText('From a file that was taken away').waitFor();
    },
  },
  {
    ...{ name: 'nothing-there', page: 'app/page.tsx', who: 'stranger', expects: MISSING },
    open: heading(() => '/nothing-here', 'There is nothing at this address'),
  },
  {
    ...{ name: 'account', page: 'app/account/page.tsx', who: 'painter' },
    open: heading(() => '/account', 'You'),
  },
  {
    ...{ name: 'account-what-would-go', page: 'app/account/page.tsx', who: 'painter' },
    open: async (at) => {
      await heading(() => '/account', 'You')(at);
      await at.page.getByRole('button', { name: 'See what would go' }).click();
      await at.page.getByText(/^That is /).waitFor();
    },
  },
  {
    ...{ name: 'queue', page: 'app/queue/page.tsx' },
    open: lookedUp(() => '/queue', /./, 'Looking what waits'),
  },
  {
    ...{ name: 'queue-empty', page: 'app/queue/page.tsx', who: 'viewer' },
    open: heading(() => '/queue', /./),
  },
  {
    ...{ name: 'path', page: 'app/path/page.tsx', who: 'painter' },
    open: heading(() => '/path', 'Your path'),
  },
  {
    ...{ name: 'path-empty', page: 'app/path/page.tsx', who: 'viewer' },
    open: heading(() => '/path', 'Your path'),
  },
  { ...{ name: 'house', page: 'app/house/page.tsx' }, open: heading(() => '/house', 'Reports and records') },
  {
    ...{ name: 'group', page: 'app/groups/[groupId]/page.tsx' },
    open: heading(({ made }) => `/groups/${made.groupId}`, 'Thursday circle'),
  },
  {
    ...{ name: 'states', page: 'app/boards/[boardId]/paintings/[pictureId]/page.tsx' },
    open: async ({ page, url, made: { statesOf } }) => {
      await page.goto(`${url}/boards/${statesOf.boardId}/paintings/${statesOf.pictureId}`);
      await page.getByRole('heading', { name: 'In order of time' }).waitFor();
      await page.getByRole('img', { name: /state/ }).first().waitFor();
    },
  },
  { ...{ name: 'shared-parts', page: 'app/components/page.tsx' }, open: heading(() => '/components', /./) },
  {
    ...{ name: 'take-away', page: 'app/boards/[boardId]/take-away/page.tsx' },
    open: lookedUp(
      ({ made }) => `/boards/${made.boards.demo}/take-away`,
      /^Take away from/,
      'Looking what may go along',
    ),
  },
];
