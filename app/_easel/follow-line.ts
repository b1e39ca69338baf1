/**
 * The page's line to the worker that follows ridges: pictures go over once, then two places, back comes a line.
 *
 * In the flow: use-follow -> [follow-line] -> follow worker. IO: a worker; fetches each picture once.
 */
import type { FractionPoint } from '#server/core/contract/setup.ts';
import type { Followed, ToFollow } from './follow.worker.ts';
import { smallCopy } from './small-copy.ts';

/** Long side of the copy that is followed on, pixels. */
const LONG_SIDE_PX = 640;

export class FollowLine {
  readonly #worker = new Worker(new URL('./follow.worker.ts', import.meta.url), { type: 'module' });
  readonly #waiting = new Map<number, (line: FractionPoint[] | null) => void>();
  readonly #ready = new Set<string>();
  #questions = 0;

  constructor() {
    this.#worker.onmessage = ({ data }: MessageEvent<Followed>) => {
      this.#waiting.get(data.question)?.(data.line);
      this.#waiting.delete(data.question);
    };
  }

  /** @throws Error when the picture cannot be fetched. */
  async take(boardId: string, pictureId: string): Promise<void> {
    const pixels = await smallCopy(boardId, pictureId, LONG_SIDE_PX);
    this.#send({ pictureId, pixels });
    this.#ready.add(pictureId);
  }

  /** The line along the strongest edge; null when the picture has not come, so that a straight one is drawn. */
  follow(pictureId: string, from: FractionPoint, to: FractionPoint): Promise<FractionPoint[] | null> {
    if (!this.#ready.has(pictureId)) return Promise.resolve(null);
    this.#questions += 1;
    const question = this.#questions;
    return new Promise((resolve) => {
      this.#waiting.set(question, resolve);
      this.#send({ pictureId, question, from, to });
    });
  }

  close(): void {
    this.#worker.terminate();
  }

  #send(message: ToFollow): void {
    this.#worker.postMessage(message);
  }
}
