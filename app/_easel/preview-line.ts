/**
 * The page's line to the worker that measures the preview: one question at a time, the newest next.
 *
 * In the flow: use-preview -> [preview-line] -> preview worker. IO: a worker; fetches two pictures once.
 */
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import type { Box } from '#server/core/plan/crops/crop-scene.ts';
import type { ToWorker } from './preview.worker.ts';
import type { PreviewSource } from './preview-setup.ts';
import { smallCopy } from './small-copy.ts';

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

  /**
   * @param referenceId Null when painted from life. @param frame Of the reference that the painting is made after.
   * @throws Error when a picture cannot be fetched.
   */
  async take(
    boardId: string,
    { referenceId, frame, paintingId }: { referenceId: string | null; frame?: Box; paintingId: string },
  ): Promise<void> {
    const [reference, painting] = await Promise.all([
      referenceId ? smallCopy(boardId, referenceId, frame) : null,
      smallCopy(boardId, paintingId),
    ]);
    this.#send({ pictures: { reference, painting } });
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
