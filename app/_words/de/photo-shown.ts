/** German. Pure. */
import type * as en from '../en/photo-shown.ts';
import type { Worded } from '../worded.ts';

export const photoShownWords: Worded<typeof en.photoShownWords> = {
  shownAs: 'Wie das Gemälde gezeigt wird',
  asPhotographed: 'Wie fotografiert',
  putRight: 'Entzerrt',
  away: 'Das Bild war gerade nicht zu holen. Sieh nach, ob die Verbindung steht, und versuch es noch einmal.',

  trust: {
    /** Short: the row under the picture must not wrap as the grade comes, or the picture moves under the hand. */
    caption: (grade) => `Foto ${grade}`,
    captionMore: 'Wie verlässlich dieses Foto ist',
  },
};
