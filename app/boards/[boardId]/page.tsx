/** One board: reads who asks and the board from the store, hands both to the workspace. IO: session and store. */
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { notFound } from 'next/navigation';
import { cache } from 'react';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { words } from '#app/_words/en.ts';
import { Workspace } from '#app/_workspace/workspace.tsx';
import { boardAsSeen } from '#server/access/consent.ts';
import { roleOn } from '#server/access/roles.ts';
import { readSession } from '#server/access/session.ts';
import { services } from '#server/http/services.ts';

interface BoardPageProps {
  params: Promise<{ boardId: string }>;
}

/** Read once for title and page alike. 'stranger' without a session, null when there is no such board for them. */
const readBoard = cache(async (boardId: string) => {
  const visitor = await readSession((await headers()).get('cookie'));
  if (!visitor) return 'stranger';
  const role = await roleOn(visitor, boardId);
  return role ? boardAsSeen(boardId, visitor, role) : null;
});

export async function generateMetadata({ params }: BoardPageProps): Promise<Metadata> {
  const board = await readBoard((await params).boardId);
  return { title: board && board !== 'stranger' ? board.title : words.boards.title };
}

export default async function BoardPage({ params }: BoardPageProps) {
  const board = await readBoard((await params).boardId);
  if (board === 'stranger')
    return <PlainPage title={words.boards.stranger} lead={words.boards.strangerText} />;
  if (!board) notFound();
  return <Workspace key={board.id} board={board} veiled={await services().isVeiled(board.id)} />;
}
