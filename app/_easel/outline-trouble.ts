/** What is wrong with an outline, in core's own sentence. In the flow: hand -> [outline-trouble] -> bar. Pure. */
import type { Outline } from '#server/core/contract/setup.ts';
import { checkOutline } from '#server/core/planes/check-outline.ts';
import { isProblem } from '#server/core/problem.ts';

/** The sentence of core's refusal, or null when the outline can be used. */
export function outlineTrouble(planeName: string, outline: Outline): string | null {
  return troubleOf(() => checkOutline(planeName, outline));
}

/** The sentence of a `Problem` that `attempt` throws, or null when it succeeds. */
export function troubleOf(attempt: () => void): string | null {
  try {
    attempt();
    return null;
  } catch (thrown) {
    if (isProblem(thrown)) return thrown.message;
    throw thrown;
  }
}
