/** For every reading: what fires it, what mutes it, and a departure that stays inside the noise. */
import type { ReadingId } from '#server/core/contract/critique.ts';
import { type AScene, doubtful, of } from './a-scene.ts';

type Change = (scene: AScene) => void;

export interface Case {
  id: ReadingId;
  fires: Change;
  /** Added to `fires`: the finding is still there, with a reason. */
  muted: Change;
  /** The departure below its noise or threshold: nothing is said. */
  silent: Change;
}

const condition =
  (name: NonNullable<AScene['setup']['conditions']>[number]): Change =>
  (scene) => {
    scene.setup.conditions = [name];
  };
const meant =
  (id: ReadingId): Change =>
  (scene) => {
    scene.setup.meant = [id];
  };
const both =
  (...changes: Change[]): Change =>
  (scene) => {
    for (const change of changes) change(scene);
  };
/** All doubt intervals so wide that no figure of a plane can be relied on. */
const inTheNoise: Change = (scene) => doubtful(scene, 120);

const paint =
  (name: string, figures: Partial<ReturnType<typeof of>['painting']>): Change =>
  (scene) => {
    Object.assign(of(scene, name).painting, figures);
  };
const lightShade =
  (name: string, figures: Partial<AScene['facts']['painting']['lightShade'][number]>): Change =>
  (scene) => {
    const found = scene.facts.painting.lightShade.find((plane) => plane.name === name);
    Object.assign(found ?? {}, figures);
  };
const capture =
  (facts: Partial<AScene['facts']['capture']>): Change =>
  (scene) => {
    Object.assign(scene.facts.capture, facts);
  };

function planeCase(id: ReadingId, fires: Change, muted: Change, silent = both(fires, inTheNoise)): Case {
  return { id, fires, muted, silent };
}

function captureCase(id: ReadingId, fires: Change, silent: Change): Case {
  return { id, fires, muted: meant(id), silent };
}

const part = (L: number, warmCool: number) => ({ L, a: 0, b: 0, chroma: 4, warmCool });

const shapes =
  (facts: Partial<NonNullable<AScene['facts']['painting']['valueMap']>>): Change =>
  (scene) => {
    Object.assign(scene.facts.painting.valueMap ?? {}, facts);
  };

const accent =
  (chroma: number): Change =>
  (scene) => {
    scene.facts.painting.accents = [
      {
        plane: 'far ridge',
        at: [0.05, 0.4],
        share: 0.003,
        chroma,
        hueDeg: 30,
        planeStrong: 8,
        echoed: false,
      },
    ];
  };

const usesEverything: Change = (scene) => {
  scene.facts.painting.ends = { L1: 12, L2: 14, L98: 94, L99: 95 };
  for (const name of ['far ridge', 'hill', 'near field']) {
    Object.assign(of(scene, name).painting, { dark: 14, light: 78 });
  }
};

const warmDistance = paint('far ridge', { a: 22, b: 34 });
const coolNear: Change = (scene) => {
  for (const side of ['reference', 'painting'] as const)
    Object.assign(of(scene, 'near field')[side], { a: 6, b: 30 });
};

const VALUE_CASES: Case[] = [
  planeCase('V1', paint('near field', { mid: 62 }), (scene) => {
    condition('cloud-shadow')(scene);
    Object.assign(of(scene, 'hill').reference, { mid: 34, dark: 22, light: 46 });
    Object.assign(of(scene, 'near field').painting, { mid: 40 });
    Object.assign(of(scene, 'hill').painting, { mid: 50 });
  }),
  planeCase('V2', paint('hill', { mid: 43, a: -15, b: 29 }), condition('fog')),
  planeCase('V3', paint('hill', { mid: 66 }), condition('sun-spot')),
  planeCase('V4', paint('far ridge', { dark: 26 }), condition('valley-mist')),
  planeCase('V5', paint('far ridge', { dark: 28 }), condition('night')),
  planeCase('V6', paint('far ridge', { light: 82 }), condition('snow')),
  planeCase('V7', paint('far ridge', { dark: 44, light: 88 }), condition('clear-air')),
  planeCase(
    'V8',
    usesEverything,
    condition('night'),
    both(usesEverything, (scene) => {
      scene.grade = 'C';
    }),
  ),
  planeCase(
    'V9',
    (scene) => {
      scene.facts.painting.ends = { L1: 38, L2: 40, L98: 78, L99: 80 };
    },
    condition('fog'),
    (scene) => {
      scene.facts.painting.ends = { L1: 30, L2: 32, L98: 78, L99: 80 };
    },
  ),
  planeCase('V10', paint('sky', { mid: 38 }), condition('low-sun')),
  planeCase(
    'V11',
    (scene) => {
      of(scene, 'hill').tilt = 'flat';
      Object.assign(of(scene, 'far ridge').reference, { mid: 46 });
      Object.assign(of(scene, 'far ridge').painting, { mid: 64 });
    },
    condition('against-light'),
  ),
  planeCase('V12', shapes({ spots: 0.3 }), meant('V12'), shapes({ spots: 0.118 })),
  planeCase(
    'V13',
    shapes({ dark: 0.33, middle: 0.34, light: 0.33 }),
    condition('night'),
    shapes({ dark: 0.27, middle: 0.42, light: 0.31 }),
  ),
];

