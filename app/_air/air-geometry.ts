/**
 * Where everything in the air view stands: in each plane's column, chroma to the right and lightness upward.
 *
 * In the flow: measures + kinds of the planes -> [air-geometry] -> air view. x and y are shares of a column and of the
 * plot; a way is mixed in linear light (Koschmieder) from the nearest like plane to the air colour. Pure.
 */

import { airPath } from '#server/core/colour/air-path.ts';
import { chromaOf } from '#server/core/colour/lab.ts';
import type { MeasureDocument, PlaneMeasures } from '#server/core/contract/measures.ts';
import type { LabColour, PlaneKind } from '#server/core/contract/setup.ts';
import { heightOfLightness } from '#server/core/ladder/geometry.ts';

const STEPS = 32;
/** The chroma axis reaches at least this far, and always to a whole ten beyond the strongest colour. */
const LEAST_CHROMA = 20;

export interface AirPoint {
  x: number;
  y: number;
}

export interface AirSide {
  /** The plane's own middle colour; null when it was not taken. */
  own: AirPoint | null;
  /** sRGB hex for drawing. */
  colour: string | null;
  /** Half its 90 % interval in chroma and lightness, shares; null where it is not known. */
  doubt: { x: number; y: number } | null;
  /** Where its way begins: the nearest plane of its kind. */
  start: AirPoint | null;
  air: AirPoint | null;
  /**
   * From `start` to as near to `own` as the way comes, and from there to the air. Without a start the way begins at the
   * plane itself; without an air colour, and for the sky, both are empty.
   */
  travelled: AirPoint[];
  ahead: AirPoint[];
}

export interface AirColumn {
  name: string;
  /** 1 = the farthest. */
  number: number;
  /** Number of the plane its way begins at; null where none of its kind lies nearer. */
  from: number | null;
  reference: AirSide | null;
  painting: AirSide;
}

export interface AirGeometry {
  columns: AirColumn[];
  /** Right end of each column, C*ab. */
  mostChroma: number;
}

/** The plane's middle colour. */
function middleOf(measures: PlaneMeasures | null): LabColour | null {
  if (!measures || measures.mid === null || measures.a === null || measures.b === null) return null;
  return { L: measures.mid, a: measures.a, b: measures.b };
}

/**
 * The plane nearest to the eye that is of the same kind: there the air has changed the colour least.
 * @returns Its index; null for the sky, for a plane of unknown kind, and where there is none.
 */
export function likePlane(kinds: readonly (PlaneKind | null)[], measured: readonly boolean[], index: number) {
  const kind = kinds[index] ?? null;
  if (kind === null || kind === 'sky') return null;
  const like = kinds.findLastIndex((each, at) => at > index && each === kind && measured[at] === true);
  return like < 0 ? null : like;
}

/** Index of the point of a way that is nearest to a colour, by dE*ab. */
function nearestOn(way: readonly LabColour[], to: LabColour): number {
  const far = way.map(({ L, a, b }) => Math.hypot(L - to.L, a - to.a, b - to.b));
  return far.indexOf(Math.min(...far));
}

function chromaLimit(colours: readonly (LabColour | null)[]): number {
  const most = Math.max(LEAST_CHROMA, ...colours.map((lab) => (lab ? chromaOf(lab.a, lab.b) : 0)));
  return Math.ceil((most + 1) / 10) * 10;
}

function halfOf(interval: readonly [number, number] | undefined): number {
  return interval ? (interval[1] - interval[0]) / 2 : 0;
}

interface SideParts {
  measures: PlaneMeasures;
  isSky: boolean;
  start: LabColour | null;
  air: LabColour | null;
  mostChroma: number;
}

function sideOf({ measures, isSky, start, air, mostChroma }: SideParts): AirSide {
  const at = ({ L, a, b }: LabColour): AirPoint => ({
    x: chromaOf(a, b) / mostChroma,
    y: heightOfLightness(L),
  });
  const own = middleOf(measures);
  const from = isSky ? null : (start ?? own);
  const way = from && air ? airPath(from, air, STEPS) : [];
  const reached = own && start && way.length > 0 ? nearestOn(way, own) : 0;
  const doubt = {
    x: halfOf(measures.doubt.chroma) / mostChroma,
    y: halfOf(measures.doubt.mid) / 100,
  };
  return {
    own: own && at(own),
    colour: measures.colours?.mid ?? null,
    doubt: doubt.x > 0 && doubt.y > 0 ? doubt : null,
    start: start && at(start),
    air: air && at(air),
    travelled: way.slice(0, reached + 1).map(at),
    ahead: way.slice(reached).map(at),
  };
}

/**
 * @param kinds Of the planes, by column; null = unknown. Without a reference, or held against a plan, whose colours
 * have no hue, the painting stands alone.
 */
export function airGeometry(document: MeasureDocument, kinds: readonly (PlaneKind | null)[]): AirGeometry {
  const { planes, air } = document;
  const both = document.target === 'reference';
  const here = planes.map(({ painting }) => middleOf(painting));
  const there = planes.map(({ reference }) => (both ? middleOf(reference) : null));
  const mostChroma = chromaLimit([...here, ...there, air.painting, both ? air.reference : null]);
  const measured = here.map((lab) => lab !== null);
  const columns = planes.map(({ name, reference, painting }, index): AirColumn => {
    const like = likePlane(kinds, measured, index);
    const isSky = kinds[index] === 'sky';
    const startOf = (colours: (LabColour | null)[]) => (like === null ? null : (colours[like] ?? null));
    return {
      name,
      number: index + 1,
      from: like === null ? null : like + 1,
      reference:
        both && reference
          ? sideOf({ measures: reference, isSky, start: startOf(there), air: air.reference, mostChroma })
          : null,
      painting: sideOf({ measures: painting, isSky, start: startOf(here), air: air.painting, mostChroma }),
    };
  });
  return { columns, mostChroma };
}
