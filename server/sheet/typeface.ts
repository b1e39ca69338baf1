/**
 * The typeface of the sheets: Source Sans 3, static cuts from its own package, put into every PDF.
 *
 * In the flow: [typeface] -> drawing. The cuts come by script, each a file of its own; a text takes its letters from the
 * first that has them. IO: reads the files, once.
 */
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { Font } from '@react-pdf/renderer';
import { LANGUAGE } from '../core/say/language.ts';

const SCRIPTS = ['latin', 'latin-ext', 'greek', 'cyrillic', 'vietnamese'] as const;
export const WEIGHTS = [400, 600, 700] as const;
export type Weight = (typeof WEIGHTS)[number];

/** For `fontFamily`: one name a script, in the order in which they are asked. */
export const FAMILIES = SCRIPTS.map((script) => `sheet-${script}`);

/** As much of a font as is asked here. */
export interface Cut {
  unitsPerEm: number;
  hasGlyphForCodePoint(codePoint: number): boolean;
  glyphForCodePoint(codePoint: number): { advanceWidth: number };
}

/** By weight, the cut of each script in the order of `FAMILIES`. */
export type Typeface = ReadonlyMap<Weight, readonly Cut[]>;

let loading: Promise<Typeface> | null = null;

/** Registers and reads the cuts; every call after the first is at once. */
export function loadTypeface(): Promise<Typeface> {
  loading ??= load();
  return loading;
}

async function load(): Promise<Typeface> {
  const require = createRequire(import.meta.url);
  const folder = join(dirname(require.resolve('@fontsource/source-sans-3/package.json')), 'files');
  for (const script of SCRIPTS) {
    Font.register({
      family: `sheet-${script}`,
      fonts: WEIGHTS.map((fontWeight) => ({
        src: join(folder, `source-sans-3-${script}-${fontWeight}-normal.woff`),
        fontWeight,
      })),
    });
  }
  Font.registerHyphenationCallback(breakable);
  const cuts = new Map<Weight, Cut[]>();
  for (const fontWeight of WEIGHTS) {
    const families = await Promise.all(FAMILIES.map((fontFamily) => cutOf(fontFamily, fontWeight)));
    cuts.set(fontWeight, families);
  }
  return cuts;
}

async function cutOf(fontFamily: string, fontWeight: Weight): Promise<Cut> {
  await Font.load({ fontFamily, fontWeight });
  const source = Font.getFont({ fontFamily, fontWeight });
  // The library keeps what it read from the file here, typed as its own font.
  const data = source?.data as unknown as Cut | undefined;
  if (!data) throw new Error(`The cut ${fontFamily} ${fontWeight} could not be read.`);
  return data;
}

/** A word of more letters than this is broken where it has to be, in pieces of so many letters. German joins words. */
const LONG_WORD = LANGUAGE === 'de' ? 24 : 16;
const PIECE = 6;

/** Words are not hyphenated, whatever their language; only one that fits no line is broken. */
function breakable(word: string | null): string[] {
  const letters = [...(word ?? '')];
  if (letters.length <= LONG_WORD) return [word ?? ''];
  const pieces: string[] = [];
  for (let at = 0; at < letters.length; at += PIECE) pieces.push(letters.slice(at, at + PIECE).join(''));
  return pieces;
}
