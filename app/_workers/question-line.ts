/**
 * The page's line to a worker that answers questions: numbered, so that answers may come in any order.
 *
 * In the flow: a line of its own area (looking, photos, planes) -> [question-line] -> answer-questions in a worker.
 * IO: a worker, opened with the first question.
 */
import type { Answered, Numbered } from './answer-questions.ts';

export class QuestionLine<Question, Answer> {
  readonly #begin: () => Worker;
  readonly #waiting = new Map<number, (answered: Answered<Answer>) => void>();
  #worker: Worker | null = null;
  #number = 0;

  /** @param begin Makes the worker; called with the first question, and with the next one after `close`. */
  constructor(begin: () => Worker) {
    this.#begin = begin;
  }

  /**
   * @param handedOver What of the question the worker takes over, a canvas for instance.
   * @throws Error with the worker's own words when it found no answer. Never settles once the line is closed.
   */
  ask(question: Question, handedOver: Transferable[] = []): Promise<Answer> {
    const number = ++this.#number;
    return new Promise((resolve, reject) => {
      this.#waiting.set(number, (answered) =>
        'trouble' in answered ? reject(new Error(answered.trouble)) : resolve(answered.answer),
      );
      this.#open().postMessage({ number, question } satisfies Numbered<Question>, handedOver);
    });
  }

  close(): void {
    this.#worker?.terminate();
    this.#worker = null;
    this.#waiting.clear();
  }

  #open(): Worker {
    if (this.#worker) return this.#worker;
    const worker = this.#begin();
    worker.onmessage = ({ data }: MessageEvent<Answered<Answer>>) => {
      const settle = this.#waiting.get(data.number);
      this.#waiting.delete(data.number);
      settle?.(data);
    };
    // A worker that could not even be loaded answers nothing more: whoever waits is told.
    worker.onerror = ({ message }) => {
      for (const [number, settle] of this.#waiting) settle({ number, trouble: message });
      this.#waiting.clear();
    };
    this.#worker = worker;
    return worker;
  }
}
