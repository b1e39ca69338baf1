'use client';
/** What is left of step and turn, once a second, by the server's clock. In the flow: live class -> [use-clock] -> strip. */
import { useEffect, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { type Left, leftOf } from '#server/core/class/clock.ts';

/** Null while no turn runs, and until the server has taken down when the step began. */
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
  return nowMs === null ? null : leftOf(state, nowMs + aheadMs);
}
