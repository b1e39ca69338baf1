'use client';
/** A setter that tells the hand before it sets. In the flow: tools, ways of looking -> [use-own] -> own-hand. */
import { useCallback } from 'react';
import type { OwnHand } from './own-hand.ts';

export function useOwn<T>(hand: OwnHand, set: (value: T) => void): (value: T) => void {
  return useCallback(
    (value: T) => {
      hand.moved();
      set(value);
    },
    [hand, set],
  );
}
