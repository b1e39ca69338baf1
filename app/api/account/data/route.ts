import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { handle } from '#server/http/respond.ts';
import { saved } from '#server/http/saved.ts';
import { visitorOf } from '#server/http/visitor.ts';
import { ownData } from '#server/outward/own-data.ts';

/** Everything that is the caller's own, as one archive (application/zip), streamed. */
export const GET = handle(async (request) => {
  const { personId, name } = await visitorOf(request);
  const data = await ownData(personId);
  if (!data)
    throw new Problem('person-not-found', say`There is nobody here with that id. Load the page again.`);
  return saved(data, 'application/zip', `${name}.zip`);
});
