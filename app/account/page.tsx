/** Oneself: e-mail and password, and signing out. IO: session and store, through server/access. */
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import Link from 'next/link';
import { Account } from '#app/_account/account.tsx';
import { BlockedList } from '#app/_decency/blocked-list.tsx';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { DeleteMe } from '#app/_outward/delete-me.tsx';
import { OwnData } from '#app/_outward/own-data.tsx';
import { accountOf } from '#server/access/account.ts';
import { readSession } from '#server/access/session.ts';
import { words } from '#words/shell.ts';

export const metadata: Metadata = { title: words.account.account.title };

export default async function AccountPage() {
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
  const { email } = await accountOf(visitor);
  return (
    <PlainPage title={words.account.account.title} lead={words.account.account.here(visitor.name)}>
      <Account email={email} />
      <BlockedList />
      <OwnData />
      <DeleteMe />
      <p>
        <Link href="/">{words.enter.back}</Link>
      </p>
    </PlainPage>
  );
}
