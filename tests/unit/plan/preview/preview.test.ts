/** The photograph in its planned light: true to the plan, unchanged by a plan that changes nothing, without rims of light. */
import { differenceCiede2000 } from 'culori';
import { describe, expect, it } from 'vitest';
import { lightnessOfPixels } from '#server/core/image/light-tables.ts';
import type { EncodedRaster } from '#server/core/image/raster.ts';
import { measurePlanes } from '#server/core/measure/measure-planes.ts';
import { prepareMeasurable } from '#server/core/measure/prepare.ts';
import type { LadderWishes } from '#server/core/plan/ladder/wishes.ts';
import { lightFigures } from '#server/core/plan/preview/light-figures.ts';
import { previewGround, previewLights } from '#server/core/plan/preview/preview-ground.ts';
import { relight } from '#server/core/plan/preview/relight.ts';
import parameters from '#tests/fixtures/scenes/parameters.json' with { type: 'json' };
import { renderScene, type Scene, type SceneParameters } from '#tests/fixtures/scenes/render-scene.ts';
import { rasterOf } from '../ladder/a-picture.ts';
import { planesOf, previewed } from './previewed.ts';

const PATIENT_MS = 120_000;
const SCENES: SceneParameters[] = parameters.scenes
  .filter((_, at) => at % 3 === 0)
  .map((scene) => ({
    ...scene,
    widthPx: 480,
    heightPx: 360,
  }));
const FIGURES = ['dark', 'mid', 'light'] as const;
const away = differenceCiede2000();

function colourAt({ samples }: EncodedRaster, pixel: number) {
  const [r, g, b] = [0, 1, 2].map((channel) => (samples[pixel * 3 + channel] as number) / 255);
  return { mode: 'rgb' as const, r: r as number, g: g as number, b: b as number };
}

function farthest(one: EncodedRaster, other: EncodedRaster): number {
  let most = 0;
  for (let pixel = 0; pixel < one.samples.length / 3; pixel += 7) {
    most = Math.max(most, away(colourAt(one, pixel), colourAt(other, pixel)));
  }
  return most;
}

const PLANS: [string, Partial<LadderWishes>][] = [
  ['twice the air', { strength: 2 }],
  ['red-violet air', { air: 'red-violet', strength: 0.7 }],
];

describe.each(SCENES)('$name', (scene) => {
  const rendered = renderScene(scene);
  const nearest = rendered.names.at(-1) as string;

  it('is unchanged, within 1 dE00, by a plan that is the photograph', { timeout: PATIENT_MS }, () => {
    const { raster, shown } = previewed(rendered, { strength: 0, air: 'photograph' });
    expect(farthest(raster, shown)).toBeLessThanOrEqual(1);
  });

  it.each([
    ...PLANS,
    [
      'handles on the nearest plane',
      { strength: 0.5, handles: { [nearest]: { mid: -5, chroma: 1.3, warmCool: 5 } } },
    ] as [string, Partial<LadderWishes>],
  ])('has the planned figures afterwards: %s', { timeout: PATIENT_MS }, (_, wishes) => {
    const { plan, again } = previewed(rendered, wishes);
    rendered.names.forEach((name, at) => {
      const rung = plan.ladder.find((each) => each.name === name);
      const seen = again.planes[at];
      // Where a screen can't show it, the plan itself says so.
      if (!rung || plan.notes.some((note) => note.startsWith(`In the ${name}`))) return;
      for (const key of FIGURES) {
        expect(Math.abs((seen?.[key] ?? Number.NaN) - rung[key]), `${name} ${key}`).toBeLessThanOrEqual(1);
      }
      expect(Math.abs((seen?.chroma ?? Number.NaN) - rung.chroma), `${name} chroma`).toBeLessThanOrEqual(1.5);
    });
    const mids = again.planes.map(({ mid }) => mid as number);
    plan.ladder.slice(1).forEach((near, at) => {
      const far = plan.ladder[at];
      if (!far || Math.abs(far.mid - near.mid) < 2) return;
      expect(Math.sign((mids[at] as number) - (mids[at + 1] as number)), near.name).toBe(
        Math.sign(far.mid - near.mid),
      );
    });
  });

  it('gives planes that are planned as one their figures together', { timeout: PATIENT_MS }, () => {
    const { plan, again, shown } = previewed(rendered, { strength: 1, count: 3 });
    const { linear } = prepareMeasurable({ raster: shown });
    const [, , near] = [...new Map(plan.ladder.map((rung) => [rung.mid, rung])).values()];
    if (!near) throw new Error('The plan has fewer than three planes.');
    const own = plan.ladder.map(({ mid }) => mid === near.mid);
    const cells = [...again.kept.keys()].filter((cell) => own[again.kept[cell] as number]);
    const seen = lightFigures(
      Float32Array.from(cells.flatMap((cell) => [...linear.subarray(cell * 3, cell * 3 + 3)])),
    );
    for (const key of FIGURES) expect(Math.abs(seen[key] - near[key]), key).toBeLessThanOrEqual(1);
    expect(Math.abs(seen.chroma - near.chroma)).toBeLessThanOrEqual(1.5);
  });

  it('reaches the rungs too where nothing but they is known', { timeout: PATIENT_MS }, () => {
    const { plan, again } = previewed(rendered, { strength: 1 }, false);
    plan.ladder.forEach((rung, at) => {
      for (const key of FIGURES) {
        const seen = again.planes[at]?.[key] ?? Number.NaN;
        expect(Math.abs(seen - rung[key]), `${rung.name} ${key}`).toBeLessThanOrEqual(1);
      }
    });
  });
});

