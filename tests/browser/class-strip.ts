/** A class as browser tests find it: its strip over the pictures, and links that bring people to it. */
import type { Page } from '@playwright/test';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';

export async function anInvite(
  server: AServer,
  who: Entered,
  boardId: string,
  role: string,
): Promise<string> {
  const path = `/api/boards/${boardId}/invites`;
  const { token } = await server.json<{ token: string }>(who, path, 'POST', { role, hours: 2 });
  return token;
}

export const strip = (page: Page) => page.getByRole('region', { name: 'Class', exact: true });
