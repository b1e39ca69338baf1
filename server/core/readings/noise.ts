/**
 * How far a figure may be off, so that nothing is said inside its own noise.
 *
 * In the flow: capture grade and doubt intervals -> [noise] -> scene -> rules. The reference is taken as exact;
 * all deviations are of the painting's photograph. Pure. Source: measure.md section 1 (the project's own noise
 * floor); first-order propagation as in the GUM, JCGM 100:2008, section 5.
 */
import type { PlaneMeasures } from '../contract/measures.ts';
import type { LabColour } from '../contract/setup.ts';

export type Grade = 'A' | 'B' | 'C';

/** One standard deviation of a plane figure in L* and in a*, b* (and C*ab). */
const SIGMA: Record<Grade, { L: number; ab: number }> = {
  A: { L: 2, ab: 3 },
  B: { L: 4, ab: 5 },
  C: { L: 6, ab: 10 },
};
/** A relation inside one picture keeps this share, because exposure and cast are shared by all planes. */
const RELATION = 0.6;
/** Half a 90 % interval of a normal distribution in standard deviations. */
const HALF_90 = 1.645;
/** Relative deviation of detail and edge figures, which no grade states. Own estimate. */
const FINE_RELATIVE: Record<Grade, number> = { A: 0.05, B: 0.08, C: 0.12 };
/** Deviation of a share of the picture in the value map. Own estimate. */
const SHARE_SIGMA: Record<Grade, number> = { A: 0.005, B: 0.01, C: 0.015 };
/** Ratios are taken of figures floored at this. */
const RATIO_FLOOR = 2;

export type NoisyKey =
  | 'dark'
  | 'mid'
  | 'light'
  | 'spread'
  | 'chroma'
  | 'strong'
  | 'a'
  | 'b'
  | 'warmCool'
  | 'detail'
  | 'edge';

/** The figures whose noise is asked for. */
export type NoisyPlane = Pick<PlaneMeasures, NoisyKey | 'airDistance' | 'doubt'>;

function isLightness(key: NoisyKey): boolean {
  return key === 'dark' || key === 'mid' || key === 'light' || key === 'spread';
}

/** Deviations for one picture at one grade. */
export class Noise {
  readonly grade: Grade;

  /** @param grade Null (no grade exists) behaves as C. */
  constructor(grade: Grade | null) {
    this.grade = grade ?? 'C';
  }

  /** Deviation of an absolute figure: L*. */
  get absoluteL(): number {
    return SIGMA[this.grade].L;
  }

  /** Deviation of an absolute figure: a*, b*, C*ab. */
  get absoluteAb(): number {
    return SIGMA[this.grade].ab;
  }

  /** Deviation of a share in the value map. */
  get share(): number {
    return SHARE_SIGMA[this.grade];
  }

  /** Deviation of a relation in L* between two things in one picture, without the doubt of either. */
  get relationL(): number {
    return RELATION * this.absoluteL;
  }

  /** The same for a*, b*, C*ab. */
  get relationAb(): number {
    return RELATION * this.absoluteAb;
  }

  /**
   * The part of a plane's deviation that it does not share with the other planes, so that the difference of two
   * planes deviates by 0.6 of the grade's figure. The bootstrap's part of a doubt interval (what is left of the
   * interval when the grade is taken out in quadrature) is added in quadrature.
   */
  own(plane: NoisyPlane, key: NoisyKey): number {
    const [full, factor] = this.#full(plane, key);
    const kept = ((RELATION / Math.SQRT2) * full) ** 2;
    const interval = plane.doubt[key];
    const combined = interval ? (interval[1] - interval[0]) / 2 / HALF_90 : 0;
    const sampling = Math.max(0, combined ** 2 - full ** 2);
    return factor * Math.sqrt(kept + sampling);
  }

  /** Deviation of `one - two` of one figure. */
  difference(one: NoisyPlane, two: NoisyPlane, key: NoisyKey): number {
    return Math.hypot(this.own(one, key), this.own(two, key));
  }

