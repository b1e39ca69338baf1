/** One page with all pictures, a row a screen and a column a width. Pure. */
import type { Screen } from './screen.ts';

export function indexPage(screens: readonly Screen[], widths: readonly number[]): string {
  const rows = screens.map(
    ({ name, page }) =>
      `<tr><th scope="row">${name}<br><small>${page}</small></th>${widths
        .map(
          (width) =>
            `<td><a href="${width}/${name}.png"><img loading="lazy" alt="${name} at ${width} px" src="${width}/${name}.png"></a></td>`,
        )
        .join('')}</tr>`,
  );
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>Every screen</title>
<style>body{background:#777;font:16px sans-serif}img{max-height:420px;max-width:100%;object-fit:contain}th{text-align:left;vertical-align:top}td{vertical-align:top}</style>
<table><thead><tr><th>screen</th>${widths.map((width) => `<th>${width} px</th>`).join('')}</tr></thead>
<tbody>${rows.join('\n')}</tbody></table></html>\n`;
}
