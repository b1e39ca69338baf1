'use client';
/** What is left of step and turn, once a second, by the server's clock. In the flow: live class -> [use-clock] -> strip. */
import { useEffect, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { type Left, leftOf } from '#server/core/class/clock.ts';
import { turnLength } from '#server/core/class/steps.ts';

/** Null while no turn runs. Until the server has taken down when the step began, all of its time is left. */
export function useLeft(): Left | null {
  const { state, aheadMs } = useBoardLive().class;
  const [nowMs, setNowMs] = useState<number | null>(null);
  const runs = state.now !== null;
  useEffect(() => {
    if (!runs) return;
    const tick = () => setNowMs(Date.now());
    tick();
    const timer = setInterval(tick, 1000);
    return () => clearInterval(timer);
  }, [runs]);
  if (nowMs === null || state.now === null) return null;
  const { lengths, now } = state;
  return (
    leftOf(state, nowMs + aheadMs) ?? { stepMs: lengths[now.step] * 1000, turnMs: turnLength(lengths) * 1000 }
  );
}
