import { MOST_PHRASES } from '#server/core/contract/own-time-limits.ts';
import { PhraseRequest } from '#server/core/contract/own-time-requests.ts';
import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { visitorOf } from '#server/http/visitor.ts';
import { addPhrase, listPhrases } from '#server/store/phrases.ts';

/** The caller's own phrases, in their order. Nobody else's can be read. */
export const GET = handle(async (request) => listPhrases((await visitorOf(request)).personId));

/** Keeps a phrase, after those that are there. */
export const POST = handle(async (request) => {
  const { personId } = await visitorOf(request);
  const { words } = await readJson(request, PhraseRequest);
  const id = await addPhrase(personId, words);
  if (id !== null) return { id, words };
  throw new Problem(
    'phrases-full',
    say`You keep ${MOST_PHRASES} phrases already, which is as many as there may be. Delete one you no longer use.`,
  );
});
