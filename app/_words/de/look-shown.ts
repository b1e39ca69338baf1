/** German. Pure. */
import type * as en from '../en/look-shown.ts';
import type { Worded } from '../worded.ts';

export const lookShownWords: Worded<typeof en.lookShownWords> = {
  tray: { patch: 'Probe', values: 'Werte', ways: 'Sicht' },

  /** Added to the tray's word, so that nobody forgets how they look. */
  now: { mirrored: 'Gespiegelt', half: 'Halbe Größe', both: 'Gespiegelt, halbe Größe' },

  nine: {
    label: 'Neun Graustufen, 9 die hellste',
    hand: 'die Stelle unter der Hand',
  },
};
