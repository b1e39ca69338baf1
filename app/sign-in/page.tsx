/** Signing in with e-mail and password. IO: the session, through server/access. */
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { SignInForm } from '#app/_account/sign-in-form.tsx';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { readSession } from '#server/access/session.ts';
import { words } from '#words/shell.ts';

export const metadata: Metadata = { title: words.account.signIn.title };

export default async function SignInPage() {
  const visitor = await readSession((await headers()).get('cookie'));
  return (
    <PlainPage title={words.account.signIn.title} lead={words.account.signIn.lead}>
      <SignInForm knownAs={visitor?.name ?? null} />
    </PlainPage>
  );
}
