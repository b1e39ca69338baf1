/**
 * The page's line to the worker that puts photos right.
 *
 * In the flow: photo desk -> [photo-line] -> photo worker. IO: a worker, opened with the first question.
 */
import { copyAddress } from '#app/_easel/picture-copies.tsx';
import type { PictureSize } from '#server/core/contract/picture-choices.ts';
import type { FractionPoint, PhotoCorrection } from '#server/core/contract/setup.ts';
import type { RightedWish } from './answering.ts';
import type { PhotoAnswer, PhotoQuestion, RightedPicture } from './photo.worker.ts';

/** The copy that corners and cards are looked for on; they shrink it themselves where they may. */
const COPY: PictureSize = 1280;

type Asked = { ask: 'corners' } | { ask: 'card'; at: FractionPoint } | ({ ask: 'right' } & RightedWish);

export class PhotoLine {
  readonly #boardId: string;
  readonly #pictureId: string;
  readonly #waiting = new Map<number, (answer: PhotoAnswer) => void>();
  #worker: Worker | null = null;
  #number = 0;

  constructor(boardId: string, pictureId: string) {
    this.#boardId = boardId;
    this.#pictureId = pictureId;
  }

  /** Corners of the painting; null when it is not sure. @throws Error when the picture cannot be fetched. */
  async corners(): Promise<NonNullable<PhotoCorrection['corners']> | null> {
    const answer = await this.#ask({ ask: 'corners' }, COPY);
    return 'corners' in answer ? answer.corners : null;
  }

  /** Box of the card at a tapped point; null when there is no even patch. @throws Error as above. */
  async card(at: FractionPoint): Promise<[number, number, number, number] | null> {
    const answer = await this.#ask({ ask: 'card', at }, COPY);
    return 'box' in answer ? answer.box : null;
  }

  /** The photo put right, or the sentence why not. @throws Error as above. */
  async righted(wish: RightedWish, copy: PictureSize): Promise<RightedPicture | string> {
    const answer = await this.#ask({ ask: 'right', ...wish }, copy);
    if (!('righted' in answer)) throw new Error('The worker answered another question.');
    return answer.righted;
  }

  close(): void {
    this.#worker?.terminate();
    this.#worker = null;
    this.#waiting.clear();
  }

  #ask(asked: Asked, copy: PictureSize): Promise<PhotoAnswer> {
    const number = ++this.#number;
    const address = new URL(copyAddress(this.#boardId, this.#pictureId, copy), location.href).href;
    return new Promise((resolve, reject) => {
      this.#waiting.set(number, (answer) =>
        'trouble' in answer ? reject(new Error(answer.trouble)) : resolve(answer),
      );
      this.#open().postMessage({ number, address, ...asked } satisfies PhotoQuestion);
    });
  }

  #open(): Worker {
    if (this.#worker) return this.#worker;
    const worker = new Worker(new URL('./photo.worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<PhotoAnswer>) => {
      const settle = this.#waiting.get(data.number);
      this.#waiting.delete(data.number);
      settle?.(data);
    };
    this.#worker = worker;
    return worker;
  }
}
