/**
 * A PDF read by somebody else's programs: pdf.js for texts, fonts and where pictures lie, PDFium for how the page looks.
 * Places are in points from the page's upper left corner.
 */
import { PDFiumLibrary } from '@hyzyla/pdfium';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface PageText {
  text: string;
  /** Left end and line on which it stands. */
  x: number;
  y: number;
  width: number;
  /** Size of the letters. */
  size: number;
}

interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

export interface ReadPage {
  pages: number;
  width: number;
  height: number;
  texts: PageText[];
  /** All texts after one another, runs of white space as one. */
  text: string;
  pictures: Box[];
  fonts: { name: string; embedded: boolean }[];
}

type Matrix = readonly [number, number, number, number, number, number];

const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  a * g + c * h,
  b * g + d * h,
  a * i + c * j,
  b * i + d * j,
  a * k + c * l + e,
  b * k + d * l + f,
];

export async function readPdf(pdf: Uint8Array): Promise<ReadPage> {
  const task = getDocument({ data: new Uint8Array(pdf), verbosity: 0, useSystemFonts: false });
  const document = await task.promise;
  try {
    const page = await document.getPage(1);
    const [, , width = 0, height = 0] = page.view;
    const { items } = await page.getTextContent();
    const texts = items.flatMap((item): PageText[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [a = 0, b = 0, , , x = 0, y = 0] = item.transform as number[];
      return [{ text: item.str, x, y: height - y, width: item.width, size: Math.hypot(a, b) }];
    });
    const { fnArray, argsArray } = await page.getOperatorList();
    const names = new Set(
      fnArray.flatMap((op, at) => (op === OPS.setFont ? [String(argsArray[at][0])] : [])),
    );
    const fonts = [...names].map((name) => {
      const font = page.commonObjs.get(name) as { name: string; missingFile?: boolean };
      return { name: font.name, embedded: font.missingFile === false };
    });
    const all = items.map((item) => ('str' in item ? `${item.str}${item.hasEOL ? ' ' : ''}` : '')).join('');
    return {
      ...{ pages: document.numPages, width, height, texts, fonts },
      text: all.replace(/\s+/g, ' ').trim(),
      pictures: picturesOf(fnArray, argsArray as unknown[][], height),
    };
  } finally {
    await task.destroy();
  }
}

function picturesOf(ops: readonly number[], args: readonly unknown[][], pageHeight: number): Box[] {
  const pictures: Box[] = [];
  const kept: Matrix[] = [];
  let now: Matrix = [1, 0, 0, 1, 0, 0];
  ops.forEach((op, at) => {
    if (op === OPS.save) kept.push(now);
    else if (op === OPS.restore) now = kept.pop() ?? now;
    else if (op === OPS.transform) now = times(now, args[at] as unknown as Matrix);
    else if (op === OPS.paintImageXObject) pictures.push(boxOf(now, pageHeight));
  });
  return pictures;
}

/** A picture is painted into the unit square. */
function boxOf([a, , , d, e, f]: Matrix, pageHeight: number): Box {
  const [one, two] = [f, f + d];
  return {
    x: Math.min(e, e + a),
    y: pageHeight - Math.max(one, two),
    width: Math.abs(a),
    height: Math.abs(d),
  };
}

export interface GreyPage {
  width: number;
  height: number;
  /** Grey code at a place given in points, 0 black to 255 white. */
  at(x: number, y: number): number;
  /** The darkest grey code in a box given in points. */
  darkest(box: Box): number;
}

/** The page as a printer without colours shows it. @param dotsAnInch Of the picture. */
export async function greyPage(pdf: Uint8Array, dotsAnInch: number): Promise<GreyPage> {
  const library = await PDFiumLibrary.init();
  const document = await library.loadDocument(pdf);
  const scale = dotsAnInch / 72;
  const { data, width, height } = await document
    .getPage(0)
    .render({ scale, colorSpace: 'Gray', render: async (options) => options.data });
  document.destroy();
  library.destroy();
  const at = (x: number, y: number) => data[Math.round(y * scale) * width + Math.round(x * scale)] ?? 255;
  return {
    ...{ width, height, at },
    darkest(box) {
      let darkest = 255;
      for (let y = box.y; y <= box.y + box.height; y += 1 / scale)
        for (let x = box.x; x <= box.x + box.width; x += 1 / scale) darkest = Math.min(darkest, at(x, y));
      return darkest;
    },
  };
}
