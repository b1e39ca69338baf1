/**
 * Puts a photograph, or a frame of it, into half steps of L* beside the page.
 *
 * In the flow: use-value-picture -> [values worker] -> value plans. IO: messages; HTTP.
 */
import { answerQuestions } from '#app/_workers/answer-questions.ts';
import { copyAt } from '#app/_workers/copies.ts';
import { type ValuePicture, valuePicture } from '#server/core/look/value-plan.ts';
import type { Box } from '#server/core/plan/crops/crop-scene.ts';

export interface ValuesQuestion {
  /** Of the copy, whole. */
  address: string;
  box: Box;
  squint: number;
}

answerQuestions(
  async ({ address, box, squint }: ValuesQuestion): Promise<ValuePicture> =>
    valuePicture(await copyAt(address), box, squint),
  ({ codes, counts }) => [codes.buffer, counts.buffer],
);
