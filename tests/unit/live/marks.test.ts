import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { declareRoots } from '#server/core/live/document.ts';
import {
  editMarkText,
  type Mark,
  moveMark,
  putMark,
  readMarks,
  removeMark,
  threadsOf,
} from '#server/core/live/marks.ts';

const fresh = () => declareRoots(new Y.Doc(), 'marks');

function pin(id: string, at: number, author = 'anna'): Mark {
  return {
    id,
    at,
    author,
    pictureId: 'p',
    kind: 'pin',
    points: [[0.5, 0.5]],
    text: 'soften',
    planeId: null,
    parent: null,
  };
}

function reply(id: string, parent: string, at: number, author = 'bert'): Mark {
  return { ...pin(id, at, author), kind: 'reply', points: [], parent };
}

describe('marks', () => {
  test('come back as they were put, oldest first', () => {
    const doc = fresh();
    const stroke: Mark = {
      ...pin('b', 2),
      kind: 'stroke',
      points: [
        [0, 0],
        [0.5, 0.25, 0.7],
      ],
    };
    putMark(doc, stroke);
    putMark(doc, pin('a', 1));
    expect(readMarks(doc)).toEqual([pin('a', 1), stroke]);
  });

  test('two people who word one mark at once keep both their words', () => {
    const [one, two] = [fresh(), fresh()];
    putMark(one, pin('a', 1));
    Y.applyUpdate(two, Y.encodeStateAsUpdate(one));
    editMarkText(one, 'a', 'please soften');
    editMarkText(two, 'a', 'soften the ridge');
    moveMark(two, 'a', [[0.1, 0.9]]);
    Y.applyUpdate(one, Y.encodeStateAsUpdate(two));
    Y.applyUpdate(two, Y.encodeStateAsUpdate(one));
    expect(readMarks(one)).toEqual(readMarks(two));
    expect(readMarks(one)[0]).toMatchObject({ text: 'please soften the ridge', points: [[0.1, 0.9]] });
  });

  test('one mark is one update', () => {
    const doc = fresh();
    let updates = 0;
    doc.on('update', () => updates++);
    putMark(doc, pin('a', 1));
    expect(updates).toBe(1);
  });

  test('its author removes a mark with their own replies; others’ replies stay and stand alone', () => {
    const doc = fresh();
    for (const mark of [pin('a', 1), reply('r1', 'a', 2), reply('r2', 'r1', 3, 'anna'), pin('b', 4)])
      putMark(doc, mark);
    expect(
      threadsOf(readMarks(doc)).map(({ mark, replies }) => [mark.id, replies.map(({ id }) => id)]),
    ).toEqual([
      ['a', ['r1', 'r2']],
      ['b', []],
    ]);
    removeMark(doc, 'a', { personId: 'anna', role: 'peer', paints: false });
    expect(threadsOf(readMarks(doc)).map(({ mark }) => mark.id)).toEqual(['r1', 'b']);
  });

  test('a teacher removes the whole thread, a stranger nothing', () => {
    const doc = fresh();
    for (const mark of [pin('a', 1), reply('r1', 'a', 2), reply('r2', 'r1', 3)]) putMark(doc, mark);
    removeMark(doc, 'a', { personId: 'carl', role: 'peer', paints: false });
    expect(readMarks(doc)).toHaveLength(3);
    removeMark(doc, 'a', { personId: 'tove', role: 'teacher', paints: false });
    expect(readMarks(doc)).toEqual([]);
  });

  test('marks that answer one another in a circle are still shown', () => {
    const doc = fresh();
    putMark(doc, reply('x', 'y', 1));
    putMark(doc, reply('y', 'x', 2));
    const shown = threadsOf(readMarks(doc)).flatMap(({ mark, replies }) => [mark, ...replies]);
    expect(shown.map(({ id }) => id).sort()).toEqual(['x', 'y']);
  });

  test('a pin without a place is refused in words, and what does not parse is left out', () => {
    const doc = fresh();
    expect(() => putMark(doc, { ...pin('a', 1), points: [] })).toThrow(/a pin has one point/);
    doc.getMap('marks').set('bad', new Y.Map([['author', 'anna']]));
    doc.getMap('marks').set('worse', { ...pin('worse', 1) });
    expect(readMarks(doc)).toEqual([]);
  });
});
