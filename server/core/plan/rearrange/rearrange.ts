/**
 * The photograph rearranged: holes closed where motifs were lifted, ridges bent, motifs laid on in their order.
 *
 * In the flow: plate + planes + steps -> [rearrange] -> weight and shapes anew, the planned preview, the plate to take away.
 * Pure. Every motif is lifted from the photograph as it was taken and laid on last, so that the order of steps only says
 * which motif stands before which and which bend comes first; the photograph itself is never changed.
 */
import { codeOfLinear, LINEAR_OF_CODE } from '../../colour/transfer.ts';
import type { Bend, Motif, Rearranging } from '../../contract/rearranging.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { bendSources } from './bend-ridge.ts';
import { type Filled, fillHole } from './fill-hole.ts';
import { type Arranged, placeMotif } from './place-motif.ts';
import { type MotifMask, motifMask, type PlaneMap } from './soft-mask.ts';

interface Lifted {
  readonly motif: Motif;
  readonly mask: MotifMask;
}

/** What moving a motif does not change: worked out once, so that a hand can drag. */
export interface Cleared {
  readonly photograph: EncodedRaster;
  readonly map: PlaneMap;
  readonly lifted: readonly Lifted[];
  /** The photograph without its lifted motifs. */
  readonly empty: EncodedRaster;
  readonly emptyLabels: Uint8Array;
}

/** What of a motif `cleared` depends on. */
export function liftKey({ outline, planeId }: Motif): string {
  return JSON.stringify([outline, planeId]);
}

/** Lifts the motifs and closes what they leave; `map` has the planes of the photograph. */
export function cleared(photograph: EncodedRaster, map: PlaneMap, motifs: readonly Motif[]): Cleared {
  const lifted = motifs.map((motif) => ({ motif, mask: motifMask(photograph, motif, map) }));
  const hole = new Uint8Array(photograph.widthPx * photograph.heightPx);
  for (const { mask } of lifted) {
    for (let at = 0; at < hole.length; at++) if (mask.hole[at]) hole[at] = 1;
  }
  const { raster: empty, from }: Filled = fillHole(photograph, hole);
  const emptyLabels = map.labels.map((_, at) => map.labels[from[at] as number] as number);
  return { photograph, map, lifted, empty, emptyLabels };
}

function bendColumn(
  from: Arranged,
  { samples, labels }: Arranged,
  source: Float32Array,
  [column, widthPx]: readonly [number, number],
): void {
  for (let row = 0; row < source.length; row++) {
    const place = source[row] as number;
    const upper = Math.floor(place);
    const lower = Math.min(source.length - 1, upper + 1);
    const rest = place - upper;
    const [at, above, below] = [row, upper, lower].map((each) => each * widthPx + column) as [
      number,
      number,
      number,
    ];
    for (let channel = 0; channel < 3; channel++) {
      const one = LINEAR_OF_CODE[from.samples[above * 3 + channel] as number] as number;
      const other = LINEAR_OF_CODE[from.samples[below * 3 + channel] as number] as number;
      samples[at * 3 + channel] = codeOfLinear(one + rest * (other - one));
    }
    labels[at] = from.labels[rest < 0.5 ? above : below] as number;
  }
}

function bent(before: Arranged, bend: Bend, widthPx: number): Arranged {
  const after = { samples: before.samples.slice(), labels: before.labels.slice() };
  const sources = bendSources(bend, widthPx, before.labels.length / widthPx);
  sources.forEach((source, column) => {
    if (source) bendColumn(before, after, source, [column, widthPx]);
  });
  return after;
}

export interface RearrangedPicture {
  readonly raster: EncodedRaster;
  /** Plane of each pixel; 255 = none. */
  readonly labels: Uint8Array;
}

function isInPlace({ move, scale, mirrored }: Motif): boolean {
  return move[0] === 0 && move[1] === 0 && scale === 1 && !mirrored;
}

/** What a motif that stands where it was covered: the photograph itself, hole and all. */
function putBack({ photograph, map }: Cleared, { hole }: MotifMask, { samples, labels }: Arranged): void {
  for (let at = 0; at < hole.length; at++) {
    if (!hole[at]) continue;
    samples.set(photograph.samples.subarray(at * 3, at * 3 + 3), at * 3);
    labels[at] = map.labels[at] as number;
  }
}

/**
 * @param motifs those that `ground` was cleared of, in order, wherever they are now.
 */
export function arrange(
  ground: Cleared,
  motifs: readonly Motif[],
  bends: readonly Bend[],
): RearrangedPicture {
  const { photograph, map, lifted, empty, emptyLabels } = ground;
  let arranged: Arranged = { samples: Uint8Array.from(empty.samples), labels: emptyLabels.slice() };
  for (const bend of bends) arranged = bent(arranged, bend, photograph.widthPx);
  for (const motif of motifs) {
    const key = liftKey(motif);
    const own = lifted.find((each) => liftKey(each.motif) === key);
    if (!own) continue;
    if (isInPlace(motif) && bends.length === 0) putBack(ground, own.mask, arranged);
    else placeMotif(photograph, map.labels, { motif, mask: own.mask }, arranged);
  }
  return { raster: { ...photograph, samples: arranged.samples }, labels: arranged.labels };
}

/** All at once. Without steps the photograph itself comes back. */
export function rearranged(
  photograph: EncodedRaster,
  map: PlaneMap,
  { motifs, bends }: Rearranging,
): RearrangedPicture {
  if (motifs.length + bends.length === 0) return { raster: photograph, labels: map.labels };
  return arrange(cleared(photograph, map, motifs), motifs, bends);
}
