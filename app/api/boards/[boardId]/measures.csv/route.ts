import { toCsv } from '#server/core/outward/csv.ts';
import { measuresTable } from '#server/core/outward/measures-table.ts';
import { boardMeasures } from '#server/http/board-measures.ts';
import { handle } from '#server/http/respond.ts';
import { saved } from '#server/http/saved.ts';

type Params = { boardId: string };

/** Figures of the board's pictures as a table (RFC 4180), a row a plane and side, units in the header. */
export const GET = handle<Params>(async (request, { params }) => {
  const { title, pictures } = await boardMeasures(request, (await params).boardId);
  return saved(
    toCsv(measuresTable(pictures)),
    'text/csv; charset=utf-8; header=present',
    `${title} figures.csv`,
  );
});
