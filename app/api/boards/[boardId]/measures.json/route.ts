import { boardMeasures } from '#server/http/board-measures.ts';
import { handle } from '#server/http/respond.ts';
import { saved } from '#server/http/saved.ts';

type Params = { boardId: string };

/** Figures of the board's pictures: for each its measure document, or what it waits for. */
export const GET = handle<Params>(async (request, { params }) => {
  const found = await boardMeasures(request, (await params).boardId);
  return saved(`${JSON.stringify(found, null, 2)}\n`, 'application/json', `${found.title} figures.json`);
});
