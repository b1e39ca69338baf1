import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CONDITIONS } from '#server/core/contract/setup.ts';
import { wordsOfLever } from '#server/core/readings/card-words.ts';
import { draftCards } from '#server/core/readings/cards.ts';
import { findReadings } from '#server/core/readings/find-readings.ts';
import { HEALTH_LINE } from '#server/core/readings/health-line.ts';
import { prioritiesOf } from '#server/core/readings/priorities.ts';
import { readingsOf } from '#server/core/readings/readings.ts';
import { sceneOf } from '#server/core/readings/scene.ts';
import { undoesEachOther } from '#server/core/readings/undo.ts';
import { amountInWords, shortName, wordCount } from '#server/core/readings/words.ts';
import { type AScene, aScene, inputOf, of, type Stated } from './a-scene.ts';
import { CASES } from './cases.ts';

const lightness = fc.double({ min: 2, max: 98, noNaN: true });
const ab = fc.double({ min: -60, max: 60, noNaN: true });
const statedFigures: fc.Arbitrary<Partial<Stated>> = fc
  .record({
    levels: fc.tuple(lightness, lightness, lightness),
    a: ab,
    b: ab,
    strong: fc.double({ min: 0, max: 90, noNaN: true }),
    airDistance: fc.double({ min: 0, max: 100, noNaN: true }),
    detail: fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
    edge: fc.option(fc.double({ min: 0, max: 80, noNaN: true })),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ levels, ...rest }) => {
    const [dark, mid, light] = [...levels].sort((one, two) => one - two) as [number, number, number];
    return { dark, mid, light, ...rest };
  });

const scenes: fc.Arbitrary<AScene> = fc
  .record({
    painted: fc.array(statedFigures, { minLength: 4, maxLength: 4 }),
    seen: fc.array(statedFigures, { minLength: 4, maxLength: 4 }),
    names: fc.uniqueArray(fc.string({ minLength: 1, maxLength: 80 }), { minLength: 4, maxLength: 4 }),
    grade: fc.constantFrom('A' as const, 'B' as const, 'C' as const, null),
    target: fc.constantFrom('reference' as const, 'reference' as const, 'none' as const),
    faults: fc.subarray(CASES),
    conditions: fc.subarray([...CONDITIONS], { maxLength: 3 }),
    random: fc.boolean(),
  })
  .map(({ painted, seen, names, grade, target, faults, conditions, random }) =>
    aScene((scene) => {
      for (const { fires } of faults) fires(scene);
      scene.planes.forEach((plane, at) => {
        if (!random) return;
        Object.assign(plane.painting, painted[at]);
        Object.assign(plane.reference, seen[at]);
        renamePlane(scene, plane.name, names[at] ?? plane.name);
      });
      Object.assign(scene, { grade, target });
      scene.setup = { ...scene.setup, conditions };
    }),
  );

function renamePlane(scene: AScene, from: string, to: string): void {
  of(scene, from).name = to;
  for (const side of [scene.facts.reference, scene.facts.painting]) {
    for (const plane of side?.lightShade ?? []) if (plane.name === from) plane.name = to;
    for (const accent of side?.accents ?? []) if (accent.plane === from) accent.plane = to;
  }
}

describe('priorities and cards of any scene', () => {
  test('every sentence has at most 30 words and no hole', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        const { readings, observations, works } = readingsOf(inputOf(scene));
        for (const { sentence, severity } of [
          ...readings,
          ...observations.map((one) => ({ ...one, severity: 1 })),
        ]) {
          expect(wordCount(sentence)).toBeLessThanOrEqual(30);
          expect(sentence).not.toMatch(/undefined|NaN|null| {2}\b/);
          expect(Number.isFinite(severity)).toBe(true);
        }
        expect(works).not.toBeNull();
        expect(wordCount(works?.sentence ?? '')).toBeLessThanOrEqual(30);
      }),
      { numRuns: 400 },
    );
  });

  test('at most three are open, one a plane, each named by a different reading that speaks of it', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        const { readings, priorities, cards } = readingsOf(inputOf(scene));
        const open = cards.filter((card) => card.open);
        expect(open.length).toBeLessThanOrEqual(3);
        expect(open).toHaveLength(priorities.length);
        expect(new Set(priorities).size).toBe(priorities.length);
        expect(new Set(open.map(({ where }) => where)).size).toBe(open.length);
        expect(new Set(cards.map(({ id }) => id)).size).toBe(cards.length);
        for (const [at, id] of priorities.entries()) {
          expect(open[at]?.readings).toContain(id);
          expect(readings.find((reading) => reading.id === id)?.muted).toBeNull();
        }
      }),
      { numRuns: 400 },
    );
  });

  test('no two pieces of open advice undo each other, on one card or across cards', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        const found = findReadings(sceneOf(inputOf(scene)));
        const moves = prioritiesOf(draftCards(found), found).flatMap(({ draft }) => draft.moves);
        moves.forEach((one, at) => {
          for (const two of moves.slice(at + 1)) expect(undoesEachOther(one, two)).toBe(false);
        });
      }),
      { numRuns: 400 },
    );
  });

  test('cards name each other where they would undo each other, and no two of those are open', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        const { cards } = readingsOf(inputOf(scene));
        const byId = new Map(cards.map((card) => [card.id, card]));
        for (const { id, open, against = [] } of cards) {
          for (const other of against) {
            expect(byId.get(other)?.against).toContain(id);
            expect(open && byId.get(other)?.open).toBe(false);
          }
        }
      }),
      { numRuns: 200 },
    );
  });

  test('the health line stands wherever a hint mixes paint, and nowhere else', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        for (const { actions, healthLine, readings } of readingsOf(inputOf(scene)).cards) {
          expect(actions.length).toBeGreaterThan(0);
          expect(readings.length).toBeGreaterThan(0);
          expect(healthLine).toBe(actions.some(({ part, direction }) => wordsOfLever(part, direction).mixes));
        }
      }),
      { numRuns: 200 },
    );
  });

  test('open cards follow the rank of the trade: capture, then value, then the rest', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        const found = findReadings(sceneOf(inputOf(scene)));
        const groups = prioritiesOf(draftCards(found), found).map(({ draft }) => draft.lead.rule.group);
        expect(groups).toEqual([...groups].sort((one, two) => one - two));
      }),
      { numRuns: 200 },
    );
  });

  test('the same input gives the same output, and the input is left as it was', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        const input = inputOf(scene);
        const before = structuredClone(input);
        expect(readingsOf(input)).toEqual(readingsOf(input));
        expect(input).toEqual(before);
      }),
      { numRuns: 50 },
    );
  });
});

