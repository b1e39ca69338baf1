/** How many pages a PDF has, by its own page tree. In the flow: make-sheet -> [page-count]. Pure. ISO 32000-1 §7.7.3. */

/** @param pdf Of our own making: its page tree is not compressed. @throws Error where it has none: a bug. */
export function pageCount(pdf: Uint8Array): number {
  const text = Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength).toString('latin1');
  const tree = /\/Type \/Pages\s+\/Count (\d+)/.exec(text);
  if (!tree) throw new Error('The page tree of a sheet was not found.');
  return Number(tree[1]);
}
