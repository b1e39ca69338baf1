/**
 * Every word of the adjustment cards, the readings, what works and the focus.
 *
 * Plain, kind, exact: "try", never "wrong", nothing that ranks. The sentences of the readings come from the server's
 * own rules. Pure.
 */

import type { ReadingForm } from '#server/core/contract/critique.ts';
import type { MeasureDocument } from '#server/core/contract/measures.ts';

/** `done` and `tried` come with the next state of a painting. */
type Given = 'accepted' | 'adapted' | 'declined' | 'tried' | 'done' | 'carried';

export const critiqueWords = {
  cards: {
    title: 'Adjustments',
    first: 'First',
    next: 'Then',
    aside: (count: number) => (count === 1 ? 'One more card' : `${count} more cards`),
    empty: 'Nothing departs from the reference by more than this photo can tell. Look at what works.',
    emptyLife: 'Painted from life: there is nothing to compare with, so only checks are listed.',
    noPlanes: 'Once the planes are outlined and measured, what to try first stands here.',
    noPlanesLook: 'Once the planes are outlined, what to try first stands here.',
    coming: 'Measuring the planes …',
    again: 'being measured again',
    checkLabel: 'To check',
    why: 'Why',
    /** What the rules call "no source" is what painters do and teach, without a book that is cited for it. */
    source: (source: string) =>
      source === 'common practice, no source'
        ? 'This is common practice among painters; no book is cited for it.'
        : `Source: ${source}.`,
    changed: 'In the teacher’s words',
    own: 'From the teacher',
    unmeasured: 'The figures no longer say this; the teacher’s words stay.',
    dropped: 'Left out by the teacher',
    headline: (where: string, what: string) => `${where}: ${what}`,
    place: (where: string, what: string) => `${where}, ${what}`,
  },

  answer: {
    label: (where: string) => `Answer to ${where}`,
    accept: 'I’ll do this',
    adapt: 'Another way',
    decline: 'Leave it as it is',
    meant: 'I meant it',
    takeBack: 'Take it back',
    change: 'Change the words',
    takeUp: 'Take it up again',
    keep: 'Keep',
    askAdapt: 'How will you do it?',
    askDecline: 'Why do you leave it? (if you like)',
    askMeant: 'What did you want with it? (if you like)',
    forPainter: (name: string) => `The answer is ${name}’s; you can give it for them.`,
    mine: {
      accepted: 'You will do this.',
      adapted: 'You do it another way.',
      declined: 'You leave it.',
      tried: 'You have tried it.',
      done: 'You have done it.',
      carried: 'You take it along to the next state.',
    } satisfies Record<Given, string>,
    theirs: {
      accepted: (name: string) => `${name} will do this.`,
      adapted: (name: string) => `${name} does it another way.`,
      declined: (name: string) => `${name} leaves it.`,
      tried: (name: string) => `${name} has tried it.`,
      done: (name: string) => `${name} has done it.`,
      carried: (name: string) => `${name} takes it along to the next state.`,
    } satisfies Record<Given, (name: string) => string>,
    lapsed: 'Answered before; now it says something else.',
    quote: (words: string) => `“${words}”`,
  },

  teacher: {
    label: (where: string) => `Change the card of ${where}`,
    rewrite: 'Rewrite',
    up: 'Move up',
    down: 'Move down',
    drop: 'Leave this card out',
    bringBack: 'Bring back',
    asMeasured: 'Back to as measured',
    remove: 'Delete',
    add: 'Write a card',
    keep: 'Keep',
    place: 'Where',
    whole: 'The whole picture',
    parts: { what: 'What to do', how: 'How', why: 'Why', check: 'How to check' },
    back: 'An empty field goes back to what was measured.',
    whatHint: 'For example: lights: bring down a touch',
  },

  readings: {
    title: (count: number) => (count === 1 ? 'The one reading' : `All ${count} readings`),
    none: 'No reading speaks on this picture.',
    forms: { finding: 'Departs', question: 'A question', check: 'To check' } satisfies Record<
      ReadingForm,
      string
    >,
    photo: 'The photo of the painting',
    quiet: 'Quiet',
    meant: 'Meant',
    meantWhy: (reason: string) => `Meant: “${reason}”`,
    notMeant: 'Not meant after all',
    withheld:
      'No grey or white tells this photo’s light, so amounts are not said and colour is withheld. A grey or white card, marked on the photo, would change that.',
    squareUp: 'Square up the photo',
  },

  works: {
    title: 'What works',
    nothing: {
      reference: 'No plane could be compared yet.',
      plan: 'No plane could be compared yet.',
      none: 'No plane could be measured yet.',
    } satisfies Record<MeasureDocument['target'], string>,
    also: 'Also seen',
  },

  focus: {
    mark: 'Mark the focus on the painting',
    none: 'No focus is marked.',
    at: (place: string) => `The focus lies in the ${place} of the painting.`,
    move: 'Move it',
    remove: 'Take it away',
    how: 'Point at the place on the painting where the eye should come to rest.',
    keys: 'Arrow keys move the cross, space or Enter marks the focus there.',
    onlyPainting: 'The focus is marked on the painting, not on the reference.',
    onlyLook: 'The painter of this picture, the teacher and the host mark its focus.',
    notNow: 'Not now',
  },

  said: {
    accepted: (where: string) => `${where}: taken on.`,
    adapted: (where: string, words: string) => `${where}: another way. ${words}`,
    declined: (where: string, words: string) => `${where}: left. ${words}`,
    tried: (where: string) => `${where}: tried.`,
    done: (where: string) => `${where}: done.`,
    carried: (where: string) => `${where}: goes along to the next state.`,
    takenBack: (where: string) => `${where}: the answer was taken back.`,
    changed: (where: string, what: string) => `The card of ${where} was changed: ${what}`,
    left: (where: string) => `The card of ${where} was left out.`,
    gone: 'A card was taken away.',
    meant: 'A reading was marked as meant.',
    notMeant: 'A reading speaks again.',
  },
} as const;
