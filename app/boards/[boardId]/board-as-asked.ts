/** Who asks for a board, and the board as they may see it: for its pages. IO: session and store. */
import { headers } from 'next/headers';
import { cache } from 'react';
import { boardAsSeen } from '#server/access/consent.ts';
import { roleOn } from '#server/access/roles.ts';
import { readSession } from '#server/access/session.ts';

/** Read once for title and page alike. 'stranger' without a session, null when there is no such board for them. */
export const boardAsAsked = cache(async (boardId: string) => {
  const visitor = await readSession((await headers()).get('cookie'));
  if (!visitor) return 'stranger';
  const role = await roleOn(visitor, boardId);
  return role ? boardAsSeen(boardId, visitor, role) : null;
});
