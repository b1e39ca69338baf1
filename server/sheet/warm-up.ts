/**
 * What the first sheet of a process would wait for, done beforehand: the typeface read, a page laid out, PDFium loaded.
 *
 * In the flow: pipeline/sheet-worker -> [warm-up]. IO: reads the typeface and the WebAssembly file.
 */
import { Document, Page, renderToBuffer, Text } from '@react-pdf/renderer';
import { createElement } from 'react';
import { firstPagePng } from '../imaging/page-png.ts';
import { FAMILIES, loadTypeface, WEIGHTS } from './typeface.ts';

/** @returns The page of nothing as a PNG. */
export async function warmUp(): Promise<Uint8Array> {
  await loadTypeface();
  // Each cut that a sheet is usually set in, for it is prepared with its first letters.
  const lines = WEIGHTS.map((fontWeight) =>
    // The library takes a list of families; its types know one alone.
    createElement(
      Text,
      { key: fontWeight, style: { fontFamily: FAMILIES as unknown as string, fontWeight } },
      'Aa 1',
    ),
  );
  const page = createElement(Document, null, createElement(Page, { size: 'A6' }, ...lines));
  return firstPagePng(new Uint8Array(await renderToBuffer(page)), Number.POSITIVE_INFINITY);
}
