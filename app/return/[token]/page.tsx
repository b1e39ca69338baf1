/** Where a link to come back by leads. Looking at it does not use it up. IO: store, through server/access. */
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import Link from 'next/link';
import { ReturnForm } from '#app/_account/return-form.tsx';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { ownerOfReturnLink } from '#server/access/account.ts';
import { readSession } from '#server/access/session.ts';
import { words } from '#words/shell.ts';

export const metadata: Metadata = { title: words.account.back.title };

export default async function ReturnPage({ params }: { params: Promise<{ token: string }> }) {
  const key = decodeURIComponent((await params).token);
  const [person, visitor] = await Promise.all([
    ownerOfReturnLink(key),
    readSession((await headers()).get('cookie')),
  ]);
  if (!person) {
    return (
      <PlainPage title={words.account.back.badTitle} lead={words.account.back.bad}>
        <p>
          <Link href="/sign-in">{words.account.signIn.title}</Link>
        </p>
      </PlainPage>
    );
  }
  const other = visitor && visitor.personId !== person.id ? visitor.name : null;
  return (
    <PlainPage title={words.account.back.title} lead={words.account.back.lead(person.name)}>
      <ReturnForm linkKey={key} name={person.name} email={person.email} knownAs={other} />
    </PlainPage>
  );
}
