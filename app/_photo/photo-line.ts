/**
 * The page's line to the worker that puts photos right.
 *
 * In the flow: photo desk -> [photo-line] -> photo worker. IO: a worker, opened with the first question.
 */
import { copyAddress } from '#app/_easel/picture-copies.tsx';
import { QuestionLine } from '#app/_workers/question-line.ts';
import type { PictureSize } from '#server/core/contract/picture-choices.ts';
import type { FractionPoint, PhotoCorrection } from '#server/core/contract/setup.ts';
import type { RightedWish } from './answering.ts';
import type { PhotoAnswer, PhotoAsk, PhotoQuestion, RightedPicture } from './photo.worker.ts';

/** The copy that corners and cards are looked for on; they shrink it themselves where they may. */
const COPY: PictureSize = 1280;

export class PhotoLine {
  readonly #boardId: string;
  readonly #pictureId: string;
  readonly #line = new QuestionLine<PhotoQuestion, PhotoAnswer>(
    () => new Worker(new URL('./photo.worker.ts', import.meta.url), { type: 'module' }),
  );

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
    this.#line.close();
  }

  #ask(asked: PhotoAsk, copy: PictureSize): Promise<PhotoAnswer> {
    const address = new URL(copyAddress(this.#boardId, this.#pictureId, copy), location.href).href;
    return this.#line.ask({ address, ...asked });
  }
}
