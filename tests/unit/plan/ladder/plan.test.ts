/** What a planned ladder decides and says: airs, conditions, groups, handles. */
import { describe, expect, it } from 'vitest';
import { rgbFromLab } from '#server/core/colour/lab.ts';
import { warmCoolKernel } from '#server/core/colour/temperature.ts';
import { LIKELY_AIRS } from '#server/core/plan/air/likely-airs.ts';
import { planLadder } from '#server/core/plan/ladder/plan-ladder.ts';
import { plannedAir } from '#server/core/plan/ladder/planned-air.ts';
import { USUAL_WISHES } from '#server/core/plan/ladder/wishes.ts';
import { AIR, rungOf, SKY, says, valley, WOOD, wood } from './hazy-valley.ts';
import { madeUp } from './made-up.ts';

describe('a planned ladder of a hazy valley', () => {
  it('has one rung a plane, far to near, climbing and narrowing on its way back', () => {
    const { ladder, notes } = planLadder(valley());
    expect(ladder.map(({ name }) => name)).toEqual(['sky', 'far ridge', 'middle hill', 'meadow']);
    const [, far, middle, near] = ladder as [unknown, ...typeof ladder];
    if (!far || !middle || !near) throw new Error('Three planes of land.');
    expect(far.dark).toBeGreaterThan(middle.dark);
    expect(middle.dark).toBeGreaterThan(near.dark);
    expect(far.light - far.dark).toBeLessThan(middle.light - middle.dark);
    expect(far.airDistance ?? 99).toBeLessThan(middle.airDistance ?? 0);
    expect(notes).toEqual([]);
  });

  it('leaves the nearest plane and the sky as they are, in the photograph’s own air', () => {
    const picture = valley();
    const { ladder } = planLadder(picture, { strength: 3 });
    for (const at of [0, 3]) {
      expect(ladder[at]?.mid).toBeCloseTo(picture.planes[at]?.measures.mid ?? Number.NaN, 0);
    }
  });
});

describe('likely airs', () => {
  it('are five colours a screen shows, pale, cool but for the warm one, apart by more than half a step', () => {
    const airs = Object.values(LIKELY_AIRS);
    expect(Object.keys(LIKELY_AIRS)).toEqual(['blue', 'blue-violet', 'red-violet', 'blue-green', 'warm']);
    for (const air of airs) {
      expect(rgbFromLab(air).every((channel) => channel >= 0 && channel <= 1)).toBe(true);
      expect(warmCoolKernel(air.a, air.b) > 0).toBe(
        air === LIKELY_AIRS.warm || air === LIKELY_AIRS['red-violet'],
      );
      for (const other of airs) {
        if (other !== air) expect(Math.hypot(air.a - other.a, air.b - other.b)).toBeGreaterThan(5);
      }
    }
  });

  it.each(Object.keys(LIKELY_AIRS) as (keyof typeof LIKELY_AIRS)[])(
    'turn the distance towards %s and keep how light the air is',
    (name) => {
      const { air } = plannedAir(AIR, { ...USUAL_WISHES, air: name });
      expect(air).toEqual({ ...LIKELY_AIRS[name], L: AIR.L });
      const [own, turned] = [planLadder(valley()), planLadder(valley(), { air: name })];
      const change = rungOf(turned.ladder, 'far ridge').warmCool - rungOf(own.ladder, 'far ridge').warmCool;
      expect(Math.sign(change)).toBe(Math.sign(warmCoolKernel(air.a, air.b) - warmCoolKernel(AIR.a, AIR.b)));
    },
  );

  it('say it when the air lies outside what a screen shows, and plan with what it shows', () => {
    const { ladder, notes } = planLadder(valley(), { air: { L: 60, a: 90, b: -90 } });
    expect(
      says(notes, /outside what a screen shows: it is planned with C\* \d+ instead of 127/),
    ).toHaveLength(1);
    expect(ladder).toHaveLength(4);
    const light = planLadder(valley(), { air: { L: 130, a: 0, b: 0 } });
    expect(says(light.notes, /L\* 130; a screen shows 0 to 100/)).toHaveLength(1);
  });

  it('say it when the air is darker than the darks', () => {
    const { notes } = planLadder(valley(), { air: { L: 8, a: 2, b: -4 } });
    expect(says(notes, /planned air \(L\* 8\) is darker than the darks/)).toHaveLength(1);
  });

  it('stand in, and say so, where the photograph shows no sky', () => {
    const picture = madeUp([wood('wood', 0.6), wood('meadow', 1)], null);
    const { ladder, notes } = planLadder(picture);
    expect(says(notes, /too little open sky .* uses a blue one/)).toHaveLength(1);
    expect(rungOf(ladder, 'wood').dark).toBeGreaterThan(picture.planes[0]?.measures.dark ?? 99);
    expect(says(planLadder(picture, { conditions: ['fog'] }).notes, /uses a grey one/)).toHaveLength(1);
  });
});

