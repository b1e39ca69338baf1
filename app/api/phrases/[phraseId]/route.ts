import { PhraseChange } from '#server/core/contract/own-time-requests.ts';
import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { visitorOf } from '#server/http/visitor.ts';
import { movePhrase, removePhrase, rewritePhrase } from '#server/store/phrases.ts';

type Params = { phraseId: string };

/** Other words for a phrase of one's own, or another place. */
export const PATCH = handle<Params>(async (request, { params }) => {
  const { personId } = await visitorOf(request);
  const { phraseId } = await params;
  const change = await readJson(request, PhraseChange);
  const known =
    'words' in change
      ? await rewritePhrase(personId, phraseId, change.words)
      : await movePhrase(personId, phraseId, change.before);
  if (!known) throw phraseNotFound();
});

/** Forgets a phrase of one's own. */
export const DELETE = handle<Params>(async (request, { params }) => {
  const { personId } = await visitorOf(request);
  if (!(await removePhrase(personId, (await params).phraseId))) throw phraseNotFound();
});

/** The same for one that is not there and one that is somebody else's. */
function phraseNotFound(): Problem {
  return new Problem('phrase-not-found', say`You keep no such phrase. Load your phrases again.`);
}
