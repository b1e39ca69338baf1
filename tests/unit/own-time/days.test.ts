/** Days that are promised: only ones that exist (ISO 8601-1, 4.3.2 calendar dates), and the words for them. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isDay } from '#server/core/contract/day.ts';
import { dayAfter, dayOf, daysBetween, suggestedDay } from '#server/core/own-time/days.ts';
import { dayWords, momentWords } from '#words/queue.ts';

describe('a day', () => {
  test.each(['2024-02-29', '2026-12-31', '2000-02-29'])('%s exists', (day) => expect(isDay(day)).toBe(true));

  test.each(['2023-02-29', '1900-02-29', '2026-13-01', '2026-04-31', '2026-4-1', '2026-04-01T00:00', ''])(
    '%j is none',
    (day) => expect(isDay(day)).toBe(false),
  );

  test('so many days after a day lie so many days after it, over every change of clocks', () => {
    fc.assert(
      fc.property(
        fc.date({ min: new Date('1990-01-01'), max: new Date('2090-01-01'), noInvalidDate: true }),
        fc.integer({ min: -800, max: 800 }),
        (at, days) => {
          const day = dayOf(at);
          const other = dayAfter(day, days);
          expect(isDay(other)).toBe(true);
          expect(daysBetween(day, other)).toBe(days);
          expect(other < day).toBe(days < 0);
        },
      ),
    );
  });

  test('what is suggested lies within the usual 48 to 72 hours (common practice, no source)', () => {
    expect(daysBetween('2026-02-27', suggestedDay('2026-02-27'))).toBe(3);
  });
});

describe('in words', () => {
  // 25 November 2026 is a Wednesday (ISO 8601 week date 2026-W48-3).
  test.each([
    ['2026-11-25', 'today'],
    ['2026-11-26', 'tomorrow'],
    ['2026-11-24', 'yesterday'],
    ['2026-11-27', 'Friday'],
    ['2026-12-02', 'Wednesday 2 December'],
    ['2026-11-20', 'Friday 20 November'],
  ])('%s is said as "%s"', (day, words) => expect(dayWords(day, '2026-11-25')).toBe(words));

  test.each([
    [new Date(2026, 10, 25, 8, 0), 'this morning'],
    [new Date(2026, 10, 24, 21, 0), 'yesterday evening'],
    [new Date(2026, 10, 21, 14, 0), 'Saturday afternoon'],
    [new Date(2026, 10, 3, 14, 0), 'Tuesday 3 November'],
  ])('a moment gone by is said by day and part of the day', (at, words) => {
    expect(momentWords(at.toISOString(), new Date(2026, 10, 25, 12, 0))).toBe(words);
  });
});
