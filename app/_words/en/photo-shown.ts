/** The words about a painting's photo that stand on the board from the start; the rest comes with its tool, from `en-photo.ts`. Pure. */

export const photoShownWords = {
  shownAs: 'How the painting is shown',
  asPhotographed: 'As photographed',
  putRight: 'Squared up',
  away: 'The picture could not be fetched just now. Look whether the line is up, then try again.',

  trust: {
    /** Short: the row under the picture must not wrap as the grade comes, or the picture moves under the hand. */
    caption: (grade: string) => `Photo ${grade}`,
    captionMore: 'How far this photo can be trusted',
  },
};
