/**
 * The first page of a PDF as a PNG, so that a sheet can be looked at where no PDF can.
 *
 * In the flow: server/sheet -> [page-png] -> handler. PDFium, compiled to WebAssembly, draws the very page that is
 * printed; libvips encodes. A page that would be too large to send is drawn coarser. IO: none but the WebAssembly file,
 * read once.
 */
import { PDFiumLibrary } from '@hyzyla/pdfium';
import sharp from 'sharp';

const POINTS_AN_INCH = 72;

let library: Promise<PDFiumLibrary> | null = null;

/** Dots an inch that are tried, the finest first: a print, and what a screen still shows sharp. */
const FINENESS = [200, 170, 144] as const;

/** @returns PNG in sRGB, on white, with its resolution written in; the finest of at most `mostBytes`, else the coarsest. */
export async function firstPagePng(pdf: Uint8Array, mostBytes: number): Promise<Buffer> {
  let png: Buffer = Buffer.alloc(0);
  for (const dotsAnInch of FINENESS) {
    png = await drawnAt(pdf, dotsAnInch);
    if (png.byteLength <= mostBytes) break;
  }
  return png;
}

async function drawnAt(pdf: Uint8Array, dotsAnInch: number): Promise<Buffer> {
  library ??= PDFiumLibrary.init();
  const document = await (await library).loadDocument(pdf);
  try {
    const page = document.getPage(0);
    const { data, width, height } = await page.render({
      scale: dotsAnInch / POINTS_AN_INCH,
      render: async ({ data: rgba }) => rgba,
    });
    return await sharp(data, { raw: { width, height, channels: 4 } })
      .flatten({ background: '#ffffff' })
      .withMetadata({ density: dotsAnInch })
      .png({ compressionLevel: 8, adaptiveFiltering: true })
      .toBuffer();
  } finally {
    document.destroy();
  }
}
