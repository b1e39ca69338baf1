/** Which remarks stand on a sheet, and under which number. */
import { describe, expect, test } from 'vitest';
import type { LiveAnswer, MarkKind } from '#server/core/live/layout.ts';
import type { Mark } from '#server/core/live/marks.ts';
import { MOST_REMARKS, remarksOnSheet } from '#server/core/sheet/remarks-on-sheet.ts';

const mark = (
  id: string,
  text: string,
  kind: MarkKind = 'pin',
  points: Mark['points'] = [[0.5, 0.5]],
): Mark => ({
  ...{ id, author: 'runa', pictureId: 'painting', kind, points, text, planeId: null, parent: null, at: 1 },
});
const answer = (state: LiveAnswer['state']): LiveAnswer => ({ state, words: '', about: [] });

function onSheet(marks: readonly Mark[], answers: [string, LiveAnswer][] = []) {
  return remarksOnSheet({
    marks,
    answers: new Map(answers),
    nameOf: (id) => (id === 'runa' ? 'Runa' : 'Somebody'),
    toSquared: (point) => point,
  });
}

describe('remarks on a sheet', () => {
  test('are numbered in their order, with who said them', () => {
    const { remarks, more } = onSheet([mark('a', 'Soften this.'), mark('b', ' Lift\nit. ')]);
    expect(remarks).toMatchObject([
      { number: 1, who: 'Runa', words: 'Soften this.', state: '' },
      { number: 2, words: 'Lift it.' },
    ]);
    expect(more).toBe('');
  });

  test('that are still open come before those that were tried, done or left', () => {
    const { remarks } = onSheet([mark('a', 'Old'), mark('b', 'New')], [['a', answer('done')]]);
    expect(remarks.map(({ words, state }) => [words, state])).toEqual([
      ['New', ''],
      ['Old', 'done'],
    ]);
  });

  test('of forty as many are numbered as can be found again, and the rest is counted in words', () => {
    const { remarks, more } = onSheet(Array.from({ length: 40 }, (_, at) => mark(`m${at}`, `Remark ${at}`)));
    expect(remarks.map(({ number }) => number)).toEqual(
      Array.from({ length: MOST_REMARKS }, (_, at) => at + 1),
    );
    expect(more).toBe('31 more remarks stand on the board.');
  });

  test('lines without words are drawn without a number; replies, sketches and bare pins stay on the board', () => {
    const line: Mark['points'] = [
      [0.1, 0.1],
      [0.2, 0.3],
    ];
    const { remarks, more } = onSheet([
      mark('a', '', 'stroke', line),
      mark('b', '', 'pin'),
      mark('c', 'An answer', 'reply', []),
      mark('d', 'Paint', 'sketch', line),
    ]);
    expect(remarks).toMatchObject([{ number: null, kind: 'stroke', points: line }]);
    expect(more).toBe('What is drawn on the painting has no words.');
  });

  test('outside the squared painting are left out', () => {
    const { remarks, more } = onSheet([mark('a', 'On the wall', 'pin', [[1.2, 0.5]])]);
    expect(remarks).toEqual([]);
    expect(more).toBe('Nobody has marked the painting.');
  });
});
