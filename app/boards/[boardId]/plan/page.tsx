/** The plan of a board: what to paint, settled before painting. Reads who asks and the board. IO: session and store. */
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { PlanPage } from '#app/_plan/plan-page.tsx';
import { services } from '#server/http/services.ts';
import { planWords } from '#words/plan.ts';
import { words } from '#words/shell.ts';
import { boardAsAsked } from '../board-as-asked.ts';

interface PlanOfBoardProps {
  params: Promise<{ boardId: string }>;
  searchParams: Promise<{ picture?: string | string[] }>;
}

export async function generateMetadata({ params }: PlanOfBoardProps): Promise<Metadata> {
  const board = await boardAsAsked((await params).boardId);
  return {
    title: board && board !== 'stranger' ? planWords.titleOf(board.title) : words.boards.title,
  };
}

export default async function PlanOfBoard({ params, searchParams }: PlanOfBoardProps) {
  const board = await boardAsAsked((await params).boardId);
  if (board === 'stranger')
    return <PlainPage title={words.boards.stranger} lead={words.boards.strangerText} />;
  if (!board) notFound();
  const { picture } = await searchParams;
  const asked = typeof picture === 'string' ? picture : null;
  return (
    <PlanPage key={board.id} board={board} veiled={await services().isVeiled(board.id)} askedId={asked} />
  );
}
