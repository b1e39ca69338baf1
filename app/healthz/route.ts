import { Problem } from '#server/core/problem.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';

/** Whether database, data folder and rooms answer. */
export const GET = handle(async () => {
  if (await services().healthy()) return { ok: true };
  throw new Problem(
    'database-unreachable',
    'The database, the data folder or the rooms do not answer. The log of the server says which.',
  );
});