describe('cards', () => {
  test('the recession family of a far plane meets on one card', () => {
    const { cards, priorities, readings } = readingsOf(
      inputOf(
        aScene((scene) => {
          Object.assign(of(scene, 'far ridge').painting, {
            dark: 22,
            light: 71,
            strong: 36,
            airDistance: 60,
          });
        }),
      ),
    );
    const card = cards.find(({ plane }) => plane === 'far ridge');
    expect(card?.readings).toEqual(expect.arrayContaining(['V4', 'V7', 'C2']));
    expect(cards.filter(({ plane }) => plane === 'far ridge')).toHaveLength(1);
    expect(card?.open).toBe(true);
    expect(priorities.filter((id) => card?.readings.some((reading) => reading === id))).toHaveLength(1);
    expect(readings.map(({ id }) => id)).toEqual(expect.arrayContaining(['V4', 'V7', 'C2']));
    expect(card?.healthLine).toBe(true);
    expect(card?.check).toMatch(/^Squint/);
  });

  test('advice that would undo the card it falls on is left out of it', () => {
    const { cards } = readingsOf(
      inputOf(
        aScene((scene) => {
          Object.assign(of(scene, 'far ridge').painting, { mid: 84, dark: 20, light: 90 });
        }),
      ),
    );
    const directions = cards
      .find(({ plane }) => plane === 'far ridge')
      ?.actions.filter(({ part }) => part === 'whole' || part === 'darks')
      .map(({ direction }) => direction);
    expect(new Set(directions).size).toBe(1);
  });

  test('every lever that a rule pulls has words, and none names a pigment or tells to thin, heat, spray or sand', () => {
    const levers = CASES.flatMap(({ fires }) =>
      findReadings(sceneOf(inputOf(aScene(fires)))).flatMap((one) => one.levers),
    );
    expect(levers.length).toBeGreaterThan(CASES.length / 2);
    for (const { part, direction } of levers) {
      const { how, check, verb } = wordsOfLever(part, direction);
      expect(`${verb} ${how} ${check}`).not.toMatch(
        /cadmium|cobalt|lead|titanium|ultramarine|phthalo|ochre|umber|sienna|thin(?:ner|ned)|dilut|heat|spray|sand\b|safe/i,
      );
    }
  });

  test('the health line defers to the label', () => {
    expect(HEALTH_LINE).toBe(
      'Follow the product label, its safety data sheet and local rules. This app does not know your paint.',
    );
  });
});

describe('words', () => {
  test('a name stands in a sentence with three words at most and without its article', () => {
    expect(shortName('The far ridge', 1)).toBe('far ridge');
    expect(shortName('   ', 2)).toBe('plane 3');
    expect(shortName('the long wooded ridge behind the village', 0)).toBe('long wooded ridge…');
    expect(shortName('The', 0)).toBe('The');
  });

  test('amounts are rounded to what the grade allows', () => {
    expect(amountInWords(2.4, 'A')).toBe('a quarter step');
    expect(amountInWords(7.6, 'A')).toBe('three quarters of a step');
    expect(amountInWords(2.4, 'B')).toBe('half a step');
    expect(amountInWords(-11, 'B')).toBe('one step');
    expect(amountInWords(17, 'A')).toBe('one step and three quarters');
    expect(amountInWords(90, 'A')).toBe('three steps');
    expect(amountInWords(20, 'C')).toBeNull();
  });
});
