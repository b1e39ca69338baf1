import { pathOf } from '#server/access/path.ts';
import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { visitorOf } from '#server/http/visitor.ts';

type Params = { personId: string };

/** A painter's path over boards: one's own, that of a minor one guards, or of somebody one teaches. */
export const GET = handle<Params>(async (request, { params }) => {
  const { personId } = await params;
  const path = await pathOf(await visitorOf(request), personId, {
    isVeiled: (boardId) => services().isVeiled(boardId),
    compared: (pair) => services().statesCompared(pair),
  });
  if (path) return path;
  throw new Problem('person-not-found', say`There is no such path, or it is not yours to read.`);
});
