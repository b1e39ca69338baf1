import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { carriedFromLast, pairOf, seenPainting, writerOn } from '#server/http/states.ts';

type Params = { boardId: string; pictureId: string };

/** Lays the planes of the state before on this one, those that it has no outline of yet. Answers how many. */
export const POST = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId } = await params;
  const seen = await seenPainting(request, boardId, pictureId);
  const pair = pairOf(seen, null);
  const facts = await services().statesCompared(pair);
  if ('pending' in facts) throw new Problem('not-yet', say`${facts.pending} Try again in a moment.`);
  if (facts.trouble !== null) throw new Problem('states-apart', facts.trouble);
  const outlines = await carriedFromLast(pair, facts.toLater);
  await services().outlinesMade({ boardId, pictureId }, writerOn(seen), outlines);
  return { planes: outlines.size };
});
