/**
 * The frame of every page: typeface, greys, the language, and who is signed in. In the flow: request -> [layout] ->
 * page. IO: session, through server/access.
 *
 * Pages are rendered per request, because the security policy's nonce is new each time and a page rendered
 * earlier would never come alive in the browser.
 */
import '@fontsource-variable/source-sans-3/wght.css';
import './language.css';
import './globals.css';
import type { Metadata, Viewport } from 'next';
import { headers } from 'next/headers';
import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { readSession } from '#server/access/session.ts';
import { LANGUAGE } from '#server/core/say/language.ts';
import { words } from '#words/shell.ts';
import { EarlyPresses } from './_early/early-presses.tsx';
import { EARLY_SCRIPT } from './_early/early-script.ts';
import { ContactHere } from './_live/contact-here.tsx';
import { SURROUND } from './_ui/greys.ts';

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
  themeColor: SURROUND,
};

export default async function RootLayout({ children }: { children: ReactNode }) {
  await connection();
  const asked = await headers();
  const visitor = await readSession(asked.get('cookie'));
  return (
    <html lang={LANGUAGE}>
      <head>
        {/* Browsers hide the nonce from the page, so that it never is what the server wrote. */}
        <script nonce={nonceOf(asked.get('content-security-policy'))} suppressHydrationWarning>
          {EARLY_SCRIPT}
        </script>
      </head>
      <body>
        {children}
        <EarlyPresses />
        <ContactHere personId={visitor?.personId ?? null} />
      </body>
    </html>
  );
}

/** The number that lets a script of ours run, as the policy on the request names it. */
function nonceOf(policy: string | null): string | undefined {
  return /'nonce-([^']+)'/.exec(policy ?? '')?.[1];
}
