/**
 * Where an invitation leads. The board's title is not shown here: a link may have gone astray, and whoever has
 * not entered sees nothing of a board. IO: the session, through server/access.
 */
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { EnterForm } from '#app/_enter/enter-form.tsx';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { readSession } from '#server/access/session.ts';
import { words } from '#words/shell.ts';

export const metadata: Metadata = { title: words.enter.title };

export default async function JoinPage({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params;
  const visitor = await readSession((await headers()).get('cookie'));
  return (
    <PlainPage lead={words.enter.invited}>
      <EnterForm
        entryKey={decodeURIComponent(token)}
        knownAs={visitor?.name ?? null}
        whatToDo={words.enter.badLinkInvite}
      />
    </PlainPage>
  );
}
