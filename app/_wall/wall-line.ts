/**
 * The wall's line to its worker; what was asked once is kept.
 *
 * In the flow: rows, two large -> [wall-line] -> wall worker. IO: a worker, opened with the first question.
 */
import { QuestionLine } from '#app/_workers/question-line.ts';
import type { PaletteColour } from '#server/core/wall/palette.ts';
import type { WallAnswer, WallAsk, WallQuestion } from './wall.worker.ts';

/** A copy of a painting, and how it is put right. */
export type WallSource = Pick<WallQuestion, 'address' | 'photo'>;
export type BitmapAsk = Exclude<WallAsk, { ask: 'palette' }>;

/** Answers kept: twelve paintings in four ways, and two large. */
const KEPT = 50;

export class WallLine {
  readonly #line = new QuestionLine<WallQuestion, WallAnswer>(
    () => new Worker(new URL('./wall.worker.ts', import.meta.url), { type: 'module' }),
  );
  readonly #kept = new Map<string, Promise<WallAnswer>>();

  /** @throws Error when the picture cannot be fetched or decoded. */
  async bitmap(source: WallSource, ask: BitmapAsk): Promise<ImageBitmap> {
    const answer = await this.#asked({ ...source, ...ask });
    if (!('bitmap' in answer)) throw new Error('The worker answered another question.');
    return answer.bitmap;
  }

  /** The largest colour first. @throws Error as above. */
  async palette(source: WallSource, ask: Extract<WallAsk, { ask: 'palette' }>): Promise<PaletteColour[]> {
    const answer = await this.#asked({ ...source, ...ask });
    if (!('palette' in answer)) throw new Error('The worker answered another question.');
    return answer.palette;
  }

  close(): void {
    this.#line.close();
    this.#kept.clear();
  }

  #asked(question: WallQuestion): Promise<WallAnswer> {
    const key = JSON.stringify(question);
    const kept = this.#kept.get(key);
    if (kept) return kept;
    const address = new URL(question.address, location.href).href;
    const coming = this.#line.ask({ ...question, address });
    this.#kept.set(key, coming);
    coming.catch(() => this.#kept.delete(key));
    for (const old of [...this.#kept.keys()].slice(0, -KEPT)) this.#kept.delete(old);
    return coming;
  }
}
