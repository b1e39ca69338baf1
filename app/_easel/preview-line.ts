/**
 * The page's line to the worker that measures the preview: one question at a time, the newest next.
 *
 * In the flow: use-preview -> [preview-line] -> preview worker. IO: a worker; fetches two pictures once.
 */
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import type { PhotoCorrection } from '#server/core/contract/setup.ts';
import type { Box } from '#server/core/plan/crops/crop-scene.ts';
import type { ToWorker } from './preview.worker.ts';
import type { PreviewSource } from './preview-setup.ts';
import { smallCopy } from './small-copy.ts';

/** What the preview is measured from. */
export interface PreviewPictures {
  /** Null when painted from life. */
  referenceId: string | null;
  paintingId: string;
  /** Corners and cards of the painting's photo. */
  photo: PhotoCorrection;
  /** Of the reference that the painting is made after. */
  frame?: Box;
}

/** Long side, pixels, of a photo that is put right: painting and card take only a part of it. */
const PHOTO_SIDE_PX = 640;

export class PreviewLine {
  readonly #worker: Worker;
  readonly #answered: (document: MeasureDocument) => void;
  #ready = false;
  #busy = false;
  #next: PreviewSource | null = null;

  /** @param answered Called with each preview; not for outlines that cannot be measured. */
  constructor(answered: (document: MeasureDocument) => void) {
    this.#answered = answered;
    this.#worker = new Worker(new URL('./preview.worker.ts', import.meta.url), { type: 'module' });
    this.#worker.onmessage = ({ data }: MessageEvent<MeasureDocument | null>) => {
      this.#busy = false;
      if (data) this.#answered(data);
      this.#ask();
    };
  }

  /** @throws Error when a picture cannot be fetched. */
  async take(boardId: string, { referenceId, frame, paintingId, photo }: PreviewPictures): Promise<void> {
    const [reference, painting] = await Promise.all([
      referenceId ? smallCopy(boardId, referenceId, frame && { box: frame }) : null,
      smallCopy(boardId, paintingId, photo.corners || photo.cards?.length ? { sidePx: PHOTO_SIDE_PX } : {}),
    ]);
    this.#send({ pictures: { reference, painting, photo } });
    this.#ready = true;
    this.#ask();
  }

  ask(source: PreviewSource): void {
    this.#next = source;
    this.#ask();
  }

  /** What was asked and is not answered yet is no longer wanted. */
  forget(): void {
    this.#next = null;
  }

  close(): void {
    this.#worker.terminate();
  }

  #ask(): void {
    if (!this.#ready || this.#busy || !this.#next) return;
    this.#busy = true;
    this.#send({ source: this.#next });
    this.#next = null;
  }

  #send(message: ToWorker): void {
    this.#worker.postMessage(message);
  }
}
