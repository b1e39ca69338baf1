/** The order on the wall: the same for all, shuffled by nothing that tells who or when. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hang, letterOf } from '#server/core/wall/hang.ts';

const painting = (id: string, follows: string | null = null) => ({ id, follows });

describe('hanging paintings', () => {
  test('hangs every painting once, with its states oldest first', () => {
    const hung = hang('board', [painting('a'), painting('b'), painting('a2', 'a'), painting('a3', 'a2')]);
    expect(hung.map(({ letter }) => letter)).toEqual(['A', 'B']);
    const states = hung.map((each) => each.states.map(({ id }) => id));
    expect(states).toContainEqual(['a', 'a2', 'a3']);
    expect(states).toContainEqual(['b']);
  });

  test('does not go by the order of posting', () => {
    const ids = fc.uniqueArray(fc.uuid(), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(ids, fc.uuid(), (pictures, boardId) => {
        const order = (list: string[]) =>
          hang(
            boardId,
            list.map((id) => painting(id)),
          ).map(({ states }) => states[0]?.id);
        expect(order(pictures.toReversed())).toEqual(order(pictures));
        expect(order(pictures).toSorted()).toEqual(pictures.toSorted());
      }),
    );
  });

  test('keeps its places when another state is posted', () => {
    const before = hang('board', [painting('a'), painting('b'), painting('c')]);
    const after = hang('board', [painting('a'), painting('b'), painting('c'), painting('b2', 'b')]);
    expect(after.map(({ states }) => states[0]?.id)).toEqual(before.map(({ states }) => states[0]?.id));
  });

  test('over many boards the painting that was posted first hangs anywhere', () => {
    const counts = [0, 0, 0, 0, 0];
    const boards = 4000;
    for (let board = 0; board < boards; board++) {
      const pictures = counts.map((_, at) => painting(`picture-${board}-${at}`));
      const place = hang(`board-${board}`, pictures).findIndex(({ states }) => states[0] === pictures[0]);
      counts[place] = (counts[place] ?? 0) + 1;
    }
    const expected = boards / counts.length;
    const chi = counts.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
    // Chi-squared with 4 degrees of freedom exceeds 18.47 once in a thousand (NIST/SEMATECH e-Handbook, 1.3.6.7.4).
    expect(chi).toBeLessThan(18.47);
  });

  test('letters go on after Z', () => {
    expect([0, 25, 26, 51, 52].map(letterOf)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA']);
  });
});
