/**
 * What the painter takes from the photograph before the first stroke: which plane lies where (with edges found
 * again in the colours, since an outline is coarser than a tree), and each plane's own colours, ever simpler.
 *
 * In the flow: photograph + outlines -> [study] -> painter. Pure.
 */
import type { PaintColour } from './canvas.ts';
import { blurred, combined, emptyField, type Field, type LabFields, sample, smoothStep } from './field.ts';

/** One plane as the painter sees it. */
export interface PlaneStudy {
  /** 0..1 a pixel of the study: this plane or a nearer one lies here. */
  readonly upToHere: Field;
  /** 0..1 a pixel of the study: this plane is seen here. */
  readonly seen: Field;
  /** This plane's colours alone, blurred to `sigmaPx` of the study; nothing of its neighbours runs in. */
  coloursAt(sigmaPx: number): LabFields;
  /** Mean colour over the plane. */
  readonly mean: PaintColour;
}

/** Width in study pixels of the band around an outline in which the colours decide. */
const BAND_PX = 5;
/** Width in study pixels of the rim in which photographs mix two planes' colours. */
const RIM_PX = 1.6;
/** How far the two sides' colours are gathered, in study pixels. */
const GATHER_PX = 11;

/**
 * @param photo CIELAB of the photograph at study size.
 * @param labels Plane index a pixel, 0 = farthest.
 */
export function studyPlanes(photo: LabFields, labels: Uint8Array, planeCount: number): PlaneStudy[] {
  const edges = Array.from({ length: planeCount }, (_, plane) => refinedEdge(photo, labels, plane));
  const means = edges.map((upToHere, plane) => meanColour(photo, minus(upToHere, edges[plane + 1])));
  return edges.map((upToHere, plane) => {
    const seen = minus(upToHere, edges[plane + 1]);
    const mean = means[plane] ?? meanColour(photo, seen);
    const trusted = trustedPixels(photo, seen, mean, [means[plane > 1 ? plane - 1 : -1], means[plane + 1]]);
    const around = gathered(photo, trusted, GATHER_PX, flat(photo, mean));
    const known = new Map<number, LabFields>();
    return {
      upToHere,
      seen,
      mean,
      coloursAt(sigmaPx) {
        const found = known.get(sigmaPx) ?? gathered(photo, trusted, sigmaPx, around);
        known.set(sigmaPx, found);
        return found;
      },
    };
  });
}

/** What of a plane is not covered by the next nearer one. */
function minus(upToHere: Field, nearer: Field | undefined): Field {
  return nearer ? combined(upToHere, nearer, (own, near) => own * (1 - near)) : upToHere;
}

/**
 * The plane's pixels without those that look like a neighbour: massif seen through twigs, twigs before the massif.
 * The sky is no such neighbour: its edge is clean, and sunlit rock is as pale as it.
 */
function trustedPixels(
  photo: LabFields,
  seen: Field,
  mean: PaintColour,
  neighbours: readonly (PaintColour | undefined)[],
): Field {
  const within = blurred(seen, RIM_PX);
  const trusted = combined(within, within, (share) => smoothStep(0.72, 0.98, share));
  for (let at = 0; at < trusted.values.length; at++) {
    if ((trusted.values[at] as number) === 0) continue;
    const own = distanceTo(photo, at, mean);
    for (const other of neighbours) {
      if (!other) continue;
      const likeness = own / (own + distanceTo(photo, at, other) + 1e-6);
      trusted.values[at] = (trusted.values[at] as number) * (1 - smoothStep(0.25, 0.5, likeness));
    }
  }
  return trusted;
}

function distanceTo(photo: LabFields, at: number, colour: PaintColour): number {
  const dL = (photo.L.values[at] as number) - colour.L;
  const da = (photo.a.values[at] as number) - colour.a;
  const db = (photo.b.values[at] as number) - colour.b;
  return dL * dL + da * da + db * db;
}

