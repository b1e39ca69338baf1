/** What a phone needs to keep the page among its apps. Pure. */
import type { MetadataRoute } from 'next';
import { words } from './_words/en.ts';

export default function manifest(): MetadataRoute.Manifest {
  return {
    name: words.product,
    short_name: words.product,
    description: words.what,
    start_url: '/',
    display: 'standalone',
    background_color: '#848484',
    theme_color: '#848484',
    icons: [
      { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml' },
      { src: '/apple-icon.png', sizes: '180x180', type: 'image/png' },
    ],
  };
}
