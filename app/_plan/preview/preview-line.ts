/**
 * The page's line to the preview's worker, with the canvas that the worker paints on. While it is at work only the newest
 * question waits.
 *
 * In the flow: preview-on-stage -> [preview-line] -> preview worker. IO: a worker, a canvas of the page.
 */
import { QuestionLine } from '#app/_workers/question-line.ts';
import type { PreviewAnswer, PreviewQuestion } from './preview.worker.ts';

export type PreviewWish = Omit<PreviewQuestion, 'canvas'>;

export class PreviewLine {
  /** To be put into the page; it is the worker's from the first question on. */
  readonly canvas: HTMLCanvasElement;
  readonly #line = new QuestionLine<PreviewQuestion, PreviewAnswer>(
    () => new Worker(new URL('./preview.worker.ts', import.meta.url), { type: 'module' }),
  );
  readonly #tell: (answer: PreviewAnswer) => void;
  readonly #failed: () => void;
  #handedOver = false;
  #busy = false;
  #next: PreviewWish | null = null;

  constructor(tell: (answer: PreviewAnswer) => void, failed: () => void) {
    this.canvas = document.createElement('canvas');
    this.#tell = tell;
    this.#failed = failed;
  }

  /** A question that was still waiting is forgotten: its picture would be out of date. */
  ask(wish: PreviewWish): void {
    this.#next = wish;
    if (!this.#busy) void this.#work();
  }

  close(): void {
    this.#next = null;
    this.#line.close();
    this.canvas.remove();
  }

  async #work(): Promise<void> {
    this.#busy = true;
    for (let wish = this.#take(); wish; wish = this.#take()) {
      try {
        const canvas = this.#handedOver ? null : this.canvas.transferControlToOffscreen();
        this.#handedOver = true;
        this.#tell(await this.#line.ask({ ...wish, canvas }, canvas ? [canvas] : []));
      } catch {
        this.#failed();
      }
    }
    this.#busy = false;
  }

  #take(): PreviewWish | null {
    const next = this.#next;
    this.#next = null;
    return next;
  }
}
