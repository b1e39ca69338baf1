/** Outlines that enclose nothing are refused in words. */
import { describe, expect, it } from 'vitest';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { checkOutline } from '#server/core/planes/check-outline.ts';
import { Problem } from '#server/core/problem.ts';

function refusal(outline: FractionPoint[]): string {
  try {
    checkOutline('far ridge', outline);
  } catch (thrown) {
    if (thrown instanceof Problem && thrown.code === 'outline-invalid') return thrown.message;
    throw thrown;
  }
  return 'accepted';
}

describe('an outline', () => {
  it('needs three points', () => {
    expect(
      refusal([
        [0, 0],
        [1, 1],
      ]),
    ).toBe("The outline of 'far ridge' has 2 points. An outline needs at least 3; add some.");
    expect(refusal([[0, 0]])).toContain('has 1 point.');
    expect(refusal([])).toContain('has 0 points.');
  });

  it('may not cross itself, and says where', () => {
    const bow: FractionPoint[] = [
      [0, 0],
      [1, 1],
      [1, 0],
      [0, 1],
    ];
    expect(refusal(bow)).toBe(
      "The outline of 'far ridge' crosses itself between points 1 and 3. Move one of them.",
    );
  });

  it('may not cross itself through one of its own points', () => {
    expect(
      refusal([
        [0, 0],
        [0.4, 0],
        [0.4, 0.4],
        [0.6, 0.4],
        [0.2, 0.2],
        [0.6, 0],
        [0.6, -0.2],
        [0.2, -0.2],
        [0.2, 0.5],
        [0, 0.5],
      ]),
    ).toContain('crosses itself');
  });

  it('may touch itself, and may name a point twice', () => {
    expect(
      refusal([
        [0, 0],
        [1, 0],
        [0.5, 0.5],
        [1, 1],
        [0, 1],
        [0.5, 0.5],
      ]),
    ).toBe('accepted');
    expect(
      refusal([
        [0, 0],
        [0, 0],
        [1, 0],
        [1, 1],
        [1, 1],
        [0, 0],
      ]),
    ).toBe('accepted');
  });

  it('needs an area', () => {
    expect(
      refusal([
        [0, 0],
        [0.5, 0.5],
        [1, 1],
      ]),
    ).toContain('no area');
    expect(
      refusal([
        [0.3, 0.3],
        [0.3, 0.3],
        [0.3, 0.3],
      ]),
    ).toContain('no area');
  });

  it('has fractions for coordinates', () => {
    expect(
      refusal([
        [0, 0],
        [512, 40],
        [0, 300],
      ]),
    ).toContain('has point 2 at (512, 40)');
    expect(
      refusal([
        [0, 0],
        [Number.NaN, 0],
        [0, 1],
      ]),
    ).toContain('has point 2 at (NaN, 0)');
    expect(
      refusal([
        [0, 0],
        [1, Number.POSITIVE_INFINITY],
        [0, 1],
      ]),
    ).toContain('Points are fractions');
  });

  it('is checked quickly when it has 4,000 points', () => {
    const many = Array.from({ length: 4000 }, (_, at): FractionPoint => {
      const angle = (at / 4000) * 2 * Math.PI;
      const radius = 0.4 + 0.05 * Math.sin(angle * 41);
      return [0.5 + radius * Math.cos(angle), 0.5 + radius * Math.sin(angle)];
    });
    expect(refusal(many)).toBe('accepted');
  });
});
