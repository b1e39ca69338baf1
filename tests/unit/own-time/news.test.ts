/**
 * What is new is told by the counting of the documents (state vectors after the Yjs update format), so that clocks that
 * go wrong, late arrivals and compaction change nothing of it.
 */
import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { setAnswer } from '#server/core/live/card-answers.ts';
import { documentFrom } from '#server/core/live/document.ts';
import { putMark } from '#server/core/live/marks.ts';
import { newKeys, sawAll, seenFrom, seenWhole } from '#server/core/own-time/news.ts';

const pin = (id: string, at: number) => ({
  ...{ id, author: 'tove', pictureId: 'p1', kind: 'pin' as const, points: [[0.5, 0.5] as [number, number]] },
  ...{ text: 'Look here.', planeId: null, parent: null, at },
});

const vectorOf = (doc: Y.Doc) => seenFrom(Y.encodeStateVector(doc)) ?? new Map();

describe('after somebody looked', () => {
  test('only what was written later is new', () => {
    const doc = documentFrom('marks', []);
    putMark(doc, pin('old', 1000));
    const seen = vectorOf(doc);
    putMark(doc, pin('late', 2000));
    expect(newKeys(doc, 'marks', seen)).toEqual(['late']);
    expect(sawAll(doc, seen)).toBe(false);
    expect(sawAll(doc, seenWhole(doc))).toBe(true);
  });

  test('a mark that was made offline long before and arrives now is new, though its clock says otherwise', () => {
    const offline = documentFrom('marks', []);
    putMark(offline, pin('made-offline', 1));
    const doc = documentFrom('marks', []);
    putMark(doc, pin('seen', 9_000_000_000_000));
    const seen = vectorOf(doc);
    Y.applyUpdate(doc, Y.encodeStateAsUpdate(offline));
    expect(newKeys(doc, 'marks', seen)).toEqual(['made-offline']);
  });

  test('compacting and loading again makes nothing new', () => {
    const doc = documentFrom('marks', []);
    for (let each = 0; each < 40; each++) putMark(doc, pin(`m${each}`, each));
    const seen = vectorOf(doc);
    const loaded = documentFrom('marks', [Y.encodeStateAsUpdate(doc)]);
    expect(newKeys(loaded, 'marks', seen)).toEqual([]);
    putMark(loaded, pin('fresh', 99));
    expect(newKeys(loaded, 'marks', seen)).toEqual(['fresh']);
  });

  test('an answer that was changed is new, one that was taken back is not there', () => {
    const doc = documentFrom('painting/p1', []);
    const answer = (state: 'tried' | 'done') => ({ state, words: '', about: [] });
    setAnswer(doc, 'card-1', answer('tried'));
    setAnswer(doc, 'card-2', answer('tried'));
    const seen = vectorOf(doc);
    setAnswer(doc, 'card-1', answer('done'));
    setAnswer(doc, 'card-2', null);
    expect(newKeys(doc, 'answers', seen)).toEqual(['card-1']);
  });

  test('bytes that are no state vector say nothing', () => {
    expect(seenFrom(new Uint8Array([255, 255, 255]))).toBeNull();
  });
});
