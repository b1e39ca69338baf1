import { consentsOn } from '#server/access/consent.ts';
import { handle } from '#server/http/respond.ts';
import { visitorOnBoard } from '#server/http/visitor.ts';

type Params = { boardId: string };

/** What was said about each use of each painter's pictures, as far as the caller may see it: `ConsentView[]`. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  return consentsOn(boardId, visitor.personId, role);
});
