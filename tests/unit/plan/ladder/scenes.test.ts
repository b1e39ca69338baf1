/** Planned ladders of rendered scenes: their own air gives them back, more air takes them back. Truth: independent code. */
import { differenceCiede2000 } from 'culori';
import { describe, expect, it } from 'vitest';
import { PlannedPlane, Setup } from '#server/core/contract/setup.ts';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';
import { measurePair } from '#server/core/measure/measure-pair.ts';
import { airChange, changeAir, skyChange } from '#server/core/plan/air/through-air.ts';
import { plannedThrough } from '#server/core/plan/ladder/amounts.ts';
import { groupPlanes } from '#server/core/plan/ladder/group-planes.ts';
import type { PictureToPlan } from '#server/core/plan/ladder/picture-to-plan.ts';
import { planLadder } from '#server/core/plan/ladder/plan-ladder.ts';
import { rungOf } from '#server/core/plan/ladder/rungs.ts';
import { transmissionsOf } from '#server/core/plan/ladder/transmissions.ts';
import { encodeScene, renderScene, type Scene } from '#tests/fixtures/scenes/render-scene.ts';
import { truthOf } from '#tests/fixtures/scenes/truth.ts';
import { rasterOf, SMALL, speckled, toPlan } from './a-picture.ts';

const PATIENT_MS = 120_000;
const away = differenceCiede2000();
const grey = (l: number) => ({ mode: 'lab65' as const, l, a: 0, b: 0 });
const PLANNED = ['dark', 'mid', 'light', 'chroma', 'strong', 'warmCool', 'airDistance'] as const;

describe.each(SMALL)('$name planned with its own air and distances', (parameters) => {
  const scene = renderScene(parameters);
  const picture = toPlan(scene);

  it('comes back unchanged, within 1 dE00 of the truth plane by plane', { timeout: PATIENT_MS }, () => {
    const truth = truthOf(scene, false);
    const { ladder } = planLadder(picture, { strength: 0, air: 'photograph' });
    expect(ladder.map(({ name }) => name)).toEqual(scene.names);
    ladder.forEach((rung, at) => {
      const own = truth.planes[at] as (typeof truth.planes)[number];
      for (const key of ['dark', 'mid', 'light'] as const) {
        expect(away(grey(rung[key]), grey(own[key])), `${rung.name} ${key}`).toBeLessThanOrEqual(1);
      }
      for (const key of ['chroma', 'strong'] as const) {
        expect(Math.abs(rung[key] - own[key]), `${rung.name} ${key}`).toBeLessThanOrEqual(1);
      }
      for (const key of PLANNED) {
        const before = picture.planes[at]?.measures[key] ?? Number.NaN;
        expect(Math.abs((rung[key] ?? Number.NaN) - before), `${rung.name} ${key}`).toBeLessThanOrEqual(1e-3);
      }
    });
  });

  it('is a plan that goes back, the more the stronger', () => {
    const plans = [0, 0.25, 0.5, 1, 2, 4].map((strength) => planLadder(picture, { strength }).ladder);
    for (const [at, plane] of picture.planes.entries()) {
      if (plane.kind === 'sky') continue;
      plans.slice(1).forEach((plan, before) => {
        const [less, more] = [plans[before]?.[at], plan[at]];
        if (!less || !more) throw new Error('A rung is missing.');
        if (less.dark < (picture.air?.L ?? 0)) expect(more.dark).toBeGreaterThanOrEqual(less.dark - 0.01);
        expect(more.light - more.dark).toBeLessThanOrEqual(less.light - less.dark + 0.01);
        expect(more.airDistance ?? 0).toBeLessThanOrEqual((less.airDistance ?? 0) + 0.05);
      });
    }
    const darks = plans[3]?.slice(1).map(({ dark }) => dark) ?? [];
    // Sky first; then each nearer plane has the deeper darks, but for the mixing of many pixels' darks.
    darks.slice(1).forEach((near, at) => {
      expect(near).toBeLessThanOrEqual((darks[at] as number) + 0.5);
    });
  });

  it('has amounts of air that never fall towards the far planes', () => {
    const { through } = transmissionsOf(picture.planes.slice(1), picture.air);
    expect(through.at(-1)).toBe(1);
    through.slice(1).forEach((near, at) => {
      expect(near).toBeGreaterThanOrEqual(through[at] as number);
      expect(through[at]).toBeGreaterThanOrEqual(0.1);
    });
  });

  it('gives the same plan from the same picture', () => {
    const plan = () => planLadder(toPlan(scene), { strength: 1.3 });
    expect(JSON.stringify(plan())).toBe(JSON.stringify(plan()));
  });
});

