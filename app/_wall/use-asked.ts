'use client';
/** One answer of the wall's worker, asked for when the question changes. In the flow: wall-line -> [use-asked] -> rows. */
import { useEffect, useState } from 'react';

export interface Asked<Answer> {
  /** Null until it is there. */
  answer: Answer | null;
  failed: boolean;
}

const NOTHING = { answer: null, failed: false };

/**
 * @param key The question by its content; null = nothing is asked.
 * @param ask Asks it. The last answer stays until the next is there.
 */
export function useAsked<Answer>(key: string | null, ask: () => Promise<Answer>): Asked<Answer> {
  const [asked, setAsked] = useState<Asked<Answer>>(NOTHING);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `key` is the question by its content.
  useEffect(() => {
    if (key === null) return;
    let wanted = true;
    ask().then(
      (answer) => wanted && setAsked({ answer, failed: false }),
      () => wanted && setAsked({ answer: null, failed: true }),
    );
    return () => {
      wanted = false;
    };
  }, [key]);
  return key === null ? NOTHING : asked;
}
