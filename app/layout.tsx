/**
 * The frame of every page: typeface, greys, the language. In the flow: request -> [layout] -> page.
 *
 * Pages are rendered per request, because the security policy's nonce is new each time and a page rendered
 * earlier would never come alive in the browser.
 */
import '@fontsource-variable/source-sans-3/wght.css';
import './globals.css';
import type { Metadata, Viewport } from 'next';
import { connection } from 'next/server';
import type { ReactNode } from 'react';
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
  return (
    <html lang="en">
      <body>{children}</body>
    </html>
  );
}
