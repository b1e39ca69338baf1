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
  const lost = ownMarks(before, personId).filter((mark) => kept.get(mark.id) !== mark.text);
  const intention = before.getText('intention').toString();
  const lostIntention = intention !== fresh.getText('intention').toString() ? intention : '';
  return joined([...lost.map(({ text }) => text), lostIntention, ...lostEntries(before, fresh)]);
}

/**
 * The words of `personId` among entries that never reached the server, where there is nothing to compare with.
 *
 * @param unsent Root key and entry, as "marks/<id>"; the intention by its root key alone.
 */
export function unsentWords(before: Y.Doc, unsent: ReadonlySet<string>, personId: string): string | null {
  const marks = ownMarks(before, personId).filter(({ id }) => unsent.has(`marks/${id}`));
  const intention = unsent.has('intention') ? before.getText('intention').toString() : '';
  const entries = ['notes', 'said'].flatMap((root) =>
    [...before.getMap(root)].flatMap(([key, text]) =>
      typeof text === 'string' && unsent.has(`${root}/${key}`) ? [text] : [],
    ),
  );
  return joined([...marks.map(({ text }) => text), intention, ...entries]);
}

/** First impressions, and what a painter says back: texts that are replaced whole. */
function lostEntries(before: Y.Doc, fresh: Y.Doc): string[] {
  return ['notes', 'said'].flatMap((root) =>
    [...before.getMap(root)].flatMap(([key, text]) => {
      return typeof text === 'string' && fresh.getMap(root).get(key) !== text ? [text] : [];
    }),
  );
}

function ownMarks(doc: Y.Doc, personId: string) {
  return readMarks(doc).filter(({ author }) => author === personId);
}

function joined(words: readonly string[]): string | null {
  const said = words.filter((each) => each !== '');
  return said.length > 0 ? said.join('\n\n') : null;
}
