/**
 * Where a moved, enlarged or mirrored motif comes from, and its soft laying on.
 *
 * In the flow: motif + photograph -> [place-motif] -> rearrange. Pure. Light is mixed as light; where a motif is made
 * smaller several places of it are averaged.
 */
import { codeOfLinear, LINEAR_OF_CODE } from '../../colour/transfer.ts';
import type { Motif } from '../../contract/rearranging.ts';
import type { FractionPoint } from '../../contract/setup.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { footOf } from './check-motif.ts';
import { alongLoop, isTone, type RimPoint, toneAt, toneReach } from './rim-tone.ts';
import type { MotifMask } from './soft-mask.ts';

interface Place {
  /** From a pixel of the result to the place it shows, in pixels of the photograph. */
  toSource(x: number, y: number): readonly [number, number];
  toResult(x: number, y: number): FractionPoint;
  /** Box of the result that the motif may reach. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function placeOf({ outline, move, scale, mirrored }: Motif, { widthPx, heightPx }: EncodedRaster): Place {
  const [footX, footY] = footOf(outline);
  const [x0, y0] = [footX * widthPx, footY * heightPx];
  const [x1, y1] = [x0 + move[0] * widthPx, y0 + move[1] * heightPx];
  const across = mirrored ? -scale : scale;
  const xs = outline.map(([x]) => x1 + (x * widthPx - x0) * across);
  const ys = outline.map(([, y]) => y1 + (y * heightPx - y0) * scale);
  const margin = 8 * Math.max(1, scale);
  return {
    toSource: (x, y) => [x0 + (x - x1) / across, y0 + (y - y1) / scale],
    toResult: (x, y) => [x1 + (x - x0) * across, y1 + (y - y0) * scale],
    left: Math.max(0, Math.floor(Math.min(...xs) - margin)),
    right: Math.min(widthPx - 1, Math.ceil(Math.max(...xs) + margin)),
    top: Math.max(0, Math.floor(Math.min(...ys) - margin)),
    bottom: Math.min(heightPx - 1, Math.ceil(Math.max(...ys) + margin)),
  };
}

/** Adds light and share of the motif at one place of the photograph, read between four pixels. */
function addSample(
  raster: EncodedRaster,
  { soft }: MotifMask,
  [u, v]: readonly [number, number],
  sum: Float64Array,
): void {
  const { widthPx, heightPx, samples } = raster;
  const [x, y] = [u - 0.5, v - 0.5];
  if (x < -0.5 || y < -0.5 || x > widthPx - 0.5 || y > heightPx - 0.5) return;
  const [left, top] = [Math.max(0, Math.floor(x)), Math.max(0, Math.floor(y))];
  const [right, bottom] = [Math.min(widthPx - 1, left + 1), Math.min(heightPx - 1, top + 1)];
  const [along, down] = [Math.min(1, Math.max(0, x - left)), Math.min(1, Math.max(0, y - top))];
  const corners = [
    [top * widthPx + left, (1 - down) * (1 - along)],
    [top * widthPx + right, (1 - down) * along],
    [bottom * widthPx + left, down * (1 - along)],
    [bottom * widthPx + right, down * along],
  ] as const;
  for (const [at, share] of corners) {
    const own = share * (soft[at] as number);
    for (let channel = 0; channel < 3; channel++) {
      const light = LINEAR_OF_CODE[samples[at * 3 + channel] as number] as number;
      sum[channel] = (sum[channel] as number) + own * light;
    }
    sum[3] = (sum[3] as number) + own;
  }
}

export interface Arranged {
  /** Written to. */
  readonly samples: Uint8Array;
  readonly labels: Uint8Array;
}

/** Light and share of the motif at a pixel of the result, over `steps` × `steps` places of it. */
function sampled(
  photograph: EncodedRaster,
  mask: MotifMask,
  toSource: Place['toSource'],
  { x, y, steps, sum }: { x: number; y: number; steps: number; sum: Float64Array },
): void {
  sum.fill(0);
  for (let step = 0; step < steps * steps; step++) {
    const across = x + ((step % steps) + 0.5) / steps;
    const down = y + (Math.floor(step / steps) + 0.5) / steps;
    addSample(photograph, mask, toSource(across, down), sum);
  }
}

/** @param tone added to the motif, 255ths. */
function mix(
  samples: Uint8Array,
  at: number,
  sum: Float64Array,
  { share, tone }: { share: number; tone: readonly number[] },
): void {
  for (let channel = 0; channel < 3; channel++) {
    const own =
      codeOfLinear((sum[channel] as number) / (sum[3] as number)) + Math.round(tone[channel] as number);
    const toned = LINEAR_OF_CODE[Math.min(255, Math.max(0, own))] as number;
    const under = LINEAR_OF_CODE[samples[at * 3 + channel] as number] as number;
    samples[at * 3 + channel] = codeOfLinear(share * toned + (1 - share) * under);
  }
}

/** Along the placed loop, where the motif and what lies there differ by no more than a tone. */
function rimOf(photograph: EncodedRaster, motif: Motif, mask: MotifMask, onto: Arranged): RimPoint[] {
  const { widthPx, heightPx } = photograph;
  const { toSource, toResult } = placeOf(motif, photograph);
  const [footX, footY] = footOf(motif.outline);
  // A little inside the loop, where the motif is whole.
  const inner = motif.outline.map(
    ([x, y]): FractionPoint => [footX + (x - footX) * 0.97, footY + (y - footY) * 0.97],
  );
  const sum = new Float64Array(4);
  return alongLoop(inner.map(([x, y]) => toResult(x * widthPx, y * heightPx))).flatMap(
    ([x, y]): RimPoint[] => {
      const [column, row] = [Math.floor(x), Math.floor(y)];
      if (column < 0 || row < 0 || column >= widthPx || row >= heightPx) return [];
      sampled(photograph, mask, toSource, { x: column, y: row, steps: 1, sum });
      if ((sum[3] as number) < 0.9) return [];
      const under = (row * widthPx + column) * 3;
      const off = [0, 1, 2].map(
        (channel) =>
          (onto.samples[under + channel] as number) -
          codeOfLinear((sum[channel] as number) / (sum[3] as number)),
      ) as [number, number, number];
      return isTone(off) ? [{ x, y, off }] : [];
    },
  );
}

/** Lays a motif of the photograph on what was arranged so far; its pixels take their planes along. */
export function placeMotif(
  photograph: EncodedRaster,
  labels: Uint8Array,
  { motif, mask }: { motif: Motif; mask: MotifMask },
  onto: Arranged,
): void {
  const { widthPx } = photograph;
  const { toSource, left, right, top, bottom } = placeOf(motif, photograph);
  const rim = rimOf(photograph, motif, mask, onto);
  const reach = toneReach(Math.min(right - left, bottom - top));
  const steps = Math.min(4, Math.ceil(1 / motif.scale));
  const sum = new Float64Array(4);
  for (let y = top; y <= bottom; y++) {
    for (let x = left; x <= right; x++) {
      sampled(photograph, mask, toSource, { x, y, steps, sum });
      const share = (sum[3] as number) / (steps * steps);
      if (share <= 0.002) continue;
      const at = y * widthPx + x;
      mix(onto.samples, at, sum, { share, tone: toneAt(rim, x + 0.5, y + 0.5, reach) });
      if (share < 0.5) continue;
      const [u, v] = toSource(x + 0.5, y + 0.5);
      const from = Math.floor(v) * widthPx + Math.min(widthPx - 1, Math.max(0, Math.floor(u)));
      onto.labels[at] = labels[from] ?? (onto.labels[at] as number);
    }
  }
}
