/**
 * Every word of finding planes: the offer, the groupings, what taking one does. Whole sentences, painters' words. Pure.
 */

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** "one plane", "five planes", "12 planes". */
export function planesInWords(count: number): string {
  return `${NUMBERS[count] ?? count} ${count === 1 ? 'plane' : 'planes'}`;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

type Side = 'reference' | 'painting';

export const proposeWords = {
  find: 'Find the planes',
  again: 'Find the planes again',
  offer: 'No planes yet. They can be found in the picture for you to choose from, or drawn by hand.',
  title: { reference: 'Planes in the reference', painting: 'Planes in the painting' },
  where: 'Find them in the',
  sides: { reference: 'Reference', painting: 'Painting' },
  lead: 'Look at each grouping on the picture and take one. Names and lines can be corrected later.',
  leadMatch: (count: number) =>
    `Outlines for the board’s ${planesInWords(count)}, far to near in their order. Names and kinds stay as they are.`,
  doing: {
    fetch: (side: Side) => `Fetching the ${side} to look at closely …`,
    propose: 'Following the ridges and grouping what lies between them …',
  },
  away: 'The picture could not be fetched. Look whether this device is still on the network, then try again.',
  tooOld: 'This browser could not look for planes in the picture. They can still be drawn by hand.',
  tryAgain: 'Try again',
  groupings: 'Groupings, few planes to many',
  keys: 'Arrow keys look at another grouping, Enter takes the one shown.',
  suggested: 'suggested',
  caption: (count: number) => planesInWords(count),
  grouping: (names: readonly string[], suggested: boolean) =>
    `${capital(planesInWords(names.length))}: ${names.join(', ')}.${suggested ? ' Suggested.' : ''}`,
  why: (reason: string) => `Suggested. ${reason}`,
  take: (count: number) => `Take these ${planesInWords(count)}`,
  takeMatch: (side: Side) => `Lay these outlines on the ${side}`,
  leave: 'Leave it as it is',
  ownNames: 'The planes that are there',
  keep: 'Keep them, with new outlines',
  keepWhy: (side: Side) =>
    `Names, kinds and everything said of them stay; only their lines on this ${side} change.`,
  replace: 'Put these in their place',
  replaceWhy: (before: number) =>
    `The ${planesInWords(before)} of now go, with their outlines on every picture. Undo brings them back.`,
  taken: (count: number, side: Side) =>
    `${capital(planesInWords(count))} on the ${side}, far to near. Choose one to name it or to correct its line.`,
  laid: (side: Side) => `New outlines lie on the ${side}. Choose a plane to correct its line.`,
  undo: 'Undo',
  overtaken: 'Somebody took other planes in the same moment; theirs stand now.',
  choosing: (person: string) => `${person} is choosing planes just now.`,
  byHand: 'Or by hand',
  none: 'You can still draw them by hand.',
  tooMany: (count: number) =>
    `The board has ${planesInWords(count)}; two to seven can be found in a picture. Carry their outlines from the reference, or draw them by hand.`,
  noMatch: 'Carry the outlines from the reference, or draw them by hand.',
  onlyLook:
    'No planes yet. Whoever made the board, its teacher or the host chooses them; they appear here at once.',
  notYours: 'Only its painter, the teacher and the host outline this painting.',
  keyList: { find: 'find the planes', post: 'choose pictures to post' },
} as const;
