/**
 * The page's line to the worker that plans and weighs. While it is at work only the newest question waits.
 *
 * In the flow: use-planned, use-weight -> [plan-line] -> plan worker. IO: a worker, opened with the first question.
 */
import { QuestionLine } from '#app/_workers/question-line.ts';
import type { PlanAnswer, PlanQuestion } from './plan.worker.ts';

export class PlanLine {
  readonly #line = new QuestionLine<PlanQuestion, PlanAnswer>(
    () => new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module' }),
  );
  readonly #tell: (answer: PlanAnswer, question: PlanQuestion) => void;
  readonly #failed: () => void;
  #busy = false;
  #next: PlanQuestion | null = null;

  /**
   * @param tell Told the answer and the question that it answers, which may not be the newest one any more.
   * @param failed Called where the small copy could not be had, or the worker stopped.
   */
  constructor(tell: (answer: PlanAnswer, question: PlanQuestion) => void, failed: () => void) {
    this.#tell = tell;
    this.#failed = failed;
  }

  /** A question that was still waiting is forgotten: its answer would be out of date. */
  ask(question: PlanQuestion): void {
    this.#next = question;
    if (!this.#busy) void this.#work();
  }

  close(): void {
    this.#next = null;
    this.#line.close();
    this.#busy = false;
  }

  async #work(): Promise<void> {
    this.#busy = true;
    for (let question = this.#take(); question; question = this.#take()) {
      try {
        this.#tell(await this.#line.ask(question), question);
      } catch {
        this.#failed();
      }
    }
    this.#busy = false;
  }

  #take(): PlanQuestion | null {
    const next = this.#next;
    this.#next = null;
    return next;
  }
}
