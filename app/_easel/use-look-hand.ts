/** The hand that only moves about. In the flow: [use-look-hand] -> stage. */
import { words } from '#app/_words/en-easel.ts';
import type { Hand } from './hand.ts';

export function useLookHand(): Hand {
  return { cursor: 'grab', crosshair: false, keysHint: words.easel.lookKeys };
}
