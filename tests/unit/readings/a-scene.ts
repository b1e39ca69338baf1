/** A small well-receded scene for the tests of the readings; each test changes what it needs. */
import { warmCoolKernel } from '#server/core/colour/temperature.ts';
import type { MeasureDocument, PlaneMeasures } from '#server/core/contract/measures.ts';
import { type PlaneKind, type PlaneTilt, Setup, type SetupInput } from '#server/core/contract/setup.ts';
import type { CaptureFacts, PictureFacts, SideFacts } from '#server/core/readings/picture-facts.ts';
import type { ReadingsInput } from '#server/core/readings/scene.ts';

/** What a test states about a plane in one picture; the rest follows. */
export interface Stated {
  dark: number;
  mid: number;
  light: number;
  a: number;
  b: number;
  strong: number;
  airDistance: number | null;
  detail: number | null;
  edge: number | null;
  share: number;
  doubt: Record<string, [number, number]>;
}

export interface StatedPlane {
  name: string;
  kind: PlaneKind;
  tilt: PlaneTilt | null;
  reference: Stated;
  painting: Stated;
}

export interface AScene {
  planes: StatedPlane[];
  grade: 'A' | 'B' | 'C' | null;
  target: MeasureDocument['target'];
  facts: PictureFacts;
  setup: Partial<SetupInput>;
  unreliable: string[];
}

function stated(mid: number, half: number, a: number, b: number, rest: Partial<Stated>): Stated {
  return {
    dark: mid - half,
    mid,
    light: mid + half,
    a,
    b,
    strong: Math.hypot(a, b) + 2,
    airDistance: null,
    detail: 0.2,
    edge: 20,
    share: 0.25,
    doubt: {},
    ...rest,
  };
}

const AIR = { L: 86, a: -2, b: -8 };

function side(): SideFacts {
  const names = ['sky', 'far ridge', 'hill', 'near field'];
  const part = (L: number, warmCool: number) => ({ L, a: 0, b: 0, chroma: 10, warmCool });
  return {
    ends: { L1: 18, L2: 20, L98: 92, L99: 93 },
    valueMap: { dark: 0.2, middle: 0.5, light: 0.3, spots: 0.04, spotValue: 'dark', spotAt: [0.2, 0.8] },
    lightShade: names.map((name) => ({
      name,
      lights: part(70, 12),
      shadows: part(30, -6),
      deadShare: 0,
      darkChroma: 15,
    })),
    edges: names.map((near) => ({ near, inside: 22, outside: 20 })),
    accents: [],
  };
}

const UNKNOWN: CaptureFacts = {
  neutral: true,
  clippedSky: null,
  clippedDarks: null,
  glare: null,
  unevenness: null,
  crookedDeg: null,
  sideRatioError: null,
  shortSidePx: null,
  fillsPhoto: null,
  soft: null,
  cardsApart: null,
  wet: null,
  toneMapped: null,
};

function plane(name: string, kind: PlaneKind, tilt: PlaneTilt | null, figures: Stated): StatedPlane {
  return { name, kind, tilt, reference: figures, painting: structuredClone(figures) };
}

/** Painted exactly as the reference: nothing speaks. */
export function aScene(change: (scene: AScene) => void = () => {}): AScene {
  const scene: AScene = {
    planes: [
      plane('sky', 'sky', null, stated(84, 4, -3, -12, { airDistance: 5, detail: 0.02, edge: null })),
      plane(
        'far ridge',
        'wood',
        'upright',
        stated(66, 5, -2, -5, { airDistance: 21, detail: 0.08, edge: 9 }),
      ),
      plane('hill', 'wood', 'slanted', stated(50, 13, -10, 12, { airDistance: 42, detail: 0.15, edge: 16 })),
      plane(
        'near field',
        'land',
        'flat',
        stated(42, 26, -16, 32, { airDistance: 61, detail: 0.3, edge: 26 }),
      ),
    ],
    grade: 'A',
    target: 'reference',
    facts: { reference: side(), painting: side(), capture: { ...UNKNOWN } },
    setup: { focus: [0.6, 0.5] },
    unreliable: [],
  };
  change(scene);
  return scene;
}

/** The plane of a name, to change it. */
export function of(scene: AScene, name: string): StatedPlane {
  const found = scene.planes.find((one) => one.name === name);
  if (!found) throw new Error(`No plane ${name}.`);
  return found;
}

/** Widens the doubt of every painted figure to ± `half` (L*, C*; a tenth of the figure's size for ratios). */
export function doubtful(scene: AScene, half: number): void {
  for (const { painting } of scene.planes) {
    for (const key of ['dark', 'mid', 'light', 'spread', 'strong', 'chroma', 'a', 'b', 'warmCool']) {
      painting.doubt[key] = [-half, half];
    }
    painting.doubt.detail = [0, 2];
    painting.doubt.edge = [0, 200];
  }
}

function measures(figures: Stated): PlaneMeasures {
  const { a, b, doubt, ...rest } = figures;
  return {
    ...rest,
    a,
    b,
    doubt,
    spread: figures.light - figures.dark,
    munsellValue: figures.mid / 10,
    chroma: Math.hypot(a, b),
    hue: ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360,
    warmCool: warmCoolKernel(a, b),
    hueShares: null,
    airShare: null,
    notes: [],
    colours: null,
  };
}

export function inputOf(scene: AScene): ReadingsInput {
  const outline: [number, number][] = [
    [0, 0],
    [1, 0],
    [1, 1],
  ];
  const none = scene.target === 'none';
  const document: MeasureDocument = {
    version: 1,
    target: scene.target,
    units: { lightness: 'CIE L*, D65', chroma: 'C*ab', hue: 'degrees' },
    capture: { grade: scene.grade, reasons: [] },
    air: { reference: none ? null : AIR, painting: AIR },
    planes: scene.planes.map(({ name, reference, painting }) => ({
      name,
      reference: none ? null : measures(reference),
      painting: measures(painting),
      gap: null,
      recession: null,
    })),
    steps: [],
    fit: { key: null, span: null },
    readings: [],
    priorities: [],
    works: null,
  };
  const planes = scene.planes.map(({ name, kind, tilt }) => ({
    name,
    kind,
    tilt,
    unreliable: scene.unreliable.includes(name),
    reference: outline,
  }));
  const facts = none ? { ...scene.facts, reference: null } : scene.facts;
  return { document, setup: Setup.parse({ planes, ...scene.setup }), pictures: facts };
}
