import { expect, test } from 'vitest';
import { withKeys } from '#app/_ladder/with-keys.ts';
import { planeIdOfColumn } from '#server/core/live/plane-id-of-column.ts';

const planes = [
  { id: 'a', name: 'sky' },
  { id: 'b', name: 'wood' },
  { id: 'c', name: 'wood' },
  { id: 'd', name: 'field' },
];

test('a column belongs to the plane of its name at its place', () => {
  expect(planeIdOfColumn(planes, 'wood', 2)).toBe('c');
});

test('a plane that moved since it was measured is found by its name when only one has it', () => {
  expect(planeIdOfColumn(planes, 'field', 0)).toBe('d');
  expect(planeIdOfColumn(planes, 'wood', 0)).toBeNull();
  expect(planeIdOfColumn(planes, 'lake', 1)).toBeNull();
});

test('namesakes get keys of their own', () => {
  expect(withKeys(planes, ({ name }) => name).map(({ key }) => key)).toEqual([
    'sky 0',
    'wood 0',
    'wood 1',
    'field 0',
  ]);
});
