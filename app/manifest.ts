/** What a phone needs to keep the page among its apps. Pure. */
import type { MetadataRoute } from 'next';
import { LOCALE } from '#server/core/say/language.ts';
import { words } from '#words/shell.ts';
import { SURROUND } from './_ui/greys.ts';

export default function manifest(): MetadataRoute.Manifest {
  return {
    name: words.product,
    short_name: words.product,
    description: words.what,
    id: '/',
    start_url: '/',
    scope: '/',
    lang: LOCALE,
    dir: 'ltr',
    display: 'standalone',
    orientation: 'any',
    categories: ['education', 'graphics'],
    background_color: SURROUND,
    theme_color: SURROUND,
    icons: [
      { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml' },
      { src: '/apple-icon.png', sizes: '180x180', type: 'image/png' },
      { src: '/icon1.png', sizes: '192x192', type: 'image/png' },
      { src: '/icon2.png', sizes: '512x512', type: 'image/png' },
      // Its bars lie within the middle four fifths, so that a phone may cut it to a shape of its own.
      { src: '/icon3.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
  };
}
