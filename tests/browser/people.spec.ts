/** People: staying oneself on another device, coming back, becoming something else, and the end of access. */
import type { Page } from '@playwright/test';
import type { InviteView } from '#server/core/contract/responses.ts';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { barriersOf } from './barriers.ts';
import { expect, test } from './story.ts';

const PASSWORD = 'reeds at the weir';

async function aBoard(server: AServer, who: Entered): Promise<string> {
  const { id } = await server.json<{ id: string }>(who, '/api/boards', 'POST', { title: 'The weir' });
  return id;
}

async function anInvite(server: AServer, who: Entered, boardId: string, role: string, ward?: string) {
  const body = { role, hours: 1, ...(ward === undefined ? {} : { ward }) };
  return server.json<InviteView>(who, `/api/boards/${boardId}/invites`, 'POST', body);
}

const showPeople = (page: Page) => page.getByRole('button', { name: /^People/ }).click();

test('a guest gives e-mail and password and is the same person on another device', async ({
  guest,
  browser,
  server,
}) => {
  const { page, who } = await guest('Agda');
  await page.goto(server.url);
  await page.getByRole('link', { name: 'You', exact: true }).click();
  await page.getByLabel('E-mail address').fill('agda@example.org');
  await page.getByLabel('Password', { exact: true }).fill(PASSWORD);
  expect(await barriersOf(page), 'oneself').toEqual([]);
  await page.getByRole('button', { name: 'Keep it' }).click();
  await expect(page.getByText('You sign in with agda@example.org.')).toBeVisible();

  const elsewhere = await browser.newContext();
  const other = await elsewhere.newPage();
  await other.goto(server.url);
  await other.getByRole('link', { name: 'Sign in' }).click();
  await other.getByLabel('E-mail address').fill('agda@example.org');
  await other.getByLabel('Password').fill('not the right one');
  await other.getByRole('button', { name: 'Sign in' }).click();
  await expect(other.getByText(/do not belong together/)).toBeVisible();
  expect(await barriersOf(other), 'signing in').toEqual([]);
  await other.getByLabel('Password').fill(PASSWORD);
  await other.getByRole('button', { name: 'Sign in' }).click();
  // Two passwords are worked through by then, each made slow on purpose.
  await expect(other.getByText('You are here as Agda.')).toBeVisible({ timeout: 45_000 });
  const me = await other.evaluate(async () => (await fetch('/api/me')).json());
  expect(me).toEqual({ id: who.id, name: 'Agda' });
  await elsewhere.close();
});

test('who lost their cookie comes back by a link of the host', async ({ guest, browser, server }) => {
  const host = await guest('Hedda');
  const boardId = await aBoard(server, host.who);
  const { token } = await anInvite(server, host.who, boardId, 'painter');
  const painter = await server.enter('Pelle', token);
  await host.page.goto(`${server.url}/boards/${boardId}`);
  await showPeople(host.page);
  await host.page.getByRole('button', { name: 'Make a link for Pelle to come back' }).click();
  const link = await host.page.getByLabel('Give this link to Pelle and to nobody else').inputValue();

  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(link);
  expect(await barriersOf(page), 'coming back').toEqual([]);
  await page.getByRole('button', { name: 'Go on as Pelle' }).click();
  await expect(page.getByText('You are here as Pelle.')).toBeVisible();
  expect(await page.evaluate(async () => (await fetch('/api/me')).json())).toEqual({
    id: painter.id,
    name: 'Pelle',
  });
  await page.goto(link);
  await expect(page.getByRole('heading', { name: 'This link does not work' })).toBeVisible();
  await context.close();
});

test('somebody becomes something else while they look, and is told when their access ends', async ({
  guest,
  server,
}) => {
  const host = await guest('Hedda');
  const boardId = await aBoard(server, host.who);
  const { token } = await anInvite(server, host.who, boardId, 'viewer');
  const looker = await guest('Viggo', token);
  await looker.page.goto(`${server.url}/boards/${boardId}`);
  const post = looker.page.getByRole('button', { name: 'Choose files' });
  await expect(looker.page.getByRole('heading', { name: 'The weir' })).toBeVisible();
  await expect(post).toHaveCount(0);

  await host.page.goto(`${server.url}/boards/${boardId}`);
  await showPeople(host.page);
  await host.page.getByLabel('What Viggo is here').selectOption('painter');
  await expect(post).toBeVisible();

  await host.page.getByRole('button', { name: 'End Viggo’s access?' }).click();
  await host.page.getByRole('button', { name: 'End access', exact: true }).click();
  await expect(looker.page.getByText(/you are not on it|access to this board has ended/).first()).toBeVisible(
    {
      timeout: 5_000,
    },
  );
});
