/** What a painter reads of their asking: the promise, and that it was answered. In the flow: ask-part -> [ask-words]. Pure. */

import type { AskView } from '#server/core/contract/own-time.ts';
import { dayOf } from '#server/core/own-time/days.ts';
import { dayWords, momentWords, queueWords } from '#words/queue.ts';

const { ask: words } = queueWords;

/** The promise as its painter reads it. */
export function promisedWords({ promisedFor, promisedBy }: AskView, now: Date): string {
  if (promisedFor === null) return words.waiting;
  const today = dayOf(now);
  const day = dayWords(promisedFor, today);
  const by = promisedBy?.name ?? null;
  return promisedFor < today ? words.passed(day, by) : words.promised(day, by);
}

export function answeredWords({ answeredAt, answeredBy, askedAbout, pictureId }: AskView, now: Date): string {
  return words.answered(answeredBy?.name ?? '', momentWords(answeredAt ?? '', now), askedAbout !== pictureId);
}
