/** The hand that only moves about. In the flow: [use-look-hand] -> stage. */
import { words } from '#words/easel.ts';
import type { Hand } from './hand.ts';

export function useLookHand(): Hand {
  return { cursor: 'grab', crosshair: false, keysHint: words.easel.lookKeys };
}