/** A scene whose planes have one colour each. */
function plain(): Scene {
  const first = SCENES[1] as SceneParameters;
  return renderScene({
    ...first,
    skyTexture: 0,
    zenith: first.air,
    planes: first.planes.map((plane) => ({
      ...plane,
      texture: { ...plane.texture, lightness: 0, colour: 0 },
    })),
  });
}

/** Least and most L* of a picture's planes, and the same of the rows around each border between two. */
function rims(raster: EncodedRaster, labels: Uint8Array): { over: number } {
  const lightness = lightnessOfPixels(raster);
  const { widthPx, heightPx } = raster;
  let over = 0;
  for (let x = 0; x < widthPx; x += 5) {
    for (let y = 12; y < heightPx - 12; y++) {
      const at = y * widthPx + x;
      if (labels[at] === labels[at - widthPx]) continue;
      const [above, below] = [lightness[at - 10 * widthPx] as number, lightness[at + 10 * widthPx] as number];
      if (labels[at - 10 * widthPx] !== labels[at - widthPx] || labels[at + 10 * widthPx] !== labels[at])
        continue;
      for (let aside = -9; aside <= 9; aside++) {
        const seen = lightness[at + aside * widthPx] as number;
        over = Math.max(over, seen - Math.max(above, below), Math.min(above, below) - seen);
      }
    }
  }
  return { over };
}

describe('edges between planes', () => {
  it('show no rim of light or dark that neither plane has', { timeout: PATIENT_MS }, () => {
    const { shown, measured } = previewed(plain(), { strength: 2, air: 'blue-violet' });
    expect(rims(shown, measured.labels).over).toBeLessThanOrEqual(1.5);
  });

  it('show none either where the outline misses the ridge by a pixel', { timeout: PATIENT_MS }, () => {
    const scene = plain();
    const shifted = {
      ...scene,
      outlines: scene.outlines.map((outline) =>
        outline.map(([x, y]): [number, number] => [x, y === 1 ? 1 : y + 1 / 360]),
      ),
    };
    const { shown, measured } = previewed(shifted, { strength: 1 });
    expect(rims(shown, measured.labels).over).toBeLessThanOrEqual(4);
  });

  it('close a gap between two outlines', { timeout: PATIENT_MS }, () => {
    const scene = plain();
    const raster = rasterOf(scene);
    const planes = planesOf(scene);
    const { labels } = measurePlanes(prepareMeasurable({ raster }), planes, null);
    const gappy = labels.map((label, at) => {
      const above = labels[at - 3 * raster.widthPx] ?? label;
      return above === label ? label : 255;
    });
    const grounds = [labels, gappy].map((map) => previewGround(raster, map, planes.length));
    const [whole, closed] = grounds.map((ground) => {
      const { plan } = previewed(scene, { strength: 2 });
      const lights = previewLights(
        ground,
        plan.ladder.map((rung, at) => ({ rung, before: null, change: plan.changes[at] ?? null })),
      );
      return relight(ground, lights);
    }) as [EncodedRaster, EncodedRaster];
    const gap = [...gappy.keys()].filter((at) => gappy[at] === 255);
    const apart = gap.map((at) => away(colourAt(whole, at), colourAt(closed, at)));
    expect(apart.reduce((sum, each) => sum + each, 0) / gap.length).toBeLessThanOrEqual(3);
  });
});

function mirrored({ widthPx, heightPx, samples }: EncodedRaster): EncodedRaster {
  const turned = new Uint8Array(samples.length);
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      for (let channel = 0; channel < 3; channel++) {
        const from = (y * widthPx + widthPx - 1 - x) * 3 + channel;
        turned[(y * widthPx + x) * 3 + channel] = samples[from] as number;
      }
    }
  }
  return { encoding: 'srgb8', widthPx, heightPx, samples: turned };
}

describe('a mirrored photograph', () => {
  it('has the mirrored preview', { timeout: PATIENT_MS }, () => {
    const scene = renderScene(SCENES[0] as SceneParameters);
    const { raster, ground, plan, shown, measured } = previewed(scene, { air: 'blue-violet' });
    const { widthPx } = raster;
    const labels = measured.labels.map(
      (_, at) => measured.labels[at - (at % widthPx) + widthPx - 1 - (at % widthPx)] as number,
    );
    const other = previewGround(mirrored(raster), labels, ground.planes.length);
    const lights = previewLights(
      other,
      plan.ladder.map((rung, at) => ({ rung, before: null, change: plan.changes[at] ?? null })),
    );
    expect(farthest(mirrored(shown), relight(other, lights))).toBeLessThanOrEqual(1);
  });
});
