/**
 * Every shared part in every state, for contributors: the host alone sees it. No page leads here. IO: session, through server/access.
 */
import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { notFound } from 'next/navigation';
import { AllParts } from '#app/_components/all-parts.tsx';
import { readSession } from '#server/access/session.ts';
import { componentWords } from '#words/components.ts';

export const metadata: Metadata = { title: componentWords.title };

export default async function ComponentsPage() {
  const visitor = await readSession((await headers()).get('cookie'));
  if (!visitor?.isHost) notFound();
  return <AllParts name={visitor.name} />;
}
