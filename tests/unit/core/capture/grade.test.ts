/** Capture grades by the rules of the measuring page, section 1; every reason has its advice. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ADVICE, adviceFor, RESHOOT_STEPS } from '#server/core/capture/advice.ts';
import { gradeCapture } from '#server/core/capture/grade.ts';
import type { PhotoFacts } from '#server/core/capture/photo-facts.ts';
import { CAPTURE_REASONS } from '#server/core/capture/reasons.ts';

const GOOD: PhotoFacts = {
  cards: 2,
  clippedCards: 0,
  border: false,
  unevenness: 0.02,
  cardsApart: 1,
  crookedDeg: 1,
  sideRatioError: 0.01,
  shortSidePx: 1600,
  fillsPhoto: true,
  soft: false,
  glareShare: 0,
  wet: null,
  notes: [],
};
const CLEAN = { glare: [0, 0], clippedSky: 0, clippedDarks: 0 };
const NOTHING = { cast: false, toneMapped: false };
const graded = (change: Partial<PhotoFacts>) => gradeCapture({ ...GOOD, ...change }, CLEAN, NOTHING);

describe('the grade', () => {
  it('is A for two cards, B for one, C for none and where nothing is known', () => {
    expect(graded({})).toEqual({ grade: 'A', reasons: [] });
    expect(graded({ cards: 1, unevenness: null, cardsApart: null })).toEqual({ grade: 'B', reasons: [] });
    expect(graded({ cards: 0 })).toEqual({ grade: 'C', reasons: ['no neutral'] });
    expect(gradeCapture(null, CLEAN, NOTHING)).toEqual({ grade: 'C', reasons: ['no neutral'] });
  });

  it.each([
    ['uneven light', { unevenness: 0.081 }],
    ['glare', { glareShare: 0.011 }],
    ['mixed light', { cardsApart: 5.1 }],
    ['clipping', { cards: 1, clippedCards: 1 }],
  ] as const)('falls by one for %s', (reason, change) => {
    expect(graded(change)).toEqual({ grade: 'B', reasons: [reason] });
  });

  it('stays at its limits: 8 %, 1 % and 5', () => {
    expect(graded({ unevenness: 0.08, glareShare: 0.01, cardsApart: 5 })).toEqual({
      grade: 'A',
      reasons: [],
    });
  });

  it('is never below C, whatever is wrong', () => {
    const all = graded({ cards: 1, clippedCards: 1, unevenness: 0.4, glareShare: 0.2, cardsApart: 20 });
    expect(all.grade).toBe('C');
    expect(all.reasons).toEqual(['clipping', 'glare', 'uneven light', 'mixed light']);
  });

  it.each([
    ['crooked', { crookedDeg: 6 }],
    ['crooked', { sideRatioError: 0.04 }],
    ['too small or soft', { shortSidePx: 280 }],
    ['too small or soft', { soft: true }],
    ['wet', { wet: true }],
  ] as const)('says %s without taking a grade away', (reason, change) => {
    expect(graded(change)).toEqual({ grade: 'A', reasons: [reason] });
  });

  it('says clipping of sky and darks, glare in a plane, a cast, a tone-mapped reference', () => {
    const seen = { cast: true, toneMapped: true };
    const planes = { glare: [0, 0.05], clippedSky: 0.006, clippedDarks: 0 };
    expect(gradeCapture(GOOD, planes, seen).reasons).toEqual([
      'clipping',
      'glare',
      'reference looks tone-mapped',
      'one cast over everything',
    ]);
    expect(gradeCapture(GOOD, { ...CLEAN, clippedDarks: 0.021 }, NOTHING).reasons).toEqual(['clipping']);
  });

  it('lists reasons in one order, each once, and always has a grade', () => {
    const share = fc.option(fc.double({ min: 0, max: 1, noNaN: true }));
    fc.assert(
      fc.property(fc.nat(4), fc.nat(3), share, share, (cards, clippedCards, unevenness, soft) => {
        const { grade, reasons } = graded({
          cards,
          clippedCards,
          unevenness,
          soft: soft === null ? null : soft > 0.5,
        });
        expect(['A', 'B', 'C']).toContain(grade);
        const places = reasons.map((reason) => CAPTURE_REASONS.indexOf(reason));
        expect(places).toEqual([...new Set(places)].sort((p, q) => p - q));
        if (cards === 0) expect(grade).toBe('C');
      }),
    );
  });
});

describe('advice', () => {
  it('is one short sentence for every reason, and a few steps for a new photo', () => {
    expect(Object.keys(ADVICE)).toEqual([...CAPTURE_REASONS]);
    for (const reason of CAPTURE_REASONS) {
      const words = adviceFor(reason).split(/\s+/);
      expect(words.length, reason).toBeLessThanOrEqual(30);
      expect(adviceFor(reason)).toMatch(/^[A-Z].*\.$/);
    }
    expect(RESHOOT_STEPS.length).toBeLessThanOrEqual(5);
  });
});
