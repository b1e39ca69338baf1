/** One board: reads who asks and the board from the store, hands both to the workspace. IO: session and store. */
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { Workspace } from '#app/_workspace/workspace.tsx';
import { services } from '#server/http/services.ts';
import { words } from '#words/shell.ts';
import { boardAsAsked } from './board-as-asked.ts';

interface BoardPageProps {
  params: Promise<{ boardId: string }>;
}

export async function generateMetadata({ params }: BoardPageProps): Promise<Metadata> {
  const board = await boardAsAsked((await params).boardId);
  return { title: board && board !== 'stranger' ? board.title : words.boards.title };
}

export default async function BoardPage({ params }: BoardPageProps) {
  const board = await boardAsAsked((await params).boardId);
  if (board === 'stranger')
    return <PlainPage title={words.boards.stranger} lead={words.boards.strangerText} />;
  if (!board) notFound();
  return <Workspace key={board.id} board={board} veiled={await services().isVeiled(board.id)} />;
}
