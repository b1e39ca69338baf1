/** The states of one painting, side by side. IO: session and store, through server/access. */
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { cache } from 'react';
import boards from '#app/_boards/boards.module.css';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { States } from '#app/_states/states.tsx';
import { PageHead } from '#app/_ui/page-head.tsx';
import { boardAsSeen } from '#server/access/consent.ts';
import { roleOn } from '#server/access/roles.ts';
import { readSession } from '#server/access/session.ts';
import { paintingStates } from '#server/access/states.ts';
import { words } from '#words/shell.ts';
import { statesWords } from '#words/states.ts';

interface StatesPageProps {
  params: Promise<{ boardId: string; pictureId: string }>;
}

/** Read once for title and page alike. 'stranger' without a session, null when there is no such painting for them. */
const readPainting = cache(async (boardId: string, pictureId: string) => {
  const visitor = await readSession((await headers()).get('cookie'));
  if (!visitor) return 'stranger';
  const role = await roleOn(visitor, boardId);
  const board = role && (await boardAsSeen(boardId, visitor, role));
  const state = board && paintingStates(board, pictureId).find(({ id }) => id === pictureId);
  return board && state ? { visitor, board, state } : null;
});

export async function generateMetadata({ params }: StatesPageProps): Promise<Metadata> {
  const { boardId, pictureId } = await params;
  const found = await readPainting(boardId, pictureId);
  if (!found || found === 'stranger') return { title: words.boards.title };
  return { title: statesWords.title(found.state.painter.name, found.state.caption) };
}

export default async function StatesPage({ params }: StatesPageProps) {
  const { boardId, pictureId } = await params;
  const found = await readPainting(boardId, pictureId);
  if (found === 'stranger')
    return <PlainPage title={words.boards.stranger} lead={words.boards.strangerText} />;
  if (!found) notFound();
  const { visitor, board, state } = found;
  return (
    <div className={boards.page}>
      <PageHead
        name={visitor.name}
        way={<Link href={`/boards/${board.id}`}>{statesWords.back(board.title)}</Link>}
      />
      <main className={boards.main}>
        <div className={boards.line}>
          <h1>{statesWords.title(state.painter.name, state.caption)}</h1>
        </div>
        <States boardId={board.id} pictureId={state.id} />
      </main>
    </div>
  );
}
