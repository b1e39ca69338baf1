/**
 * Every word that stands on a sheet and is nobody's own. In the flow: [words] -> access/sheet, server/sheet. Pure.
 *
 * They stand here and not among the words of the screens, for the page is made on the server.
 */
import type { MeasureDocument } from '../contract/measures.ts';
import type { Condition } from '../contract/setup.ts';
import type { AnswerState, MarkState } from '../live/layout.ts';
import { formatInWords } from '../plan/crops/formats.ts';
import { LOCALE } from '../say/language.ts';
import { say } from '../say/say.ts';

type Grade = 'A' | 'B' | 'C';

function valuesInWords(count: number): string {
  if (count === 2) return say`two values`;
  if (count === 3) return say`three values`;
  return count === 4 ? say`four values` : say`five values`;
}

export const sheetWords = {
  untitled: (painter: string) => say`Painting by ${painter}`,
  byline: (painter: string, state: number, states: number, day: string) =>
    states > 1 ? say`${painter}, state ${state} of ${states}, posted ${day}` : say`${painter}, posted ${day}`,
  foot: (board: string, day: string) => say`From the board “${board}”. Sheet of ${day}.`,

  referenceCaption: (credit: string | null) => (credit ? say`Reference: ${credit}` : say`Reference`),
  noReference: say`Painted without a reference photograph.`,
  referenceNotShown: say`The reference stays on the board: whoever posted it has not said that it may be taken along.`,

  intention: say`What it is about`,
  noIntention: say`Not written down yet.`,
  conditions: say`Light and weather`,
  noConditions: say`Nothing special noted.`,
  conditionNames: {
    snow: say`snow`,
    'against-light': say`against the light`,
    'low-sun': say`low sun`,
    fog: say`fog`,
    'valley-mist': say`mist in the valley`,
    'cloud-shadow': say`foreground in cloud shadow`,
    'sun-spot': say`a spot of sun`,
    'clear-air': say`very clear air`,
    smoke: say`smoke or dust`,
    shallow: say`a short distance`,
    night: say`night`,
  } satisfies Record<Condition, string>,

  photo: (grade: Grade) => say`Photo of the painting: ${grade}`,
  photoUngraded: say`Photo of the painting: not graded yet`,
  grades: {
    A: say`Amounts hold to a quarter of a step.`,
    B: say`Amounts hold to about half a step.`,
    C: say`Only their order is spoken of, no amounts, no colour.`,
  } satisfies Record<Grade, string>,
  gradeReasons: (reasons: string) => say`Against it: ${reasons}.`,
  ungraded: say`It is graded once planes are outlined.`,

  works: say`This works`,
  noWorks: say`What works is named once the planes are measured. Until then: say one thing yourself.`,

  cards: say`What to try, in this order`,
  check: say`To check`,
  headline: (where: string, what: string, colon: boolean) => `${where}${colon ? ': ' : ', '}${what}`,
  noCards: {
    measured: say`Nothing departs from its target by more than this photo can tell. Keep what works.`,
    life: say`Painted from life: there is nothing to compare with, so nothing is asked to change.`,
    pending: (sentence: string) => say`No adjustments yet. ${sentence}`,
  },
  answered: {
    open: '',
    accepted: say`taken up`,
    adapted: say`done another way`,
    declined: say`left`,
    tried: say`tried`,
    done: say`done`,
    carried: say`taken along to the next state`,
  } satisfies Record<AnswerState, string>,
  answeredWith: (state: string, words: string) => (words ? say`${state}: “${words}”` : state),

  remarks: say`Remarks on the painting`,
  said: (who: string, words: string) => `${who}: ${words}`,
  states: { open: '', tried: say`tried`, done: say`done`, declined: say`left` } satisfies Record<
    MarkState,
    string
  >,
  somebody: say`Somebody`,
  noRemarks: say`Nobody has marked the painting.`,
  moreRemarks: (count: number) =>
    count === 1 ? say`One more remark stands on the board.` : say`${count} more remarks stand on the board.`,
  drawnOnly: say`What is drawn on the painting has no words.`,

  ladder: say`Ladder`,
  ladderOf: say`far at the left, near at the right`,
  against: {
    reference: say`The painting against the reference.`,
    plan: say`The painting against the plan.`,
    none: say`The painting’s own values.`,
  } satisfies Record<MeasureDocument['target'], string>,
  target: { reference: say`reference`, plan: say`plan`, none: '' } satisfies Record<
    MeasureDocument['target'],
    string
  >,
  painting: say`painting`,
  untrusted: say`the photo is not to be trusted here`,
  noLadder: (sentence: string) => say`No ladder yet. ${sentence}`,

  plan: {
    title: (board: string) => say`Plan for “${board}”`,
    byline: (day: string) => say`As it stood on ${day}`,
    whole: say`The photograph`,
    frames: say`Frames and values`,
    noFrames: say`No frame was kept: this is the whole photograph.`,
    noPhotograph: say`The photograph stays on the board: whoever posted it has not said that it may be taken along.`,
    moreFrames: (count: number) =>
      count === 1
        ? say`One more frame stands on the plan page.`
        : say`${count} more frames stand on the plan page.`,
    format: (format: string) => (format === 'free' ? say`free format` : formatInWords(format)),
    canvas: (format: string, canvas: string) => say`${format}, canvas ${formatInWords(canvas)}`,
    values: (count: number, settled: boolean) =>
      settled ? valuesInWords(count) : say`${valuesInWords(count)}, not settled yet`,
    ladder: say`Planned ladder`,
    noLadder: say`No ladder was planned yet. Plan one on the plan page, from the planes of the photograph.`,
    air: say`The air`,
    photographsAir: say`The photograph’s own air.`,
    airWords: (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`,
    steps: say`From plane to plane`,
    key: { target: say`photograph`, painting: say`planned` },
    against: say`What the planes are meant to be.`,
    same: say`about the same value`,
    darker: (amount: string) => say`${amount} darker`,
    lighter: (amount: string) => say`${amount} lighter`,
    stronger: say`stronger`,
    greyer: say`greyer`,
    warmer: say`warmer`,
    cooler: say`cooler`,
    step: (far: number, near: number, words: string) => say`${far} to ${near}: ${words}`,
  },

  /** Stands for letters that the typeface of the sheet does not have. */
  noLetters: '[…]',
  missingLetters: say`Where […] stands, letters are not in the typeface of the sheet; the board shows them.`,
} as const;

/** `29 November 2026`. @param day ISO 8601, or 'YYYY-MM-DD'. In UTC, so that a sheet does not depend on a clock's place. */
export function dayInWords(day: string): string {
  return new Intl.DateTimeFormat(LOCALE, {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  }).format(new Date(day.length === 10 ? `${day}T00:00:00Z` : day));
}
