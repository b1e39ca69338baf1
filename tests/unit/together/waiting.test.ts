/** What waits to be sent, and what of a person's words is given back when it was not taken. */
import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { lostWords, unsentWords } from '#app/_live/lost-words.ts';
import { Waiting } from '#app/_live/waiting.ts';
import { OwnHand } from '#app/_together/own-hand.ts';
import { declareRoots } from '#server/core/live/document.ts';
import { editMarkText, type Mark, putMark } from '#server/core/live/marks.ts';
import { togetherWords } from '#words/together.ts';

const PLACE = { personId: 'ada', boardId: 'b', room: 'marks' } as const;
let made = 0;
const mark = (id: string, text: string, author = 'ada'): Mark => ({
  ...{ id, author, pictureId: 'p', kind: 'pin', points: [[0.5, 0.5]], text, planeId: null },
  ...{ parent: null, at: made++ },
});

function aRoom() {
  const doc = declareRoots(new Y.Doc(), 'marks');
  const waiting = new Waiting(PLACE);
  let up = false;
  doc.on('afterTransaction', (transaction: Y.Transaction) => {
    if (!transaction.local) return;
    if (up) waiting.wrote(doc, transaction, 1000);
    else waiting.add(doc, transaction);
  });
  return { doc, waiting, lineIs: (state: boolean) => (up = state) };
}

describe('what waits', () => {
  test('is counted by entry: writing one remark on and on is one thing', () => {
    const { doc, waiting } = aRoom();
    putMark(doc, mark('one', 'The hill'));
    editMarkText(doc, 'one', 'The hill comes forward.');
    putMark(doc, mark('two', 'The sky'));
    expect([...waiting.entries].sort()).toEqual(['marks/one', 'marks/two']);
  });

  test('is nothing that came from others', () => {
    const { doc, waiting } = aRoom();
    const other = declareRoots(new Y.Doc(), 'marks');
    putMark(other, mark('theirs', 'From afar', 'ben'));
    Y.applyUpdate(doc, Y.encodeStateAsUpdate(other));
    expect(waiting.entries.size).toBe(0);
  });

  test('holds what was written onto a line that turned out to be dead, and no more than that', () => {
    const { doc, waiting, lineIs } = aRoom();
    lineIs(true);
    putMark(doc, mark('early', 'Arrived'));
    waiting.lineDied(2000);
    expect(waiting.entries.size).toBe(0);
    putMark(doc, mark('late', 'Into the void'));
    waiting.lineDied(900);
    expect([...waiting.entries]).toEqual(['marks/late']);
    waiting.goesOut(3000);
    expect(waiting.entries.size).toBe(0);
    expect([...waiting.doubtful(2500)]).toEqual(['marks/late']);
    expect(waiting.doubtful(3500).size).toBe(0);
  });
});

describe('words that were not taken', () => {
  test('are one’s own and not the others’; what never left is told from what was erased', () => {
    const { doc, waiting, lineIs } = aRoom();
    lineIs(true);
    putMark(doc, mark('old', 'Erased on purpose'));
    putMark(doc, mark('theirs', 'Not mine', 'ben'));
    lineIs(false);
    putMark(doc, mark('new', 'Never sent'));
    const fresh = declareRoots(new Y.Doc(), 'marks');
    expect(lostWords(doc, fresh, 'ada')).toBe('Erased on purpose\n\nNever sent');
    expect(unsentWords(doc, waiting.entries, 'ada')).toBe('Never sent');
    expect(unsentWords(doc, waiting.entries, 'ben')).toBeNull();
  });
});

test('a hand that is moved by another is not one’s own', () => {
  const hand = new OwnHand();
  let moves = 0;
  hand.subscribe(() => moves++);
  hand.quietly(() => hand.moved());
  expect(moves).toBe(0);
  expect(hand.lastMs).toBe(0);
  hand.moved();
  expect(moves).toBe(1);
  expect(hand.lastMs).toBeGreaterThan(0);
});

test('what waits is said in words', () => {
  const { waiting } = togetherWords.line;
  expect(waiting(0, 0)).toBe('Nothing waits so far.');
  expect(waiting(1, 0)).toBe('One remark waits to be sent.');
  expect(waiting(2, 1)).toBe('Two remarks and one other change wait to be sent.');
  expect(togetherWords.lookers(['Pia', 'Nils', 'Tove'])).toBe('Pia, Nils and Tove look with you.');
});
