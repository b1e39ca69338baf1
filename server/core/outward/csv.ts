/**
 * Rows as comma-separated values. Source: RFC 4180 (Shafranovich, 2005), section 2. Pure.
 *
 * A text that a spreadsheet would take for a formula gets an apostrophe before it: captions and names are written by
 * anybody. Numbers are written whole, as they were measured.
 */

export type Cell = string | number | null;

/** @param rows The first is the header. Lines end with CRLF; the mark before them tells programs that it is UTF-8. */
export function toCsv(rows: readonly (readonly Cell[])[]): string {
  return `\uFEFF${rows.map((row) => `${row.map(written).join(',')}\r\n`).join('')}`;
}

function written(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return String(cell);
  const text = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