  /**
   * Deviation of ln(one / two): first-order propagation, figures floored at 2 (L*, C*) or as they are. A cast is
   * shared by all planes but weighs more on a weak chroma, and strengthens one hue while it weakens its opposite; so for
   * chroma its part comes on top.
   */
  logRatio(one: NoisyPlane, two: NoisyPlane, key: NoisyKey): number {
    const floor = key === 'detail' || key === 'edge' ? 1e-6 : RATIO_FLOOR;
    const figure = (plane: NoisyPlane) => Math.max(floor, plane[key] ?? floor);
    const relative = (plane: NoisyPlane) => this.own(plane, key) / figure(plane);
    const isChroma = key === 'strong' || key === 'chroma';
    const cast = isChroma ? this.#shared(this.absoluteAb) * castPull(one, figure(one), two, figure(two)) : 0;
    return Math.hypot(relative(one), relative(two), cast);
  }

  /** Deviation of the dE*ab between two planes of one picture, along the line that joins them. */
  colourDistance(one: NoisyPlane, two: NoisyPlane): number {
    const along = direction(one, two);
    return Math.hypot(
      along.L * this.difference(one, two, 'mid'),
      along.a * this.difference(one, two, 'a'),
      along.b * this.difference(one, two, 'b'),
    );
  }

  /** Deviation of near's airDistance minus far's; the air of the picture deviates as a plane does. */
  airFall(near: NoisyPlane, far: NoisyPlane, air: LabColour): number {
    const sky = { mid: air.L, a: air.a, b: air.b };
    const [toNear, toFar] = [direction(near, sky), direction(far, sky)];
    const term = (key: 'mid' | 'a' | 'b', axis: 'L' | 'a' | 'b') => {
      const shared = (RELATION / Math.SQRT2) * (axis === 'L' ? this.absoluteL : this.absoluteAb);
      return Math.hypot(
        toNear[axis] * this.own(near, key),
        toFar[axis] * this.own(far, key),
        (toNear[axis] - toFar[axis]) * shared,
      );
    };
    return Math.hypot(term('mid', 'L'), term('a', 'a'), term('b', 'b'));
  }

  /** The part of a deviation that all planes of one picture share. */
  #shared(sigma: number): number {
    return sigma * Math.sqrt(1 - RELATION ** 2 / 2);
  }

  /** Deviation of the grade, and what turns it into the unit of the figure. */
  #full(plane: NoisyPlane, key: NoisyKey): [full: number, factor: number] {
    if (isLightness(key)) return [this.absoluteL, 1];
    if (key === 'detail' || key === 'edge') {
      // own() keeps 0.6/sqrt(2) of it; detail and edge share nothing, so the figure is given in full here.
      return [(FINE_RELATIVE[this.grade] * (plane[key] ?? 0) * Math.SQRT2) / RELATION, 1];
    }
    if (key === 'warmCool') return [this.absoluteAb * warmCoolSlope(plane), 1];
    return [this.absoluteAb, 1];
  }
}

/** Steepest slope of C^1.07 cos(h - 50 deg) at a colour, per unit of a*, b*. */
export function warmCoolSlope(plane: { a: number | null; b: number | null }): number {
  const chroma = Math.max(1, Math.hypot(plane.a ?? 0, plane.b ?? 0));
  return 1.07 * chroma ** 0.07;
}

/** How much one unit of a cast changes ln(one / two) of chromas: |u1 / C1 - u2 / C2| with unit vectors of hue. */
function castPull(one: NoisyPlane, first: number, two: NoisyPlane, second: number): number {
  const unit = ({ a, b }: NoisyPlane) => {
    const length = Math.max(1e-9, Math.hypot(a ?? 0, b ?? 0));
    return [(a ?? 0) / length, (b ?? 0) / length] as const;
  };
  const [p, q] = [unit(one), unit(two)];
  return Math.hypot(p[0] / first - q[0] / second, p[1] / first - q[1] / second);
}

type Point = { mid: number | null; a: number | null; b: number | null };

function direction(one: Point, two: Point): LabColour {
  const L = (one.mid ?? 0) - (two.mid ?? 0);
  const a = (one.a ?? 0) - (two.a ?? 0);
  const b = (one.b ?? 0) - (two.b ?? 0);
  const length = Math.hypot(L, a, b);
  // Two colours in one place: any direction is as good; lightness and colour count alike.
  return length < 1e-9
    ? { L: Math.SQRT1_2, a: 0.5, b: 0.5 }
    : { L: L / length, a: a / length, b: b / length };
}