describe('a plan against the same scene rendered anew in the planned air', () => {
  const photo = { L: 80, a: -2, b: -9 };
  const through = [0.45, 0.7, 1];

  it.each([
    { air: photo, planned: [0.3, 0.6, 1] },
    { air: { L: 78, a: 8, b: -6 }, planned: [0.45, 0.7, 1] },
    { air: { L: 84, a: 5, b: 18 }, planned: [0.25, 0.5, 0.8] },
  ])('has the figures of that scene ($air, t $planned)', { timeout: PATIENT_MS }, ({ air, planned }) => {
    const picture = toPlan(renderScene(speckled(through, photo)));
    const truth = truthOf(renderScene(speckled(planned, air)), false);
    picture.planes.slice(1).forEach((plane, at) => {
      const group = { isSky: false, members: [{ plane, through: through[at] as number }] };
      const rung = rungOf(group, planned[at] as number, { photo, planned: air }, null);
      const own = truth.planes[at + 1] as (typeof truth.planes)[number];
      const [seen, wanted] = [
        { mode: 'lab65' as const, l: rung.mid, a: rung.a, b: rung.b },
        { mode: 'lab65' as const, l: own.mid, a: own.a, b: own.b },
      ];
      expect(away(seen, wanted), `${plane.name} middle`).toBeLessThanOrEqual(1);
      expect(away(grey(rung.dark), grey(own.dark)), `${plane.name} dark`).toBeLessThanOrEqual(1);
      expect(away(grey(rung.light), grey(own.light)), `${plane.name} light`).toBeLessThanOrEqual(1);
      expect(Math.abs(rung.chroma - own.chroma), `${plane.name} chroma`).toBeLessThanOrEqual(1);
    });
  });

  it('puts another fifth of each plane’s light away at strength 1, with what the photograph tells of its air', () => {
    const picture = toPlan(renderScene(speckled(through, photo)));
    const { ladder } = planLadder(picture);
    const truth = truthOf(renderScene(speckled([0.45 * 0.64, 0.7 * 0.8, 1], photo)), false);
    ladder.slice(1).forEach((rung, at) => {
      // The photograph's transmissions are known to 0.08 (the dark channel's own tolerance), which is 3 L* here.
      expect(Math.abs(rung.mid - (truth.planes[at + 1]?.mid ?? Number.NaN)), rung.name).toBeLessThanOrEqual(
        3,
      );
    });
  });
});

/** Paints the plan of a picture: every pixel through the change of its plane. */
function paintedPlan(scene: Scene, picture: PictureToPlan, planned = { L: 80, a: 6, b: -8 }): EncodedRaster {
  const { air: photo } = picture;
  if (!photo) throw new Error('The scene has no air.');
  const land = picture.planes.slice(1);
  const { through } = transmissionsOf(land, photo);
  const groups = groupPlanes(
    land.map((plane, at) => ({ plane, through: through[at] as number })),
    land.length,
  );
  const wanted = plannedThrough(groups, { photo, planned }, { strength: 1, airFactor: 1, darksClimb: true });
  const linear = new Float64Array(scene.linear.length);
  scene.labels.forEach((label, pixel) => {
    const [t, to] = [through[label - 1] ?? 1, wanted[label - 1] ?? 1];
    const change =
      label === 0
        ? skyChange(photo, planned)
        : airChange({ air: photo, through: t }, { air: planned, through: to });
    const colour = Float32Array.from(scene.linear.subarray(pixel * 3, pixel * 3 + 3));
    linear.set(changeAir(colour, change).linear, pixel * 3);
  });
  return encodedRaster(scene.widthPx, scene.heightPx, encodeScene({ ...scene, linear }));
}

describe('a printed ladder as the plan of a setup', () => {
  const scene = renderScene(SMALL[1] as (typeof SMALL)[number]);
  const planesOf = () =>
    scene.names.map((name, at) => ({ name, kind: scene.kinds[at], reference: scene.outlines[at] }));
  const gapsOf = (painting: EncodedRaster, plan: unknown, air: unknown = null) => {
    const setup = Setup.parse({ planes: planesOf(), plan, air });
    return measurePair(
      { reference: { raster: rasterOf(scene) }, painting: { raster: painting }, setup },
      { doubt: false },
    );
  };

  it('passes through JSON, and leaves no gap where the painting is that plan', () => {
    const plan = JSON.parse(JSON.stringify(planLadder(toPlan(scene), { strength: 0 }).ladder));
    expect(plan.map((rung: unknown) => PlannedPlane.parse(rung))).toEqual(plan);
    const document = gapsOf(rasterOf(scene), plan);
    expect(document.target).toBe('plan');
    for (const { gap, name } of document.planes) {
      for (const key of PLANNED)
        expect(Math.abs(gap?.[key] ?? 1), `${name} ${key}`).toBeLessThanOrEqual(1e-3);
    }
  });

  it('leaves none either where air and amounts are changed and the painting follows', () => {
    const picture = toPlan(scene);
    const air = { L: 80, a: 6, b: -8 };
    const { ladder } = planLadder(picture, { air });
    const painting = paintedPlan(scene, picture, air);
    for (const { gap, name } of gapsOf(painting, ladder, { painting: air }).planes) {
      for (const key of PLANNED) expect(Math.abs(gap?.[key] ?? 9), `${name} ${key}`).toBeLessThanOrEqual(0.7);
    }
  });
});

describe('the amounts of air in a photograph', () => {
  it.each([[[0.3, 0.5, 1]], [[0.5, 0.8, 1]], [[0.2, 0.45, 0.9]]])(
    'are found where every window holds a black speck (t %j)',
    (through) => {
      const air = { L: 80, a: -2, b: -9 };
      const picture = toPlan(renderScene(speckled(through, air)));
      const found = transmissionsOf(picture.planes.slice(1), picture.air).through;
      through.forEach((t, at) => {
        expect(Math.abs((found[at] as number) - t / (through.at(-1) as number))).toBeLessThanOrEqual(0.08);
      });
    },
  );
});
