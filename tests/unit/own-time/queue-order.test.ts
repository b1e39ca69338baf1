/** What was promised comes first, earliest day first; then what waits longest. */
import { expect, test } from 'vitest';
import { byPromiseThenWait } from '#server/core/own-time/queue-order.ts';
import { statesOf } from '#server/core/own-time/states.ts';

test('a promised day stands before a long wait, and an earlier ask before a later one', () => {
  const rows = [
    { id: 'long', promisedFor: null, askedAt: '2026-11-01T10:00:00.000Z' },
    { id: 'friday', promisedFor: '2026-11-27', askedAt: '2026-11-20T10:00:00.000Z' },
    { id: 'passed', promisedFor: '2026-11-20', askedAt: '2026-11-24T10:00:00.000Z' },
    { id: 'short', promisedFor: null, askedAt: '2026-11-24T10:00:00.000Z' },
    { id: 'friday, asked before', promisedFor: '2026-11-27', askedAt: '2026-11-19T10:00:00.000Z' },
  ];
  expect(rows.sort(byPromiseThenWait).map(({ id }) => id)).toEqual([
    'passed',
    'friday, asked before',
    'friday',
    'long',
    'short',
  ]);
});

const pictures = [
  { id: 'a1', follows: null },
  { id: 'b1', follows: null },
  { id: 'a2', follows: 'a1' },
  { id: 'a3', follows: 'a2' },
  { id: 'b2', follows: 'b1' },
];

test.each([
  ['a1', ['a1', 'a2', 'a3']],
  ['a3', ['a1', 'a2', 'a3']],
  ['b2', ['b1', 'b2']],
  ['gone', []],
])('the states of one painting are found from any of them: %s', (id, states) => {
  expect(statesOf(pictures, id).map((state) => state.id)).toEqual(states);
});

test('where an earlier state is not for somebody to see, the later ones still belong together', () => {
  const seen = pictures.filter(({ id }) => id !== 'a1');
  expect(statesOf(seen, 'a3').map(({ id }) => id)).toEqual(['a2', 'a3']);
});

test('states that follow each other in a circle end the search', () => {
  const circle = [
    { id: 'a', follows: 'b' },
    { id: 'b', follows: 'a' },
  ];
  expect(statesOf(circle, 'a').length).toBeGreaterThan(0);
});
