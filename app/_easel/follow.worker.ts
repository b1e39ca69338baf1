/**
 * Follows ridges beside the page, so that the hand never waits for it.
 *
 * In the flow: follow-line -> [follow worker] -> follow-line. Takes a picture's pixels once, then pairs of places.
 * IO: messages.
 */
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { encodedFromRgba } from '#server/core/image/raster.ts';
import { type EdgeCosts, edgeCosts } from '#server/core/planes/follow/edge-cost.ts';
import { edgePath } from '#server/core/planes/follow/edge-path.ts';
import type { CanvasPixels } from './preview-measuring.ts';

export type ToFollow =
  | { pictureId: string; pixels: CanvasPixels }
  | { pictureId: string; question: number; from: FractionPoint; to: FractionPoint };

export interface Followed {
  question: number;
  /** From the first place to the second, both among them; null for a picture that has not come. */
  line: FractionPoint[] | null;
}

const pictures = new Map<string, EdgeCosts>();

self.onmessage = ({ data }: MessageEvent<ToFollow>) => {
  if ('pixels' in data) {
    const { widthPx, heightPx, rgba } = data.pixels;
    pictures.set(data.pictureId, edgeCosts(encodedFromRgba(widthPx, heightPx, rgba)));
    return;
  }
  const costs = pictures.get(data.pictureId);
  const line = costs ? edgePath(costs, data.from, data.to) : null;
  self.postMessage({ question: data.question, line } satisfies Followed);
};
