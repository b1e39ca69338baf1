/** What a phone is told so that it keeps the page among its apps: the icons it names are there, at the size it names. */
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import manifest from '#app/manifest.ts';

const fileOf = (src: string) => fileURLToPath(new URL(`../../app${src}`, import.meta.url));
const { icons = [], ...told } = manifest();
const pngs = icons.filter(({ type }) => type === 'image/png');

test('every icon has the size that is told of it, and the usual sizes are there', async () => {
  for (const { src, sizes } of pngs) {
    const { width, height, format } = await sharp(fileOf(src)).metadata();
    expect(`${width}x${height} ${format}`).toBe(`${sizes} png`);
  }
  expect(pngs.map(({ sizes }) => sizes)).toEqual(expect.arrayContaining(['192x192', '512x512']));
});

test('it says where the app begins, where it ends, and in which language it is', () => {
  expect(told).toMatchObject({ id: '/', start_url: '/', scope: '/', display: 'standalone', dir: 'ltr' });
  expect(told.lang).toMatch(/^en/);
});

test('what an icon that may be cut shows lies in the circle that is always kept', async () => {
  // W3C, Web Application Manifest, "Icon masks and safe zone": a circle of two fifths of the icon's size.
  const maskable = icons.find(({ purpose }) => purpose === 'maskable');
  const { data, info } = await sharp(fileOf(maskable?.src ?? ''))
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const ground = data.subarray(0, 3);
  let outside = 0;
  let inside = 0;
  for (let at = 0; at < info.width * info.height; at++) {
    const differs = [0, 1, 2].some(
      (channel) => Math.abs((data[at * 3 + channel] ?? 0) - (ground[channel] ?? 0)) > 8,
    );
    if (!differs) continue;
    const [x, y] = [
      (at % info.width) + 0.5 - info.width / 2,
      Math.floor(at / info.width) + 0.5 - info.height / 2,
    ];
    if (Math.hypot(x, y) > 0.4 * info.width) outside++;
    else inside++;
  }
  expect(outside).toBe(0);
  expect(inside).toBeGreaterThan(1000);
});
