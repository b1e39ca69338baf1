/** Lines of cells as columns to read in a terminal: the first `left` flush left, the others flush right. Pure. */

export function aligned(lines: readonly (readonly string[])[], left: number): string {
  const widths = (lines[0] ?? []).map((_, at) => Math.max(...lines.map((cells) => (cells[at] ?? '').length)));
  return lines
    .map((cells) =>
      cells
        .map((text, at) => (at < left ? text.padEnd(widths[at] ?? 0) : text.padStart(widths[at] ?? 0)))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
