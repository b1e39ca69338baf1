/** Where a host link leads: says what this is and asks for a name. IO: the session, through server/access. */
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import Link from 'next/link';
import { EnterForm } from '#app/_enter/enter-form.tsx';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { hostsBehind } from '#server/access/enter.ts';
import { readSession } from '#server/access/session.ts';
import { environment } from '#server/env.ts';
import { words } from '#words/shell.ts';

export const metadata: Metadata = { title: words.enter.title };

export default async function EnterPage({
  searchParams,
}: {
  searchParams: Promise<{ key?: string | string[] }>;
}) {
  const { key } = await searchParams;
  const visitor = await readSession((await headers()).get('cookie'));
  if (typeof key !== 'string' || key === '') {
    return (
      <PlainPage title={words.enter.noKeyTitle} lead={words.enter.noKey}>
        <p>
          <Link href="/">{words.enter.back}</Link>
        </p>
      </PlainPage>
    );
  }
  const hosts = visitor ? [] : await hostsBehind(key, environment().hostKey);
  return (
    <PlainPage lead={words.enter.lead}>
      <EnterForm
        entryKey={key}
        knownAs={visitor?.name ?? null}
        whatToDo={words.enter.badLinkHost}
        hosts={hosts.map(({ id, name, since }) => ({
          id,
          words: words.account.hostSince(name, since.toISOString()),
        }))}
      />
    </PlainPage>
  );
}
