/**
 * The page's line to the worker of the looking tools; what was asked once is kept.
 *
 * In the flow: use-look-pixels, squint layer -> [look-line] -> look worker. IO: a worker, opened with the first question.
 */
import { losslessAddress } from '#app/_easel/picture-copies.tsx';
import { QuestionLine } from '#app/_workers/question-line.ts';
import type { LookAnswer, LookQuestion } from './look.worker.ts';
import type { LookAs, LookPixels } from './look-pixels.ts';

export interface LookWish {
  boardId: string;
  pictureId: string;
  as: LookAs;
}

/** Answers kept: two pictures at a few strengths of squinting. */
const KEPT = 8;

export class LookLine {
  readonly #line = new QuestionLine<LookQuestion, LookAnswer>(
    () => new Worker(new URL('./look.worker.ts', import.meta.url), { type: 'module' }),
  );
  readonly #kept = new Map<string, Promise<LookAnswer>>();

  /** @throws Error when the picture cannot be fetched or decoded. */
  async pixels(wish: LookWish): Promise<LookPixels> {
    const answer = await this.#asked('pixels', wish);
    if (!('pixels' in answer)) throw new Error('The worker answered another question.');
    return answer.pixels;
  }

  /** The picture as half-closed eyes see it. @throws Error as above. */
  async squinted(wish: LookWish): Promise<ImageBitmap> {
    const answer = await this.#asked('squinted', wish);
    if (!('squinted' in answer)) throw new Error('The worker answered another question.');
    return answer.squinted;
  }

  close(): void {
    this.#line.close();
    this.#kept.clear();
  }

  #asked(ask: LookQuestion['ask'], { boardId, pictureId, as }: LookWish): Promise<LookAnswer> {
    const key = JSON.stringify([ask, pictureId, as]);
    const kept = this.#kept.get(key);
    if (kept) return kept;
    const address = new URL(losslessAddress(boardId, pictureId), location.href).href;
    const coming = this.#line.ask({ address, as, ask });
    this.#kept.set(key, coming);
    coming.catch(() => this.#kept.delete(key));
    for (const old of [...this.#kept.keys()].slice(0, -KEPT)) this.#kept.delete(old);
    return coming;
  }
}
