/** The words of looking that stand on the board from the start; the rest comes with its panels, from `en-look.ts`. Pure. */

export const lookShownWords = {
  tray: { patch: 'Patch', values: 'Values', ways: 'Ways of looking' },

  /** Added to the tray's word, so that nobody forgets how they look. */
  now: { mirrored: 'Mirrored', half: 'Half size', both: 'Mirrored, half size' },

  nine: {
    label: 'Nine steps of grey, 9 the lightest',
    hand: 'the spot under the hand',
  },
};
