/** Numbers as people type them, with comma or point. Pure. */

/** A length above 0; null when the text is none. */
export function lengthOf(text: string): number | null {
  const length = Number(text.trim().replace(',', '.'));
  return text.trim() !== '' && Number.isFinite(length) && length > 0 ? length : null;
}

/** Percent above 0 up to 100, with or without its sign; null when the text is none. */
export function percentOf(text: string): number | null {
  const percent = lengthOf(text.trim().replace(/\s*%$/, ''));
  return percent !== null && percent <= 100 ? percent : null;
}
