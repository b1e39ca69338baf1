/**
 * What a person had written that the server did not keep.
 *
 * In the flow: refused document + fresh document -> [lost-words] -> the draft that is shown. Pure.
 */
import type * as Y from 'yjs';
import { readMarks } from '#server/core/live/marks.ts';

/**
 * The words of `personId` that stand in `before` and not in `fresh`: remarks and the intention.
 *
 * @returns The words, one paragraph each, or null when nothing of theirs was lost.
 */
export function lostWords(before: Y.Doc, fresh: Y.Doc, personId: string): string | null {
  const kept = new Map(readMarks(fresh).map((mark) => [mark.id, mark.text]));
  const lost = readMarks(before)
    .filter((mark) => mark.author === personId && mark.text !== '' && kept.get(mark.id) !== mark.text)
    .map((mark) => mark.text);
  const intention = before.getText('intention').toString();
  if (intention !== '' && intention !== fresh.getText('intention').toString()) lost.push(intention);
  return lost.length > 0 ? lost.join('\n\n') : null;
}
