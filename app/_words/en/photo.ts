/**
 * Every word of putting a photo of a painting right, and of how far the photo can be trusted.
 *
 * Whole sentences; painters' words; the sentences of core and of the server are shown as they come. Pure.
 */
import type { CaptureReason } from '#server/core/capture/reasons.ts';
import { photoShownWords } from './photo-shown.ts';

/** "less than 1 %", "3 %". @param share 0..1. */
export function percentWords(share: number): string {
  return share < 0.01 ? 'less than 1 %' : `${Math.round(share * 100)} %`;
}

export const words = {
  ...photoShownWords,
  leaf: 'Photo',
  none: 'Show a painting: only photos of paintings are squared up.',
  onlyLook: 'The painter of this picture, the teacher and the host square up its photo.',
  heldBy: (person: string) => `${person} is squaring up this photo just now. Wait until they let go.`,
  begin: 'Square up the photo',
  noted: 'What it is painted with, and its light',
  notNoted: 'Not said yet.',

  how: {
    begin:
      'First the corners of the painting: let them be found, set them by hand, or say that it fills the photo.',
    found: 'The corners are found. Look at each one closely, and pull it where it is off.',
    corners: 'Pull each handle onto its corner of the painting. What lies inside is squared.',
    whole: 'The whole photo is taken as the painting. Where that is not so, pull a corner in.',
    noCard: 'Is there a grey card or white paper in the photo? Mark it, and the colour comes right too.',
    adding: 'Press on the card in the photo, or draw a box inside it.',
    cards: 'Each box lies inside its card; only its middle counts. Say in the list what each card is.',
  },
  notSure:
    'The corners could not be told from the wall for sure, so nothing was set. Set them by hand, or say that the painting fills the photo.',
  notSureKept: 'The corners could not be told from the wall for sure, so yours stay as they are.',
  find: 'Find the corners',
  finding: 'Looking for them …',
  byHand: 'Set them by hand',
  fills: 'The painting fills the photo',
  clear: 'Take the corners away',

  corner: [
    'Top left corner of the painting. Arrow keys move it, with Shift farther.',
    'Top right corner of the painting. Arrow keys move it, with Shift farther.',
    'Bottom right corner of the painting. Arrow keys move it, with Shift farther.',
    'Bottom left corner of the painting. Arrow keys move it, with Shift farther.',
  ] as const,
  cardBox: (number: number) => `Box on card ${number}. Arrow keys move it, with Shift farther.`,
  cardEdge: (number: number) =>
    `Lower right corner of the box on card ${number}. Arrow keys change its size.`,
  keys: 'Tab goes to corners and cards, arrow keys move them. Plus and minus zoom, zero shows the whole picture.',
  addKeys: 'Arrow keys move the cross, space puts a card there, Escape leaves it.',

  cards: {
    title: 'Grey and white cards',
    lead: 'One card makes the colour neutral. Two, at opposite sides, even the light as well.',
    add: 'Mark a grey or white card',
    addAnother: 'Mark another card',
    stop: 'Not now',
    one: (number: number) => `Card ${number}`,
    is: (number: number) => `Card ${number} is`,
    grey: '18 % grey',
    white: 'white card or white paper',
    typed: 'another, in percent',
    percent: (number: number) => `How much light card ${number} reflects, in percent`,
    percentSign: '% of the light',
    percentWrong: 'A card reflects more than 0 and at most 100 percent of the light, for example 18 or 90.',
    remove: (number: number) => `Take card ${number} away`,
    removeShort: 'Take away',
    choose: (number: number) => `Show card ${number} on the photo`,
    full: 'Four cards are enough.',
    small: 'That box is very small. Draw it larger, or press on the middle of the card.',
    fine: 'read well',
  },

  size: {
    title: 'Size of the canvas',
    lead: 'Only the proportion counts. Without it, the proportion is taken from the corners.',
    choose: 'Usual sizes',
    chosen: 'Typed below',
    none: 'Not said',
    fitting: 'Fit these corners',
    inches: 'Inches',
    french: 'French series, cm',
    option: (name: string | null, width: number, height: number, unit: string) =>
      `${name ? `${name}: ` : ''}${width} × ${height} ${unit}`,
    width: 'Width',
    height: 'Height',
    wrong: 'Width and height are numbers above 0, for example 40 and 30.',
  },

  beside: {
    label: 'What stands beside the photo',
    labelNarrow: 'What is shown',
    righted: 'Squared up',
    reference: 'Reference',
    photo: 'Photo',
    alt: (name: string) => `Painting by ${name}, squared up`,
    none: 'Once the corners or a card are set, the squared-up photo stands here.',
    making: 'Squaring it up …',
    hold: 'Hold for the light as it came',
    proportion: (ratio: string) => `${ratio} : 1`,
  },

  trust: {
    title: 'How far this photo can be trusted',
    ...photoShownWords.trust,
    grade: (grade: string) => `Grade ${grade}`,
    A: 'Two cards agree and the light is even: values and colours can be spoken of to a quarter of a step.',
    B: 'Something neutral to go by: values and colours can be spoken of to about half a step.',
    C: 'Nothing sure to go by: only the order of the planes is spoken of, no amounts and no colour.',
    pending: 'Being measured …',
    notYet: 'It is graded once planes are outlined.',
    reasonsTitle: 'What would make it better',
    fineTitle: 'Nothing stands against it.',
    reasons: {
      'no neutral': 'Nothing neutral to go by',
      clipping: 'Lights or darks ran out',
      glare: 'Glare on the paint',
      'uneven light': 'Uneven light',
      crooked: 'Taken from the side',
      'too small or soft': 'Small or soft',
      'mixed light': 'Two kinds of light',
      wet: 'Wet paint',
      'reference looks tone-mapped': 'The reference looks worked over',
      'one cast over everything': 'One cast over everything',
    } satisfies Record<CaptureReason, string>,
    uneven: (share: number) => `The light falls off by ${percentWords(share)} across the painting.`,
    again: 'Photograph it again in four steps',
  },

  overlay: {
    show: 'Show glare and clipping',
    key: 'What the patterns mean',
    glare: (share: number) => `Glare on ${percentWords(share)} of the painting; left out of all figures`,
    blown: (share: number) => `Lights ran out on ${percentWords(share)}; figures there say “at least”`,
    crushed: (share: number) => `Darks ran out on ${percentWords(share)}; figures there say “at most”`,
    nothing: 'No glare, and neither lights nor darks ran out.',
  },
} as const;
