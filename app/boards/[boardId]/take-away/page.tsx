/** What can be taken away from a board, and brought onto it. Reads who asks and the board. IO: session and store. */
import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { TakeAway } from '#app/_outward/take-away.tsx';
import { outwardWords } from '#words/outward.ts';
import { words } from '#words/shell.ts';
import { boardAsAsked } from '../board-as-asked.ts';

interface TakeAwayProps {
  params: Promise<{ boardId: string }>;
}

export async function generateMetadata({ params }: TakeAwayProps): Promise<Metadata> {
  const board = await boardAsAsked((await params).boardId);
  return {
    title: board && board !== 'stranger' ? outwardWords.board.titleOf(board.title) : words.boards.title,
  };
}

export default async function TakeAwayPage({ params }: TakeAwayProps) {
  const board = await boardAsAsked((await params).boardId);
  if (board === 'stranger')
    return <PlainPage title={words.boards.stranger} lead={words.boards.strangerText} />;
  if (!board) notFound();
  return (
    <PlainPage title={outwardWords.board.titleOf(board.title)} lead={outwardWords.board.lead}>
      <TakeAway board={board} />
      <p>
        <Link href={`/boards/${encodeURIComponent(board.id)}`}>{outwardWords.board.back}</Link>
      </p>
    </PlainPage>
  );
}
