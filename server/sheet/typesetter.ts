/**
 * What of a text can be set, and how many lines it takes: asked before a page is laid out, so that it stays one page.
 *
 * In the flow: typeface -> [typesetter] -> pages. Widths are the typeface's own, without kerning: within a hundredth.
 */
import { sheetWords } from '../core/sheet/words.ts';
import type { Cut, Typeface, Weight } from './typeface.ts';

/** Lines stand this many times their size apart. */
export const LEADING = 1.25;

/** A size in points and a weight. */
export interface Letter {
  size: number;
  weight: Weight;
}

export class Typesetter {
  readonly #typeface: Typeface;
  readonly #widths = new Map<string, number>();
  /** Whether any text so far had letters that cannot be set. */
  missing = false;

  constructor(typeface: Typeface) {
    this.#typeface = typeface;
  }

  /** The text in letters that there are, on one line: a run of others becomes one sign, and `missing` is set. */
  plain(text: string): string {
    let out = '';
    let gap = false;
    for (const letter of tidied(text)) {
      const has = this.#cutOf(letter, 400) !== null;
      if (has) out += letter;
      else if (!gap) out += sheetWords.noLetters;
      gap = !has;
      this.missing ||= !has;
    }
    return out;
  }

  /** Width in points of a text on one line. */
  width(text: string, { size, weight }: Letter): number {
    let width = 0;
    for (const letter of text) width += this.#widthOf(letter, weight);
    return width * size;
  }

  /** Lines that a text takes in a column, at least one. @param columnWidth Points. */
  lines(text: string, letter: Letter, columnWidth: number): number {
    const space = this.width(' ', letter);
    let lines = 1;
    let used = 0;
    for (const word of text.split(' ')) {
      const width = this.width(word, letter);
      if (used > 0 && used + space + width > columnWidth) {
        lines++;
        used = 0;
      }
      used += (used > 0 ? space : 0) + width;
      // A word that fits no line is broken.
      lines += Math.max(0, Math.ceil(used / columnWidth) - 1);
      if (used > columnWidth) used %= columnWidth;
    }
    return lines;
  }

  /** Height in points of a text in a column; 0 for none. */
  height(text: string, letter: Letter, columnWidth: number): number {
    return text === '' ? 0 : this.lines(text, letter, columnWidth) * letter.size * LEADING;
  }

  /** The text, or as much of its beginning as fits with an ellipsis. @param most Lines, at least one. */
  cut(text: string, letter: Letter, columnWidth: number, most: number): string {
    // A hundredth less, for the kerning that is not known here.
    const column = columnWidth * 0.99;
    if (this.lines(text, letter, column) <= most) return text;
    let fits = 0;
    for (let over = text.length; over - fits > 1; ) {
      const half = Math.floor((fits + over) / 2);
      if (this.lines(shortened(text, half), letter, column) <= most) fits = half;
      else over = half;
    }
    return shortened(text, fits);
  }

  /** Width at a size of 1; the same letters are asked about thousands of times a page. */
  #widthOf(letter: string, weight: Weight): number {
    const key = `${weight}${letter}`;
    const known = this.#widths.get(key);
    if (known !== undefined) return known;
    const cut = this.#cutOf(letter, weight);
    const width = cut ? cut.glyphForCodePoint(codeOf(letter)).advanceWidth / cut.unitsPerEm : 0;
    this.#widths.set(key, width);
    return width;
  }

  #cutOf(letter: string, weight: Weight): Cut | null {
    const code = codeOf(letter);
    return this.#typeface.get(weight)?.find((cut) => cut.hasGlyphForCodePoint(code)) ?? null;
  }
}

const codeOf = (letter: string): number => letter.codePointAt(0) ?? 0;

/** One line; composed letters; hyphens and arrows that the typeface has; no signs without a shape. */
function tidied(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\u2010\u2011]/g, '-')
    .replace(/\u2192/g, '–')
    .replace(/\s+/g, ' ')
    .replace(/\p{Cc}|\p{Cf}|\uFE0F/gu, '')
    .trim();
}

/** Cut after the last whole word where that is near, never within a letter of two code units. */
function shortened(text: string, length: number): string {
  const head = text.slice(0, length).replace(/[\uD800-\uDBFF]$/, '');
  const space = head.lastIndexOf(' ');
  const whole = space > head.length - 14 && space > 0 ? head.slice(0, space) : head;
  return `${whole.replace(/[\s,;:.]+$/, '')}…`;
}