/** Where `plane` or something nearer lies; near the outline each pixel goes to the side whose colour it has. */
function refinedEdge(photo: LabFields, labels: Uint8Array, plane: number): Field {
  const { width, height } = photo.L;
  const [inside, own, behind] = [
    emptyField(width, height),
    emptyField(width, height),
    emptyField(width, height),
  ];
  for (let at = 0; at < labels.length; at++) {
    const label = labels[at] as number;
    inside.values[at] = label >= plane ? 1 : 0;
    own.values[at] = label === plane ? 1 : 0;
    behind.values[at] = label < plane ? 1 : 0;
  }
  if (plane === 0) return inside;
  const near = gathered(photo, own, GATHER_PX, flat(photo, meanColour(photo, own)));
  const far = gathered(photo, behind, GATHER_PX, flat(photo, meanColour(photo, behind)));
  const soft = blurred(inside, BAND_PX);
  for (let at = 0; at < soft.values.length; at++) {
    const share = soft.values[at] as number;
    if (share < 0.03 || share > 0.97) continue;
    const toNear = squaredDistance(photo, near, at);
    const toFar = squaredDistance(photo, far, at);
    const vote = toFar / (toNear + toFar + 1e-6);
    inside.values[at] = smoothStep(0.35, 0.65, 0.5 * share + 0.5 * vote);
  }
  return inside;
}

function squaredDistance(one: LabFields, two: LabFields, at: number): number {
  const dL = (one.L.values[at] as number) - (two.L.values[at] as number);
  const da = (one.a.values[at] as number) - (two.a.values[at] as number);
  const db = (one.b.values[at] as number) - (two.b.values[at] as number);
  return dL * dL + da * da + db * db;
}

/** A blur that sees only what `weight` lets it; where it sees nothing, `fallback`. */
function gathered(photo: LabFields, weight: Field, sigmaPx: number, fallback: LabFields): LabFields {
  const seen = blurred(weight, sigmaPx);
  const of = (field: Field, otherwise: Field): Field => {
    const weighted = emptyField(field.width, field.height);
    for (let at = 0; at < weighted.values.length; at++) {
      weighted.values[at] = (field.values[at] as number) * (weight.values[at] as number);
    }
    const sum = blurred(weighted, sigmaPx);
    for (let at = 0; at < weighted.values.length; at++) {
      const total = (sum.values[at] as number) + 1e-3 * (otherwise.values[at] as number);
      weighted.values[at] = total / ((seen.values[at] as number) + 1e-3);
    }
    return weighted;
  };
  return { L: of(photo.L, fallback.L), a: of(photo.a, fallback.a), b: of(photo.b, fallback.b) };
}

/** One colour everywhere. */
function flat({ L: { width, height } }: LabFields, colour: PaintColour): LabFields {
  const field = (value: number): Field => ({
    width,
    height,
    values: new Float32Array(width * height).fill(value),
  });
  return { L: field(colour.L), a: field(colour.a), b: field(colour.b) };
}

function meanColour(photo: LabFields, weight: Field): PaintColour {
  const sum = { L: 0, a: 0, b: 0 };
  let total = 1e-9;
  for (let at = 0; at < weight.values.length; at++) {
    const share = weight.values[at] as number;
    total += share;
    sum.L += share * (photo.L.values[at] as number);
    sum.a += share * (photo.a.values[at] as number);
    sum.b += share * (photo.b.values[at] as number);
  }
  return { L: sum.L / total, a: sum.a / total, b: sum.b / total };
}

/** Direction of the forms: double-angle vector, as long as the form is definite (0..1). */
export interface Grain {
  readonly cos2: Field;
  readonly sin2: Field;
}

/** Along the edges of the picture, gathered over `sigmaPx` study pixels (structure tensor). */
export function grainOf(lightness: Field, sigmaPx: number): Grain {
  const { width, height } = lightness;
  const smooth = blurred(lightness, 1.5);
  const [xx, xy, yy] = [emptyField(width, height), emptyField(width, height), emptyField(width, height)];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const dx = sample(smooth, x + 1, y) - sample(smooth, x - 1, y);
      const dy = sample(smooth, x, y + 1) - sample(smooth, x, y - 1);
      const at = y * width + x;
      xx.values[at] = dx * dx;
      xy.values[at] = dx * dy;
      yy.values[at] = dy * dy;
    }
  }
  const [sumXx, sumXy, sumYy] = [blurred(xx, sigmaPx), blurred(xy, sigmaPx), blurred(yy, sigmaPx)];
  const energy = combined(sumXx, sumYy, (one, two) => one + two + 0.6);
  const difference = combined(sumYy, sumXx, (one, two) => one - two);
  return {
    cos2: combined(difference, energy, (part, whole) => part / whole),
    sin2: combined(sumXy, energy, (part, whole) => (-2 * part) / whole),
  };
}