const COLOUR_CASES: Case[] = [
  planeCase('C1', paint('far ridge', { strong: 36 }), condition('night')),
  planeCase('C2', paint('far ridge', { airDistance: 58 }), condition('smoke')),
  planeCase('C3', paint('far ridge', { a: -2, b: -34 }), condition('clear-air')),
  planeCase('C4', both(coolNear, warmDistance, paint('near field', { a: 2, b: 8 })), condition('low-sun')),
  planeCase('C5', paint('far ridge', { a: -15, b: 29, strong: 33 }), condition('shallow')),
  planeCase(
    'C6',
    lightShade('hill', { lights: part(70, 2), shadows: part(30, 1) }),
    condition('fog'),
    both(lightShade('hill', { lights: part(70, 2), shadows: part(30, 1) }), (scene) => {
      scene.grade = 'B';
      const target = scene.facts.reference?.lightShade.find(({ name }) => name === 'hill');
      Object.assign(target ?? {}, { lights: part(70, 6), shadows: part(30, 0) });
    }),
  ),
  planeCase(
    'C7',
    lightShade('hill', { deadShare: 0.12, darkChroma: 1 }),
    condition('night'),
    lightShade('hill', { deadShare: 0.12, darkChroma: 11 }),
  ),
  planeCase('C8', accent(40), meant('C8'), accent(20)),
];

const DETAIL_CASES: Case[] = [
  planeCase('D1', paint('far ridge', { detail: 0.3 }), condition('shallow')),
  planeCase(
    'D2',
    (scene) => {
      for (const name of ['far ridge', 'hill', 'near field']) of(scene, name).painting.edge = 20;
    },
    condition('fog'),
    (scene) => {
      Object.assign(of(scene, 'far ridge').painting, { edge: 12 });
      Object.assign(of(scene, 'near field').painting, { edge: 20 });
    },
  ),
  planeCase('D3', paint('far ridge', { edge: 45 }), condition('against-light')),
];

const CAPTURE_CASES: Case[] = [
  captureCase('G1', capture({ neutral: false }), capture({ neutral: null })),
  captureCase('G2', capture({ clippedSky: 0.02 }), capture({ clippedSky: 0.004, clippedDarks: 0.01 })),
  captureCase(
    'G3',
    capture({ glare: { plane: 'hill', share: 0.05 } }),
    capture({ glare: { plane: 'hill', share: 0.008 } }),
  ),
  captureCase('G4', capture({ unevenness: 0.15 }), capture({ unevenness: 0.06 })),
  captureCase('G5', capture({ crookedDeg: 9 }), capture({ crookedDeg: 3, sideRatioError: 0.02 })),
  captureCase('G6', capture({ shortSidePx: 700 }), capture({ shortSidePx: 1600, soft: false })),
  captureCase('G7', capture({ cardsApart: 9 }), capture({ cardsApart: 4 })),
  captureCase('G8', capture({ wet: true }), capture({ wet: null })),
  captureCase('G9', capture({ toneMapped: true }), capture({ toneMapped: false })),
  captureCase(
    'G10',
    (scene) => {
      for (const { painting } of scene.planes) painting.b += 11;
    },
    (scene) => {
      for (const { painting } of scene.planes) painting.b += 4;
    },
  ),
];

export const CASES: Case[] = [...VALUE_CASES, ...COLOUR_CASES, ...DETAIL_CASES, ...CAPTURE_CASES];
