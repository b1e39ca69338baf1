/** The same reading on three paintings or more is said; questions, checks and muted ones are not counted. */
import { expect, test } from 'vitest';
import type { Reading } from '#server/core/contract/measures.ts';
import { repeatedReadings } from '#server/core/own-time/repeated.ts';
import { queueWords } from '#words/queue.ts';

function reading(id: string, more: Partial<Reading> = {}): Reading {
  return { id, planes: [], severity: 1, sentence: '', why: '', source: '', muted: null, ...more };
}

const on = (...readings: Reading[]) => ({ readings });

test('twice is chance, three times is said by the name the trade gives it', () => {
  const V4 = reading('V4');
  expect(repeatedReadings([on(V4), on(V4), on()])).toEqual([]);
  const [repeated] = repeatedReadings([on(V4), on(V4, V4), on(V4, reading('D1'))]);
  expect(repeated).toMatchObject({ id: 'V4', paintings: 3 });
  expect(repeated && queueWords.row.repeated(repeated)).toBe('Third time: distance darks too heavy');
});

test('several planes of one painting count once', () => {
  const both = on(reading('V4', { planes: ['ridge'] }), reading('V4', { planes: ['hill'] }));
  expect(repeatedReadings([both, both])).toEqual([]);
});

test.each([{ muted: 'meant' }, { form: 'question' as const }, { form: 'check' as const }])(
  'what is %j is no fault that repeats',
  (more) => {
    expect(repeatedReadings([1, 2, 3, 4].map(() => on(reading('V4', more))))).toEqual([]);
  },
);
