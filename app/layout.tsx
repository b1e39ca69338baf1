/**
 * The frame of every page: typeface, greys, the language, and who is signed in. In the flow: request -> [layout] ->
 * page. IO: session, through server/access.
 *
 * Pages are rendered per request, because the security policy's nonce is new each time and a page rendered
 * earlier would never come alive in the browser.
 */
import '@fontsource-variable/source-sans-3/wght.css';
import './globals.css';
import type { Metadata, Viewport } from 'next';
import { headers } from 'next/headers';
import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { readSession } from '#server/access/session.ts';
import { ContactHere } from './_live/contact-here.tsx';
import { words } from './_words/en.ts';

export const metadata: Metadata = {
  title: { default: words.product, template: `%s · ${words.product}` },
  description: words.what,
  robots: { index: false, follow: false },
  referrer: 'same-origin',
};

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  viewportFit: 'cover',
  themeColor: '#848484',
};

export default async function RootLayout({ children }: { children: ReactNode }) {
  await connection();
  const visitor = await readSession((await headers()).get('cookie'));
  return (
    <html lang="en">
      <body>
        {children}
        <ContactHere personId={visitor?.personId ?? null} />
      </body>
    </html>
  );
}
