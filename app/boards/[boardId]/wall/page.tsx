/** The wall of a board: its paintings beside one another. Reads who asks and what they may see. IO: session and store. */
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { notFound } from 'next/navigation';
import { cache } from 'react';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { WallPage } from '#app/_wall/wall-page.tsx';
import { roleOn } from '#server/access/roles.ts';
import { readSession } from '#server/access/session.ts';
import { wallFor } from '#server/http/wall.ts';
import { words } from '#words/shell.ts';
import { wallWords } from '#words/wall.ts';

interface WallOfBoardProps {
  params: Promise<{ boardId: string }>;
}

/**
 * Read once for title and page alike; not the board itself, which tells who painted what. 'stranger' without a session,
 * null when there is no such board for them.
 */
const wallAsAsked = cache(async (boardId: string) => {
  const visitor = await readSession((await headers()).get('cookie'));
  if (!visitor) return 'stranger';
  const role = await roleOn(visitor, boardId);
  return role ? wallFor(boardId, { visitor, role }) : null;
});

export async function generateMetadata({ params }: WallOfBoardProps): Promise<Metadata> {
  const wall = await wallAsAsked((await params).boardId);
  return { title: wall && wall !== 'stranger' ? wallWords.titleOf(wall.title) : words.boards.title };
}

export default async function WallOfBoard({ params }: WallOfBoardProps) {
  const wall = await wallAsAsked((await params).boardId);
  if (wall === 'stranger')
    return <PlainPage title={words.boards.stranger} lead={words.boards.strangerText} />;
  if (!wall) notFound();
  return <WallPage key={wall.boardId} wall={wall} />;
}