describe('conditions', () => {
  it('make the air of a low sun warm, but not at strength 0 nor against a choice', () => {
    const far = (wishes: Parameters<typeof planLadder>[1]) =>
      rungOf(planLadder(valley(), wishes).ladder, 'far ridge').warmCool;
    expect(far({ conditions: ['low-sun'] })).toBeGreaterThan(0);
    expect(far({ conditions: ['low-sun'], strength: 0 })).toBeCloseTo(far({ strength: 0 }), 9);
    expect(far({ conditions: ['low-sun'], air: 'photograph' })).toBeCloseTo(far({}), 9);
  });

  it('let the lights of snow go down with distance, with the reason', () => {
    const snow = [
      { L: 88, a: 0, b: -2 },
      { L: 97, a: 0, b: 2 },
    ];
    const picture = madeUp(
      [
        SKY,
        { ...wood('snow far', 0.5, snow), kind: 'snow' as const },
        { ...wood('snow near', 1, snow), kind: 'snow' as const },
      ],
      AIR,
    );
    const { ladder, notes } = planLadder(picture, { conditions: ['snow'] });
    expect(rungOf(ladder, 'snow far').light).toBeLessThan(picture.planes[1]?.measures.light ?? 0);
    expect(says(notes, /Snow is lighter than the air/)).toHaveLength(1);
  });

  it('plan fewer planes and more air in fog', () => {
    const picture = () =>
      madeUp([SKY, ...[0.3, 0.45, 0.6, 0.8, 1].map((t, at) => wood(`hill ${at + 1}`, t))], AIR);
    const different = (conditions: ('fog' | 'night')[]) =>
      new Set(planLadder(picture(), { conditions }).ladder.map(({ mid }) => mid.toFixed(6))).size;
    expect(different([])).toBe(6);
    expect(different(['fog'])).toBe(4);
    expect(different(['night'])).toBe(3);
    const far = (conditions: 'fog'[]) =>
      rungOf(planLadder(valley(), { conditions }).ladder, 'far ridge').dark;
    expect(far(['fog'])).toBeGreaterThan(far([]));
  });

  it('add less air where there is little', () => {
    const dark = (conditions: ('clear-air' | 'shallow' | 'smoke')[]) =>
      rungOf(planLadder(valley(), { conditions }).ladder, 'far ridge').dark;
    expect(dark(['shallow'])).toBeLessThan(dark(['clear-air']));
    expect(dark(['clear-air'])).toBeLessThan(dark([]));
    expect(dark([])).toBeLessThan(dark(['smoke']));
  });
});

describe('groups', () => {
  const picture = () =>
    madeUp(
      [SKY, wood('far ridge', 0.4), wood('second ridge', 0.44), wood('middle hill', 0.7), wood('meadow', 1)],
      AIR,
    );

  it('join the neighbours that differ least, and give each of them the figures of all', () => {
    const { ladder, notes } = planLadder(picture(), { count: 4 });
    const [far, second] = [rungOf(ladder, 'far ridge'), rungOf(ladder, 'second ridge')];
    expect({ ...far, name: '' }).toEqual({ ...second, name: '' });
    expect(ladder).toHaveLength(5);
    expect(says(notes, /far ridge with the second ridge are planned as one/)).toHaveLength(1);
  });

  it('never join sky and land, and say when there are not as many planes as wished', () => {
    const { ladder, notes } = planLadder(picture(), { count: 1 });
    expect(new Set(ladder.map(({ mid }) => mid.toFixed(6))).size).toBe(2);
    expect(says(notes, /Planes in the plan: 2 instead of 1\. Sky and land/)).toHaveLength(1);
    expect(
      says(
        planLadder(picture(), { count: 9 }).notes,
        /Planes in the plan: 5 instead of 9\. The photograph has no more/,
      ),
    ).toHaveLength(1);
  });
});

