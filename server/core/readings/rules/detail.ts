/**
 * D1-D3: detail that does not fade, edges all alike, a skyline cut with scissors.
 *
 * In the flow: scene -> [rules] -> findings. Only ratios inside one picture, because brush and photo size differ.
 * Pure. Sources: Ruskin 1843 (confusion of detail tells distance); Harrison 1909, pp. 48-53 (edges soften away from
 * the point looked at); Leonardo (Richter 1883, 222-225).
 */
import { say } from '../../say/say.ts';
import { because, NO_AIR } from '../conditions.ts';
import { formOf, shows } from '../gate.ts';
import type { Finding, Lever, Rule } from '../rule.ts';
import { type FigureKey, farAndNear, fourFigures, type Scene, type ScenePlane } from '../scene.ts';
import { inTarget } from '../target-words.ts';

const FADES = 0.5;
const KEPT = 0.8;
const OVER_MIDDLE = 1.2;
const ALIKE = 0.18;
/** How many times as much the target's edges must vary. */
const MORE_VARIED = 1.8;
/** Boundaries needed before one can speak of all edges. */
const BOUNDARIES = 3;
const OVER_FOCUS = 1.5;
const SKYLINE = 1.3;
const SKYLINE_IN_TARGET = 1;

function ratio(far: ScenePlane, near: ScenePlane, key: FigureKey): { r: number; p: number } | null {
  const four = fourFigures(far, near, key);
  if (!four || four.rNear <= 0 || four.pNear <= 0 || four.rFar <= 0 || four.pFar <= 0) return null;
  return { r: four.rFar / four.rNear, p: four.pFar / four.pNear };
}

function soften(plane: ScenePlane, form: Finding['form'], part: Lever['part']): Lever[] {
  return form === 'question' ? [] : [{ plane: plane.name, part, direction: 'soften', amountL: null }];
}

function finished(scene: Scene, far: ScenePlane, near: ScenePlane): Finding | null {
  const detail = ratio(far, near, 'detail');
  if (!detail || detail.p < KEPT) return null;
  const sigma = scene.noise.logRatio(far.painting, near.painting, 'detail');
  const threshold = Math.log(KEPT / FADES);
  const difference = Math.log(detail.p / detail.r);
  const question = detail.r >= KEPT;
  if (!question && (detail.r > FADES || !shows(difference, threshold, sigma))) return null;
  const form = question ? 'question' : 'finding';
  return {
    planes: [far.name],
    difference: question ? threshold : difference,
    threshold,
    form,
    sentence: question
      ? say`The ${far.label} is as finished as the foreground, ${inTarget(scene)} too. Could it be simpler?`
      : say`The ${far.label} is as finished as the near parts. Blur or simplify it.`,
    restsOn: [far.name, near.name],
    levers: soften(far, form, 'detail'),
  };
}

/** The farthest plane against the middle one: more finish behind than half-way. */
function overMiddle(scene: Scene): Finding | null {
  const [far, middle] = [scene.land[0], scene.land[Math.floor((scene.land.length - 1) / 2)]];
  const detail = far && middle && scene.land.length >= 3 ? ratio(far, middle, 'detail') : null;
  if (!far || !middle || !detail) return null;
  const form = formOf({
    painting: Math.log(detail.p),
    target: Math.log(detail.r),
    threshold: Math.log(OVER_MIDDLE),
    sigma: scene.noise.logRatio(far.painting, middle.painting, 'detail'),
  });
  if (form !== 'finding') return null;
  return {
    planes: [far.name],
    difference: Math.log(detail.p),
    threshold: Math.log(OVER_MIDDLE),
    form,
    sentence: say`The ${far.label} has more detail than the ${middle.label} in front of it. Blur or simplify it.`,
    restsOn: [far.name, middle.name],
    levers: soften(far, form, 'detail'),
  };
}

export const D1: Rule = {
  id: 'D1',
  name: say`Detail doesn't fade`,
  group: 6,
  family: null,
  inputs: 'detail of each far plane, of the middle one and of the nearest',
  threshold: '0.8 of the near detail where the target has 0.5 or less, or 1.2 times the middle plane’s',
  noise: 'log ratio of two detail figures (own estimate by grade)',
  mutedBy: because(...NO_AIR, 'against-light', 'valley-mist', 'night'),
  colour: false,
  why: say`Small parts vanish first with distance: a far tree is one mass with a light and a shade.`,
  source: say`Ruskin 1843, Part II, Sec. II; Leonardo (Richter 1883, 222-225)`,
  find(scene) {
    const fades = farAndNear(scene).flatMap(({ far, near }) => finished(scene, far, near) ?? []);
    const middle = overMiddle(scene);
    const told = middle && fades.some(({ planes }) => planes[0] === middle.planes[0]);
    return middle && !told ? [...fades, middle] : fades;
  },
};

/** Standard deviation over mean of the edges along the planes' boundaries; null under three. */
function variation(edges: (number | null)[]): number | null {
  const known = edges.flatMap((edge) => (edge === null ? [] : [edge]));
  const mean = known.reduce((sum, edge) => sum + edge, 0) / known.length;
  if (known.length < BOUNDARIES || !(mean > 0)) return null;
  return Math.sqrt(known.reduce((sum, edge) => sum + (edge - mean) ** 2, 0) / known.length) / mean;
}

