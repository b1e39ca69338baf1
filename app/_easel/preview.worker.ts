/**
 * Measures the preview beside the page, so that the hand never waits for it.
 *
 * In the flow: preview-line -> [preview worker] -> preview-line. Takes the pixels of both pictures once, then one
 * source after another. IO: messages.
 */
import type { PhotoCorrection } from '#server/core/contract/setup.ts';
import { type CanvasPixels, previewMeasuring } from './preview-measuring.ts';
import type { PreviewSource } from './preview-setup.ts';

export type ToWorker =
  | { pictures: { reference: CanvasPixels | null; painting: CanvasPixels; photo: PhotoCorrection } }
  | { source: PreviewSource };

let measure: ReturnType<typeof previewMeasuring> | null = null;

self.onmessage = ({ data }: MessageEvent<ToWorker>) => {
  if ('pictures' in data) {
    const { reference, painting, photo } = data.pictures;
    measure = previewMeasuring(reference, painting, photo);
  } else self.postMessage(measure?.(data.source) ?? null);
};