describe('what does not recede', () => {
  it('is said where two planes merge', () => {
    const picture = madeUp([SKY, wood('far ridge', 0.5), wood('middle hill', 0.52), wood('meadow', 1)], AIR);
    expect(
      says(planLadder(picture, { strength: 0 }).notes, /far ridge and the middle hill come out with almost/),
    ).toHaveLength(1);
    // Twice the usual air parts them.
    expect(says(planLadder(picture, { strength: 2 }).notes, /come out with almost/)).toHaveLength(0);
  });

  it('is kept in fog, with the reason', () => {
    const picture = madeUp([SKY, wood('far ridge', 0.5), wood('middle hill', 0.52), wood('meadow', 1)], AIR);
    const { notes } = planLadder(picture, { strength: 0, conditions: ['fog'] });
    expect(says(notes, /come out with almost .* Kept: In fog the air is grey/)).toHaveLength(1);
  });

  const dark = WOOD.map(({ L, a, b }) => ({ L: L * 0.6, a, b }));
  const pale = WOOD.map(({ L, a, b }) => ({ L: L + 45, a, b }));
  const turned = () => madeUp([SKY, wood('dark wood', 0.95, dark), wood('field', 1, pale)], AIR);

  it('is put right with air at the usual strength', () => {
    const { ladder, notes } = planLadder(turned());
    expect(rungOf(ladder, 'dark wood').dark).toBeGreaterThanOrEqual(rungOf(ladder, 'field').dark - 0.1);
    expect(says(notes, /darker than those of/)).toHaveLength(0);
  });

  it('is not asked of a plane behind water, which mirrors the light of the sky', () => {
    const lake = { ...wood('lake', 1, pale), kind: 'water' as const };
    const picture = madeUp([SKY, wood('dark wood', 0.95, dark), lake], AIR);
    const land = madeUp([SKY, wood('dark wood', 0.95, dark), wood('field', 1, pale)], AIR);
    const behind = (from: typeof picture) => rungOf(planLadder(from).ladder, 'dark wood').dark;
    expect(behind(picture)).toBeLessThan(behind(land) - 5);
    expect(says(planLadder(picture, { strength: 0 }).notes, /darker than those of/)).toEqual([]);
  });

  it('is said of the photograph as it is', () => {
    const { notes } = planLadder(turned(), { strength: 0 });
    expect(says(notes, /darks of the dark wood are about .* darker than those of the field/)).toHaveLength(1);
    const kept = planLadder(turned(), { strength: 0, conditions: ['cloud-shadow'] });
    expect(
      says(kept.notes, /darker than those of the field .*Kept: A foreground in cloud shadow/),
    ).toHaveLength(1);
  });

  it('is kept and said where a person set it so', () => {
    const { ladder, notes } = planLadder(valley(), { handles: { 'far ridge': { dark: 10 } } });
    expect(rungOf(ladder, 'far ridge').dark).toBeCloseTo(10, 0);
    expect(says(notes, /darks of the far ridge .* Kept as you set it/)).toHaveLength(1);
  });
});

describe('handles', () => {
  const plain = () => rungOf(planLadder(valley()).ladder, 'middle hill');
  const by = (handle: object) =>
    rungOf(planLadder(valley(), { handles: { 'middle hill': handle } }).ladder, 'middle hill');

  it('shift the whole plane', () => {
    const [before, after] = [plain(), by({ mid: 6 })];
    for (const key of ['dark', 'mid', 'light'] as const) expect(after[key] - before[key]).toBeCloseTo(6, 1);
  });

  it('strengthen or grey the colour', () => {
    expect(by({ chroma: 0.5 }).chroma).toBeCloseTo(plain().chroma / 2, 3);
    expect(by({ chroma: 0.5 }).strong).toBeCloseTo(plain().strong / 2, 3);
    expect(by({ chroma: 0.5 }).mid).toBeCloseTo(plain().mid, 6);
  });

  it('turn warm and cool', () => {
    expect(by({ warmCool: 5 }).warmCool - plain().warmCool).toBeCloseTo(5, 1);
    expect(by({ warmCool: -5 }).warmCool - plain().warmCool).toBeCloseTo(-5, 1);
  });

  it('set the darks and leave middle and lights', () => {
    const wanted = plain().dark - 8;
    expect(by({ dark: wanted }).dark).toBeCloseTo(wanted, 0);
    expect(by({ dark: wanted }).mid).toBeCloseTo(plain().mid, 6);
    expect(by({ dark: 99 }).dark).toBeCloseTo(plain().mid, 3);
  });

  it('set the lights and leave middle and darks', () => {
    const wanted = plain().light + 9;
    expect(by({ light: wanted }).light).toBeCloseTo(wanted, 0);
    expect(by({ light: wanted }).mid).toBeCloseTo(plain().mid, 6);
    expect(by({ light: wanted }).dark).toBeCloseTo(plain().dark, 6);
    expect(by({ light: 1 }).light).toBeCloseTo(plain().mid, 3);
  });

  it('keep darks and lights where they were set while the whole plane moves', () => {
    const after = by({ mid: 4, dark: plain().dark - 3, light: plain().light + 6 });
    expect(after.mid - plain().mid).toBeCloseTo(4, 1);
    expect(after.dark).toBeCloseTo(plain().dark - 3, 0);
    expect(after.light).toBeCloseTo(plain().light + 6, 0);
  });

  it('belong to the key of a plane where it has one, whatever it is called', () => {
    const picture = valley();
    const planes = picture.planes.map((plane, at) => ({ ...plane, name: 'hill', key: `p${at}` }));
    const { ladder, notes } = planLadder({ ...picture, planes }, { handles: { p2: { mid: 6 } } });
    const before = planLadder({ ...picture, planes }).ladder;
    expect(ladder.map(({ mid }, at) => mid - (before[at]?.mid ?? 0)).map(Math.round)).toEqual([0, 0, 6, 0]);
    expect(says(notes, /changes nothing/)).toEqual([]);
  });

  it('say when they meet no plane', () => {
    expect(
      says(planLadder(valley(), { handles: { lake: { mid: 3 } } }).notes, /No plane is called 'lake'/),
    ).toHaveLength(1);
  });
});
