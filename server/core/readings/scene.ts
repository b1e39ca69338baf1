/**
 * What every rule looks at: the planes with their target and painted figures, the noise, the words.
 *
 * In the flow: measure document + setup + picture facts -> [scene] -> rules. Planes run far to near; the target
 * is the reference, or the planned ladder where the document says so. Pure.
 */
import type { MeasureDocument, PlaneMeasures, PlaneResult } from '../contract/measures.ts';
import type { LabColour, PlaneKind, PlaneTilt, PlannedPlane, Setup } from '../contract/setup.ts';
import { Noise } from './noise.ts';
import type { PictureFacts } from './picture-facts.ts';
import { shortName } from './words.ts';

export const FIGURE_KEYS = [
  'dark',
  'mid',
  'light',
  'spread',
  'chroma',
  'strong',
  'hue',
  'a',
  'b',
  'warmCool',
  'detail',
  'edge',
  'airDistance',
] as const;
export type FigureKey = (typeof FIGURE_KEYS)[number];

/** Figures of one plane in one picture; units as in the measure document. */
export type Figures = Pick<PlaneMeasures, FigureKey | 'doubt'>;

export interface ScenePlane {
  /** Full name, as in the document. */
  name: string;
  /** Name as it stands in a sentence. */
  label: string;
  /** Place far to near in the document, 0 = the farthest. */
  index: number;
  kind: PlaneKind;
  tilt: PlaneTilt | null;
  /** True when a teacher declared the reference not to be trusted here. */
  unreliable: boolean;
  target: Figures | null;
  painting: Figures;
}

export interface Scene {
  document: MeasureDocument;
  setup: Setup;
  facts: PictureFacts;
  noise: Noise;
  /** What the target is called in a sentence. */
  targetWord: 'photo' | 'plan';
  hasTarget: boolean;
  /** Planes measured in the painting, far to near. */
  planes: ScenePlane[];
  /** The same without the sky. */
  land: ScenePlane[];
  sky: ScenePlane | null;
  /** Nearest measured plane that is not sky. */
  nearest: ScenePlane | null;
  air: { target: LabColour | null; painting: LabColour | null };
}

export interface ReadingsInput {
  document: MeasureDocument;
  setup: Setup;
  pictures: PictureFacts;
}

function planned(plane: PlannedPlane): Figures {
  return {
    dark: plane.dark,
    mid: plane.mid,
    light: plane.light,
    spread: plane.light - plane.dark,
    chroma: plane.chroma,
    strong: plane.strong,
    warmCool: plane.warmCool,
    airDistance: plane.airDistance,
    hue: null,
    a: null,
    b: null,
    detail: null,
    edge: null,
    doubt: {},
  };
}

function targetOf(result: PlaneResult, document: MeasureDocument, setup: Setup): Figures | null {
  if (document.target === 'none') return null;
  if (document.target === 'reference') return result.reference?.mid == null ? null : result.reference;
  const rung = setup.plan?.find((plane) => plane.name === result.name);
  return rung ? planned(rung) : null;
}

/** Pairs the document's planes with their kinds and targets; planes not measured in the painting are left out. */
export function sceneOf({ document, setup, pictures }: ReadingsInput): Scene {
  const planes = document.planes.flatMap((result, index): ScenePlane[] => {
    if (result.painting.mid === null) return [];
    const planeSetup = setup.planes.find((plane) => plane.name === result.name) ?? setup.planes[index];
    return [
      {
        name: result.name,
        label: shortName(result.name, index),
        index,
        kind: planeSetup?.kind ?? 'land',
        tilt: planeSetup?.tilt ?? null,
        unreliable: planeSetup?.unreliable ?? false,
        target: targetOf(result, document, setup),
        painting: result.painting,
      },
    ];
  });
  const land = planes.filter((plane) => plane.kind !== 'sky');
  return {
    document,
    setup,
    facts: pictures,
    noise: new Noise(document.capture.grade),
    targetWord: document.target === 'plan' ? 'plan' : 'photo',
    hasTarget: document.target !== 'none',
    planes,
    land,
    sky: planes.find((plane) => plane.kind === 'sky') ?? null,
    nearest: land.at(-1) ?? null,
    air: { target: document.air.reference, painting: document.air.painting },
  };
}

/** Land planes farther than the nearest one, each with the nearest one. */
export function farAndNear(scene: Scene): { far: ScenePlane; near: ScenePlane }[] {
  const { nearest } = scene;
  if (!nearest) return [];
  return scene.land.filter((plane) => plane !== nearest).map((far) => ({ far, near: nearest }));
}

/** Neighbours, each with the plane next farther. */
export function neighbours(planes: ScenePlane[]): { far: ScenePlane; near: ScenePlane }[] {
  return planes.slice(1).flatMap((near, at) => {
    const far = planes[at];
    return far ? [{ far, near }] : [];
  });
}

/** One figure of two planes in both pictures; null when any is missing. */
export function fourFigures(
  far: ScenePlane,
  near: ScenePlane,
  key: FigureKey,
): { rFar: number; rNear: number; pFar: number; pNear: number } | null {
  const [rFar, rNear] = [far.target?.[key] ?? null, near.target?.[key] ?? null];
  const [pFar, pNear] = [far.painting[key], near.painting[key]];
  if (rFar === null || rNear === null || pFar === null || pNear === null) return null;
  return { rFar, rNear, pFar, pNear };
}
