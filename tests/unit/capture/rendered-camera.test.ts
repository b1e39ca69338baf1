/** Frozen photographs through a rendered camera come back within ±1.5 L* and ±2 chroma (the measuring rules, section 7). */
import { describe, expect, it } from 'vitest';
import { proposeCorners } from '#server/core/capture/propose-corners.ts';
import cases from '#tests/fixtures/camera/cases.json' with { type: 'json' };
import { measuredShot, type ShownCase, takenOf } from '#tests/fixtures/camera/shots.ts';

const LIGHTNESS = 1.5;
const CHROMA = 2;
/** Fractions of the photo within which a proposed corner counts as found. */
const CORNER = 0.01;

const shown: (ShownCase & { grade: string })[] = cases.cases;

describe.each(shown)('$name', (one) => {
  it('is put right, graded, and its corners are found', async () => {
    const taken = await takenOf(one);
    const { document, plate } = measuredShot(taken);
    for (const { name, gap } of document.planes) {
      for (const key of ['dark', 'mid', 'light'] as const) {
        expect(Math.abs(gap?.[key] ?? Number.NaN), `${name} ${key}`).toBeLessThanOrEqual(LIGHTNESS);
      }
      for (const key of ['chroma', 'strong'] as const) {
        expect(Math.abs(gap?.[key] ?? Number.NaN), `${name} ${key}`).toBeLessThanOrEqual(CHROMA);
      }
    }
    const { grade, reasons, unevenness, glareShare } = document.capture;
    expect(grade).toBe(one.grade);
    expect(reasons.includes('uneven light')).toBe(one.fallOff !== undefined);
    expect(reasons.includes('glare')).toBe(one.glare !== undefined);
    if (one.fallOff) expect(Math.abs((unevenness ?? 0) - 0.2)).toBeLessThan(0.025);
    else expect(unevenness ?? 0).toBeLessThan(0.03);
    expect((glareShare ?? 0) > 0.01).toBe(one.glare !== undefined);
    expect(document.capture.overlay !== null).toBe(one.glare !== undefined);
    expect(plate.facts?.border).toBe(true);
    const proposed = proposeCorners(taken.photo);
    taken.shot.corners.forEach(([x, y], at) => {
      const [px, py] = proposed?.[at] ?? [Number.NaN, Number.NaN];
      expect(Math.hypot(px - x, py - y), `corner ${at + 1}`).toBeLessThan(CORNER);
    });
  }, 120_000);
});
