/** Gaps of phrases are filled where it is known what stands there, and a phrase goes in at the caret. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillSlots, insertAt } from '#server/core/own-time/slots.ts';

describe('filling', () => {
  test('known gaps are filled, every time they stand there', () => {
    const { words, gap } = fillSlots(
      'Lift the {part} of the {plane} by {amount}; the {plane} then sits back.',
      {
        plane: 'far ridge',
        part: 'darks',
        amount: 'half a step',
      },
    );
    expect(words).toBe('Lift the darks of the far ridge by half a step; the far ridge then sits back.');
    expect(gap).toBeNull();
  });

  test('the first gap that is not known is what is chosen, to be typed over', () => {
    const { words, gap } = fillSlots('The {plane}: {amount} lighter.', { plane: 'hill' });
    expect(words).toBe('The hill: {amount} lighter.');
    expect(words.slice(...(gap ?? [0, 0]))).toBe('{amount}');
  });

  test('at the head of a phrase a name begins with a capital', () => {
    expect(fillSlots('{plane} first.', { plane: 'far ridge' }).words).toBe('Far ridge first.');
  });

  test('other braces are left as they are', () => {
    expect(fillSlots('{sky} and {Plane}', { plane: 'x' }).words).toBe('{sky} and {Plane}');
  });

  test('what fills a gap is taken as it is, whatever signs it holds', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), (name) => {
        fc.pre(!/\{(plane|part|amount)\}/.test(name));
        expect(fillSlots('a {plane} b', { plane: name }).words).toBe(`a ${name} b`);
      }),
    );
  });
});

describe('putting in', () => {
  test('spaces part it from the words before and after, but not from a full stop', () => {
    const phrase = fillSlots('squint at it', {});
    expect(insertAt('First', 5, 5, phrase).text).toBe('First squint at it');
    expect(insertAt('First then', 6, 6, phrase).text).toBe('First squint at it then');
    expect(insertAt('First .', 6, 6, phrase).text).toBe('First squint at it.');
  });

  test('what was chosen is replaced, and the caret stands behind or in the first gap', () => {
    const { text, chosen } = insertAt('Try that now', 4, 8, fillSlots('{amount} more', {}));
    expect(text).toBe('Try {amount} more now');
    expect(text.slice(...chosen)).toBe('{amount}');
  });

  test('whatever stood outside of what was chosen is still there', () => {
    fc.assert(
      fc.property(fc.string(), fc.nat(), fc.nat(), fc.string({ minLength: 1 }), (text, one, two, phrase) => {
        const [from, to] = [one % (text.length + 1), two % (text.length + 1)].sort((a, b) => a - b);
        const next = insertAt(text, from ?? 0, to ?? 0, { words: phrase, gap: null }).text;
        expect(next.startsWith(text.slice(0, from))).toBe(true);
        expect(next.endsWith(text.slice(to))).toBe(true);
        expect(next).toContain(phrase);
      }),
    );
  });
});
