/**
 * Every word that stands on a sheet and is nobody's own. In the flow: [words] -> access/sheet, server/sheet. Pure.
 *
 * They stand here and not among the words of the screens, for the page is made on the server.
 */
import type { MeasureDocument } from '../contract/measures.ts';
import type { Condition } from '../contract/setup.ts';
import type { AnswerState, MarkState } from '../live/layout.ts';

type Grade = 'A' | 'B' | 'C';

export const sheetWords = {
  untitled: (painter: string) => `Painting by ${painter}`,
  byline: (painter: string, state: number, states: number, day: string) =>
    `${painter}${states > 1 ? `, state ${state} of ${states}` : ''}, posted ${day}`,
  foot: (board: string, day: string) => `From the board “${board}”. Sheet of ${day}.`,

  referenceCaption: (credit: string | null) => (credit ? `Reference: ${credit}` : 'Reference'),
  noReference: 'Painted without a reference photograph.',
  referenceNotShown:
    'The reference stays on the board: whoever posted it has not said that it may be taken along.',

  intention: 'What it is about',
  noIntention: 'Not written down yet.',
  conditions: 'Light and weather',
  noConditions: 'Nothing special noted.',
  conditionNames: {
    snow: 'snow',
    'against-light': 'against the light',
    'low-sun': 'low sun',
    fog: 'fog',
    'valley-mist': 'mist in the valley',
    'cloud-shadow': 'foreground in cloud shadow',
    'sun-spot': 'a spot of sun',
    'clear-air': 'very clear air',
    smoke: 'smoke or dust',
    shallow: 'a short distance',
    night: 'night',
  } satisfies Record<Condition, string>,

  photo: (grade: Grade) => `Photo of the painting: ${grade}`,
  photoUngraded: 'Photo of the painting: not graded yet',
  grades: {
    A: 'Amounts hold to a quarter of a step.',
    B: 'Amounts hold to about half a step.',
    C: 'Only their order is spoken of, no amounts, no colour.',
  } satisfies Record<Grade, string>,
  gradeReasons: (reasons: string) => `Against it: ${reasons}.`,
  ungraded: 'It is graded once planes are outlined.',

  works: 'This works',
  noWorks: 'What works is named once the planes are measured. Until then: say one thing yourself.',

  cards: 'What to try, in this order',
  check: 'To check',
  headline: (where: string, what: string, colon: boolean) => `${where}${colon ? ': ' : ', '}${what}`,
  noCards: {
    measured: 'Nothing departs from its target by more than this photo can tell. Keep what works.',
    life: 'Painted from life: there is nothing to compare with, so nothing is asked to change.',
    pending: (sentence: string) => `No adjustments yet. ${sentence}`,
  },
  answered: {
    open: '',
    accepted: 'taken up',
    adapted: 'done another way',
    declined: 'left',
    tried: 'tried',
    done: 'done',
    carried: 'taken along to the next state',
  } satisfies Record<AnswerState, string>,
  answeredWith: (state: string, words: string) => (words ? `${state}: “${words}”` : state),

  remarks: 'Remarks on the painting',
  said: (who: string, words: string) => `${who}: ${words}`,
  states: { open: '', tried: 'tried', done: 'done', declined: 'left' } satisfies Record<MarkState, string>,
  somebody: 'Somebody',
  noRemarks: 'Nobody has marked the painting.',
  moreRemarks: (count: number) =>
    count === 1 ? 'One more remark stands on the board.' : `${count} more remarks stand on the board.`,
  drawnOnly: 'What is drawn on the painting has no words.',

  ladder: 'Ladder',
  ladderOf: 'far at the left, near at the right',
  against: {
    reference: 'The painting against the reference.',
    plan: 'The painting against the plan.',
    none: 'The painting’s own values.',
  } satisfies Record<MeasureDocument['target'], string>,
  target: { reference: 'reference', plan: 'plan', none: '' } satisfies Record<
    MeasureDocument['target'],
    string
  >,
  painting: 'painting',
  untrusted: 'the photo is not to be trusted here',
  noLadder: (sentence: string) => `No ladder yet. ${sentence}`,

  plan: {
    title: (board: string) => `Plan for “${board}”`,
    byline: (day: string) => `As it stood on ${day}`,
    whole: 'The photograph',
    frames: 'Frames and values',
    noFrames: 'No frame was kept: this is the whole photograph.',
    noPhotograph:
      'The photograph stays on the board: whoever posted it has not said that it may be taken along.',
    moreFrames: (count: number) =>
      count === 1
        ? 'One more frame stands on the plan page.'
        : `${count} more frames stand on the plan page.`,
    format: (format: string) => (format === 'free' ? 'free format' : format),
    canvas: (format: string, canvas: string) => `${format}, canvas ${canvas}`,
    values: (count: number, settled: boolean) =>
      `${count === 2 ? 'two' : count === 3 ? 'three' : count === 4 ? 'four' : 'five'} values${settled ? '' : ', not settled yet'}`,
    ladder: 'Planned ladder',
    noLadder: 'No ladder was planned yet. Plan one on the plan page, from the planes of the photograph.',
    air: 'The air',
    photographsAir: 'The photograph’s own air.',
    airWords: (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`,
    steps: 'From plane to plane',
    key: { target: 'photograph', painting: 'planned' },
    against: 'What the planes are meant to be.',
    same: 'about the same value',
    darker: (amount: string) => `${amount} darker`,
    lighter: (amount: string) => `${amount} lighter`,
    stronger: 'stronger',
    greyer: 'greyer',
    warmer: 'warmer',
    cooler: 'cooler',
    step: (far: number, near: number, words: string) => `${far} to ${near}: ${words}`,
  },

  /** Stands for letters that the typeface of the sheet does not have. */
  noLetters: '[…]',
  missingLetters: 'Where […] stands, letters are not in the typeface of the sheet; the board shows them.',
} as const;

/** `29 November 2026`. @param day ISO 8601, or 'YYYY-MM-DD'. In UTC, so that a sheet does not depend on a clock's place. */
export function dayInWords(day: string): string {
  return new Intl.DateTimeFormat('en-GB', {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  }).format(new Date(day.length === 10 ? `${day}T00:00:00Z` : day));
}
