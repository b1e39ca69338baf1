/** A setup is refused by name, with one sentence. */
import { describe, expect, it } from 'vitest';
import { parseSetup } from '#server/core/contract/parse-setup.ts';
import { Problem } from '#server/core/problem.ts';

const square = [
  [0, 0],
  [1, 0],
  [1, 1],
];

function refusal(input: unknown): string {
  try {
    parseSetup(input);
  } catch (thrown) {
    if (thrown instanceof Problem) return `${thrown.code}: ${thrown.message}`;
    throw thrown;
  }
  return 'accepted';
}

describe('a setup', () => {
  it('gets its defaults', () => {
    expect(parseSetup({ planes: [{ name: 'sky', reference: square }] })).toEqual({
      planes: [{ name: 'sky', kind: 'land', tilt: null, unreliable: false, reference: square }],
      conditions: [],
      air: null,
      focus: null,
      meant: [],
      plan: null,
    });
  });

  it('has its unknown keys refused by name and place', () => {
    expect(refusal({ planes: [{ name: 'sky', plnes: 1, reference: square }] })).toBe(
      "setup-invalid: The setup has an unknown key 'plnes' at planes[0]. Remove it or correct its spelling.",
    );
    expect(refusal({ plnes: [] })).toBe(
      "setup-invalid: The setup has an unknown key 'plnes' at its top level. Remove it or correct its spelling.",
    );
    expect(refusal({ planes: [{ name: 'sky', reference: square }], a: 1, b: 2 })).toContain(
      "2 unknown keys at its top level: 'a', 'b'",
    );
  });

  it('has a short outline told by its plane', () => {
    expect(
      refusal({
        planes: [
          {
            name: 'far ridge',
            reference: [
              [0, 0],
              [1, 1],
            ],
          },
        ],
      }),
    ).toBe(
      "outline-invalid: The outline of 'far ridge' on the reference has 2 points. An outline needs at least 3; add some.",
    );
  });

  it('is told what is missing or wrong', () => {
    expect(refusal({})).toBe("setup-invalid: The setup's planes is missing. Add it.");
    expect(refusal([])).toContain('setup-invalid: The setup is not right');
    expect(refusal({ planes: [{ name: 'sky', kind: 'cloud', reference: square }] })).toContain(
      "The setup's planes[0].kind is not right",
    );
    expect(
      refusal({
        planes: [
          {
            name: 'sky',
            reference: [
              [0, 0],
              [1, 'x'],
              [1, 1],
            ],
          },
        ],
      }),
    ).toContain('planes[0].reference[1][1]');
    expect(
      refusal({
        planes: [{ name: 'sky', reference: square }],
        photo: { cards: [{ box: [0, 0, 1, 1], Y: 18 }] },
      }),
    ).toContain('photo.cards[0].Y is not right');
  });
});
