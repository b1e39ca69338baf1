/** The planned ladder of the plan page, and weight inside a frame: what the page's worker answers. */
import { describe, expect, it } from 'vitest';
import { plannedView } from '#app/_plan/ladder/planned-view.ts';
import { lookAt } from '#app/_plan/weight/look-at.ts';
import { encodedRaster } from '#server/core/image/raster.ts';
import { LivePlan } from '#server/core/live/layout.ts';
import { pointInFrame, pointOfFrame, rasterInFrame, WHOLE } from '#server/core/plan/in-frame.ts';
import { type PlanGround, type PlanWish, planGround } from '#server/core/plan/ladder/plan-ground.ts';
import { box, canvasOf, encoded, lay } from '#tests/fixtures/plan/draw.ts';
import { renderScene } from '#tests/fixtures/scenes/render-scene.ts';
import { rasterOf, speckled } from './ladder/a-picture.ts';

const PATIENT_MS = 60_000;
const AIR = { L: 80, a: -2, b: -9 };
const scene = renderScene(speckled([0.45, 0.7, 1], AIR));
const raster = rasterOf(scene);
const planes: PlanGround['planes'] = scene.names.map((name, at) => ({
  ...{ id: `p${at}`, name, kind: scene.kinds[at] as PlanGround['planes'][number]['kind'] },
  outline: scene.outlines[at] as [number, number][],
}));
const AS_IT_IS: PlanWish = { count: null, air: 'photograph', strength: 0, conditions: [], handles: {} };
const viewOf = (wish: Partial<PlanWish>, frame: PlanGround['box'] = WHOLE) =>
  plannedView(planGround(raster, { planes, air: null, box: frame }), { ...AS_IT_IS, ...wish });

describe('the planned ladder as the page shows it', { timeout: PATIENT_MS }, () => {
  it('has no difference to the photograph where nothing is wished for', () => {
    const { document, amiss } = viewOf({});
    for (const { gap, name } of document.planes) {
      for (const key of ['dark', 'mid', 'light'] as const) {
        expect(Math.abs(gap?.[key] ?? 9), `${name} ${key}`).toBeLessThan(0.01);
      }
      // Of a plane with many crushed specks the photograph's colour is not told.
      for (const key of ['chroma', 'warmCool'] as const) {
        expect(Math.abs(gap?.[key] ?? 0), `${name} ${key}`).toBeLessThan(0.01);
      }
    }
    expect(amiss).toEqual([]);
  });

  it('is taken as rungs that the live document holds, each with its plane and its colours', () => {
    const { rungs } = viewOf({ strength: 1 });
    expect(LivePlan.parse(rungs)).toEqual(rungs);
    expect(rungs.map(({ planeId }) => planeId)).toEqual(planes.map(({ id }) => id));
    for (const { colours } of rungs) expect(colours?.mid).toMatch(/^#[0-9a-f]{6}$/);
  });

  it('moves the plane whose handle it is; of planes planned as one, the one that has a handle', () => {
    const [before, after] = [viewOf({}), viewOf({ handles: { p2: { mid: -6 } } })];
    const moved = after.rungs.map(({ mid }, at) => Math.round(mid - (before.rungs[at]?.mid ?? 0)));
    expect(moved).toEqual([0, 0, -6, 0]);
    const grouped = viewOf({ count: 3, handles: { p2: { mid: -6 } } });
    const together = grouped.rungs.filter(({ mid }) => mid === grouped.rungs[2]?.mid);
    expect(together).toHaveLength(2);
    const mate = together.find(({ planeId }) => planeId !== 'p2')?.planeId ?? '';
    expect(grouped.planeIds[planes.findIndex(({ id }) => id === mate)]).toBe('p2');
  });

  it('inside a frame is that of the picture cut to it, and leaves out what is not in it', () => {
    const lower: PlanGround['box'] = [0.1, 0.45, 0.9, 1];
    const framed = viewOf({}, lower);
    const cut = rasterInFrame(raster, lower);
    const own = planes.map((plane) => ({
      ...plane,
      outline: plane.outline.map((point) => pointInFrame(point, lower)),
    }));
    const alone = plannedView(planGround(cut, { planes: own, air: null, box: WHOLE }), AS_IT_IS);
    expect(framed.rungs).toEqual(alone.rungs);
    expect(framed.rungs.map(({ name }) => name)).not.toContain('sky');
    expect(framed.document.planes.map(({ name }) => name)).toEqual(scene.names);
    expect(framed.notes.join(' ')).toMatch(/The plan leaves out the sky/);
  });
});

describe('a frame', () => {
  it('takes points in and gives them back', () => {
    const frame: PlanGround['box'] = [0.2, 0.1, 0.7, 0.9];
    expect(pointInFrame([0.2, 0.9], frame)).toEqual([0, 1]);
    const [x, y] = pointOfFrame(pointInFrame([0.33, 0.61], frame), frame);
    expect([x, y].map((side) => Number(side.toFixed(12)))).toEqual([0.33, 0.61]);
    const { widthPx, heightPx } = rasterInFrame(raster, frame);
    expect([widthPx, heightPx]).toEqual([200, 224]);
  });
});

describe('weight', () => {
  const canvas = canvasOf(400, 300, [70, 0, 0]);
  lay(canvas, box(60, 120, 120, 200), [25, 0, 0]);
  const picture = encodedRaster(400, 300, encoded(canvas));
  const at = (frame: PlanGround['box'], rearranged: typeof picture | null = null) =>
    lookAt(rearranged ?? picture, { planes: [], focus: null, box: frame, rearranged });

  it('turns to the other side in a frame that leaves what weighs at its right', () => {
    expect(at(WHOLE).balance.heavier).toBe('left');
    expect(at([0, 0, 0.35, 1]).balance.heavier).toBe('right');
  });

  it('says where on the whole photograph a frame’s suggestion lies', () => {
    const [lopsided] = at([0, 0, 0.35, 1]).suggestions.filter(({ kind }) => kind === 'lopsided');
    expect(lopsided?.at[0]?.[0]).toBeCloseTo(90 / 400, 2);
  });

  it('is that of the rearranged picture where there is one', () => {
    const moved = canvasOf(400, 300, [70, 0, 0]);
    lay(moved, box(280, 120, 340, 200), [25, 0, 0]);
    expect(at(WHOLE, encodedRaster(400, 300, encoded(moved))).balance.heavier).toBe('right');
  });
});
