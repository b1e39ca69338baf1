/** What waits for the caller's look, over all their boards. IO: session and store, through server/access. */
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import Link from 'next/link';
import boards from '#app/_boards/boards.module.css';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { Queue } from '#app/_queue/queue.tsx';
import { PageHead } from '#app/_ui/page-head.tsx';
import { readSession } from '#server/access/session.ts';
import { queueWords } from '#words/queue.ts';
import { words } from '#words/shell.ts';

export const metadata: Metadata = { title: queueWords.page.title };

export default async function QueuePage() {
  const visitor = await readSession((await headers()).get('cookie'));
  if (!visitor) {
    return (
      <PlainPage title={words.boards.stranger} lead={words.boards.strangerText}>
        <p>
          <Link href="/sign-in">{words.account.signIn.title}</Link>
        </p>
      </PlainPage>
    );
  }
  return (
    <div className={boards.page}>
      <PageHead name={visitor.name} />
      <main className={boards.main}>
        <Queue />
      </main>
    </div>
  );
}
