/** Proposed planes as a table to read in a terminal, far to near. Pure. */
import { countLabels, drawLabelMap } from '../core/planes/label-map.ts';
import type { PlaneProposals, Proposal } from '../core/planes/propose/propose.ts';
import { aligned } from './aligned.ts';

/** Long side of the grid on which shares are counted; a tenth of a percent needs no more. */
const GRID_PX = 512;

/** Share of the picture that each plane shows of itself, percent. */
function sharesOf({ widthPx, heightPx }: PlaneProposals, { planes }: Proposal): number[] {
  const shrink = Math.min(1, GRID_PX / Math.max(widthPx, heightPx));
  const [columns, rows] = [Math.ceil(widthPx * shrink), Math.ceil(heightPx * shrink)];
  const labels = drawLabelMap(
    columns,
    rows,
    planes.map(({ outline }) => outline),
  );
  return countLabels(labels, planes.length).map((pixels) => (100 * pixels) / (columns * rows));
}

/** @param reason why this number, where the program chose it. */
export function planesTable(proposals: PlaneProposals, proposal: Proposal, reason: string | null): string {
  const shares = sharesOf(proposals, proposal);
  const lines = [
    ['plane', 'kind', 'share %', 'points'],
    ...proposal.planes.map(({ name, kind, outline }, at) => [
      name,
      kind,
      (shares[at] ?? 0).toFixed(1),
      String(outline.length),
    ]),
  ];
  return [aligned(lines, 2), reason, proposal.note].filter((section) => section !== null).join('\n\n');
}
