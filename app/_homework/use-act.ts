'use client';
/** Runs a call to the server, then looks again, also where it was refused: somebody may have been faster. */
import { useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';

export function useAct(changed: () => Promise<void>) {
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  /** @returns Whether it went through. */
  const act = async (doing: () => Promise<unknown>): Promise<boolean> => {
    setBusy(true);
    setTrouble(null);
    let done = true;
    try {
      await doing();
    } catch (thrown) {
      done = false;
      setTrouble(sentenceOf(thrown));
    }
    await changed();
    setBusy(false);
    return done;
  };
  return { busy, trouble, act };
}
