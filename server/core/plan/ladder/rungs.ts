/**
 * The figures of one planned plane: its own pixels seen through the planned air, measured like any plane.
 *
 * In the flow: group + transmissions + airs + handles -> [rungs] -> planned ladder. Pure. Definitions: those of
 * `measure/plane-figures.ts`.
 */
import { difference1976 } from '../../colour/difference.ts';
import { warmCoolKernel } from '../../colour/temperature.ts';
import type { PlaneMeasures } from '../../contract/measures.ts';
import type { PlaneHandle } from '../../contract/plan-wishes.ts';
import type { LabColour } from '../../contract/setup.ts';
import { type LabPlanes, labPlanesFromLinear } from '../../image/light-tables.ts';
import { COLOUR_RANGE, LIGHTNESS_RANGE, percentiles } from '../../image/percentiles.ts';
import { chromaOfCells } from '../../measure/plane-figures.ts';
import { type AirChange, airChange, changeAir, skyChange } from '../air/through-air.ts';
import type { Airs } from './amounts.ts';
import type { Group, Member } from './group-planes.ts';
import { handled } from './handle-plane.ts';
import { rungColours } from './rung-colours.ts';

/** Figures of one planned plane; those of `PlannedPlane` and the medians of a* and b*. */
export interface Rung {
  readonly dark: number;
  readonly mid: number;
  readonly light: number;
  readonly a: number;
  readonly b: number;
  readonly chroma: number;
  readonly strong: number;
  readonly warmCool: number;
  readonly airDistance: number;
  /** Share of the plane's cells that had to be bent to be shown on a screen, 0..1. */
  readonly outside: number;
  /** sRGB hex of its darks, middle and lights, for drawing. */
  readonly colours: NonNullable<PlaneMeasures['colours']>;
}

/** From the photograph's air into the planned one, for one plane. @param planned t in the plan; counts for nothing with the sky. */
export function changeOf({ through }: Member, planned: number, airs: Airs): AirChange {
  const photo = airs.photo ?? airs.planned;
  if (through === null) return skyChange(photo, airs.planned);
  // Where no air was seen, what the photograph shows is taken as the thing itself.
  return airChange(
    { air: photo, through: airs.photo ? through : 1 },
    { air: airs.planned, through: planned },
  );
}

function figuresOf(colours: LabPlanes, air: LabColour): Omit<Rung, 'outside'> {
  const { lightness, a, b } = colours;
  const [dark, mid, light] = percentiles(lightness, [0.05, 0.5, 0.95], LIGHTNESS_RANGE) as [
    number,
    number,
    number,
  ];
  const [chroma, strong] = percentiles(chromaOfCells(a, b), [0.5, 0.9], COLOUR_RANGE) as [number, number];
  const middle = {
    L: mid,
    a: percentiles(a, [0.5], COLOUR_RANGE)[0] as number,
    b: percentiles(b, [0.5], COLOUR_RANGE)[0] as number,
  };
  return {
    dark,
    mid,
    light,
    a: middle.a,
    b: middle.b,
    chroma,
    strong,
    warmCool: warmCoolKernel(middle.a, middle.b),
    airDistance: difference1976(middle, air),
    colours: rungColours(colours, { dark, mid, light }),
  };
}

/** @param planned t of the group in the plan; counts for nothing with the sky. @param handle null = none. */
export function rungOf(group: Group, planned: number, airs: Airs, handle: PlaneHandle | null): Rung {
  const changed = group.members.map((member) =>
    changeAir(member.plane.linear, changeOf(member, planned, airs)),
  );
  const linear = new Float32Array(changed.reduce((sum, part) => sum + part.linear.length, 0));
  let [to, outside] = [0, 0];
  for (const part of changed) {
    linear.set(part.linear, to);
    to += part.linear.length;
    outside += (part.outside * part.linear.length) / linear.length;
  }
  const colours = labPlanesFromLinear(linear);
  return { ...figuresOf(handle ? handled(colours, handle) : colours, airs.planned), outside };
}
