/**
 * The worker's end of a question line: takes numbered questions, sends numbered answers.
 *
 * In the flow: question-line -> [answer-questions] -> the area's own answers. IO: messages.
 */
export interface Numbered<Question> {
  number: number;
  question: Question;
}

/** `trouble` is what was thrown, in words for the log. */
export type Answered<Answer> = { number: number } & ({ answer: Answer } | { trouble: string });

/**
 * Answers every question that comes to this worker.
 *
 * @param handedOver What of an answer is handed to the page instead of copied, bitmaps for instance.
 */
export function answerQuestions<Question, Answer>(
  answerTo: (question: Question) => Answer | Promise<Answer>,
  handedOver: (answer: Answer) => Transferable[] = () => [],
): void {
  self.onmessage = async ({ data: { number, question } }: MessageEvent<Numbered<Question>>) => {
    try {
      const answer = await answerTo(question);
      const answered: Answered<Answer> = { number, answer };
      self.postMessage(answered, { transfer: handedOver(answer) });
    } catch (thrown) {
      self.postMessage({ number, trouble: String(thrown) } satisfies Answered<Answer>);
    }
  };
}