function allAlike(scene: Scene): Finding | null {
  const painting = variation(scene.land.map((plane) => plane.painting.edge));
  const target = variation(scene.land.map((plane) => plane.target?.edge ?? null));
  if (painting === null || painting >= ALIKE || (scene.hasTarget && target === null)) return null;
  const form = target === null ? 'check' : target < ALIKE ? 'question' : 'finding';
  if (form === 'finding' && (target ?? 0) < MORE_VARIED * painting) return null;
  const levers: Lever[] =
    form === 'question' ? [] : [{ plane: null, part: 'edge', direction: 'soften', amountL: null }];
  return {
    planes: [],
    difference: ALIKE / Math.max(painting, ALIKE / 3),
    threshold: 1,
    form,
    sentence: {
      finding: say`Edges are equally crisp everywhere. Lose some; keep the sharpest at your focus.`,
      question: say`Edges are equally crisp everywhere, as ${inTarget(scene)}. Where should the sharpest be?`,
      check: say`Check: edges are equally crisp everywhere. Where should the sharpest be?`,
    }[form],
    restsOn: [],
    levers,
  };
}

/** How much harder the plane's edge is in the target than any edge of the planes that meet at the focus; as a log. */
function strayInTarget(scene: Scene, stray: ScenePlane): number | null {
  const atFocus = scene.facts.painting.edges.flatMap(({ near, inside }) => (inside === null ? [] : [near]));
  const edges = scene.planes.flatMap(({ name, target }) =>
    atFocus.includes(name) ? (target?.edge ?? []) : [],
  );
  const [own, most] = [stray.target?.edge ?? null, Math.max(0, ...edges)];
  return own === null || own <= 0 || most <= 0 ? null : Math.log(own / most);
}

/** The hardest edge away from the focus against the hardest inside it. */
function strayEdge(scene: Scene): Finding | null {
  const { edges } = scene.facts.painting;
  const inside = Math.max(0, ...edges.map((edge) => edge.inside ?? 0));
  const outside = [...edges].sort((one, two) => (two.outside ?? 0) - (one.outside ?? 0))[0];
  const plane = scene.planes.find(({ name }) => name === outside?.near);
  if (!scene.setup.focus || !scene.hasTarget || inside <= 0 || !outside?.outside || !plane) return null;
  // Two edges with one deviation each.
  const own = scene.noise.own(plane.painting, 'edge') / Math.max(plane.painting.edge ?? 1, 1e-6);
  const difference = Math.log(outside.outside / inside);
  if (!shows(difference, Math.log(OVER_FOCUS), 2 * own)) return null;
  const question = (strayInTarget(scene, plane) ?? 0) > Math.log(OVER_FOCUS);
  return {
    planes: [plane.name],
    difference,
    threshold: Math.log(OVER_FOCUS),
    form: question ? 'question' : 'finding',
    sentence: question
      ? say`The edge of the ${plane.label} is harder than any at your focus, ${inTarget(scene)} too. Would you lose it?`
      : say`The edge of the ${plane.label} is harder than any at your focus. Lose it; keep the sharpest there.`,
    restsOn: [],
    levers: soften(plane, question ? 'question' : 'finding', 'edge'),
  };
}

export const D2: Rule = {
  id: 'D2',
  name: say`All edges alike`,
  group: 6,
  family: null,
  inputs: 'edge of every boundary; edges inside and outside of the focus',
  threshold:
    'variation under 0.18 over three or more boundaries where the target varies 1.8 times as much, or an edge 1.5 times the hardest at the focus',
  noise: 'log ratio of two edges (own estimate by grade); noise only widens the variation',
  mutedBy: because('fog', 'night'),
  colour: false,
  why: say`The eye is sharp at one point and edges soften away from it.`,
  source: say`Harrison 1909, pp. 48-53`,
  find: (scene) => [allAlike(scene) ?? [], strayEdge(scene) ?? []].flat(),
};

export const D3: Rule = {
  id: 'D3',
  name: say`Cut-out skyline`,
  group: 6,
  family: null,
  inputs: 'edge of the farthest land plane against the sky, edge of the nearest plane',
  threshold: '1.3 times the near edge where the target has 1.0 or less',
  noise: 'log ratio of two edges (own estimate by grade)',
  mutedBy: because(...NO_AIR, 'against-light', 'valley-mist'),
  colour: false,
  why: say`A far edge harder than a near one flattens the space and pulls the distance forward.`,
  source: say`Leonardo (Richter 1883, 222-225); common practice`,
  find(scene) {
    const [far, near] = [scene.land[0], scene.nearest];
    const edge = far && near && far !== near && scene.sky ? ratio(far, near, 'edge') : null;
    if (!far || !near || !edge || (edge.r > SKYLINE_IN_TARGET && edge.r <= SKYLINE)) return [];
    const form = formOf({
      painting: Math.log(edge.p),
      target: Math.log(edge.r),
      threshold: Math.log(SKYLINE),
      sigma: scene.noise.logRatio(far.painting, near.painting, 'edge'),
    });
    if (!form) return [];
    return [
      {
        planes: [far.name],
        difference: Math.log(edge.p),
        threshold: Math.log(SKYLINE),
        form,
        sentence:
          form === 'question'
            ? say`The skyline of the ${far.label} is harder than the near edges, ${inTarget(scene)} too. Soften parts of it?`
            : say`The skyline of the ${far.label} looks cut with scissors. Soften parts of it.`,
        restsOn: [far.name, near.name],
        levers: soften(far, form, 'edge'),
      },
    ];
  },
};
