/** A painter's path over boards: one's own, or with `?person=` that of somebody one teaches. IO: session and store. */
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import boards from '#app/_boards/boards.module.css';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { Path } from '#app/_path/path.tsx';
import { PageHead } from '#app/_ui/page-head.tsx';
import { pathOf, pathPeople } from '#server/access/path.ts';
import { readSession } from '#server/access/session.ts';
import type { StatePair } from '#server/core/contract/states.ts';
import { services } from '#server/http/services.ts';
import { pathWords } from '#words/path.ts';
import { words } from '#words/shell.ts';

export const metadata: Metadata = { title: pathWords.title };

interface PathPageProps {
  searchParams: Promise<{ person?: string | string[] }>;
}

export default async function PathPage({ searchParams }: PathPageProps) {
  const visitor = await readSession((await headers()).get('cookie'));
  if (!visitor) return <PlainPage title={words.boards.stranger} lead={words.boards.strangerText} />;
  const { person } = await searchParams;
  const personId = typeof person === 'string' ? person : visitor.personId;
  const desk = {
    isVeiled: (boardId: string) => services().isVeiled(boardId),
    compared: (pair: StatePair) => services().statesCompared(pair),
  };
  const view = await pathOf(visitor, personId, desk);
  if (!view) notFound();
  const people = view.mine ? await pathPeople(visitor) : [];
  return (
    <div className={boards.page}>
      <PageHead name={visitor.name} />
      <main className={boards.main}>
        <div className={boards.line}>
          <h1>{view.mine ? pathWords.title : pathWords.titleOf(view.person.name)}</h1>
          {view.mine ? null : <Link href="/path">{pathWords.link}</Link>}
        </div>
        <Path view={view} people={people} />
      </main>
    </div>
  );
}
