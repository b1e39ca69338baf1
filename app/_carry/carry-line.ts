/**
 * The page's line to the worker that carries planes: one question at a time, the newest next.
 *
 * In the flow: carry-desk -> [carry-line] -> carry worker. IO: a worker, opened with the first question.
 */
import { copyAddress } from '#app/_easel/picture-copies.tsx';
import { QuestionLine } from '#app/_workers/question-line.ts';
import type { PictureSize } from '#server/core/contract/picture-choices.ts';
import type { CarryQuestion, CarryReply } from './carry.worker.ts';

/** Sharp enough for ridges when the painting fills half of its photo. */
const COPY: PictureSize = 1280;

export const carryCopy = (boardId: string, pictureId: string): string =>
  new URL(copyAddress(boardId, pictureId, COPY), location.href).href;

export class CarryLine {
  readonly #line = new QuestionLine<CarryQuestion, CarryReply>(
    () => new Worker(new URL('./carry.worker.ts', import.meta.url), { type: 'module' }),
  );
  #busy = false;
  #next: (() => void) | null = null;

  /**
   * @param answered Not called when a newer question came before this one was begun.
   * @param failed Called when a picture cannot be fetched or decoded.
   */
  ask(question: CarryQuestion, answered: (reply: CarryReply) => void, failed: () => void): void {
    this.#next = () => {
      this.#busy = true;
      this.#line
        .ask(question)
        .then(answered, failed)
        .finally(() => {
          this.#busy = false;
          this.#begin();
        });
    };
    this.#begin();
  }

  close(): void {
    this.#next = null;
    this.#line.close();
  }

  #begin(): void {
    if (this.#busy || !this.#next) return;
    const begin = this.#next;
    this.#next = null;
    begin();
  }
}
