/** Every word of the looking tools: ways of looking, values, patches, guessing, the check of the screen. Pure. */

import { STEP_L, stepsInWords } from '#server/core/look/nine-steps.ts';
import type { ValueZone } from '#server/core/look/tendency.ts';
import { figure } from '../figures.ts';
import { lookShownWords } from './look-shown.ts';

/** Steps to the next quarter, in words. */
const about = (steps: number) => stepsInWords(steps * STEP_L, 0.25);

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export const lookWords = {
  ...lookShownWords,
  tools: { patch: 'Patch', guess: 'Guess first' },
  toLadder: 'Show the ladder',
  unavailable: 'The small copy of this picture could not be fetched. Try again in a moment.',

  keys: {
    patch: 'take patches of colour',
    guess: 'guess first: a value before it is shown',
    squint: 'squint: see with half-closed eyes',
    values: 'the pictures in a few values',
    two: 'in two values',
    three: 'in three values',
    four: 'in four values',
    five: 'in five values',
    nine: 'nine steps beside the pictures',
    mirror: 'mirror the pictures',
    half: 'half size',
    ways: 'ways of looking',
  },

  ways: {
    title: 'Ways of looking',
    groups: { less: 'See less', anew: 'See it anew', stand: 'How they stand', eye: 'For the eye itself' },
    squint: ['Squint', 'Half-closed eyes: small things go, big shapes stay.'],
    grey: ['Grey', 'Value alone, colour taken out at its true lightness.'],
    values: ['Values', 'Two to five values, and how much of the picture each takes.'],
    nine: ['Nine steps', 'An even grey scale beside each picture, to compare by eye.'],
    mirror: ['Mirror', 'Left and right changed over: what leans shows.'],
    half: ['Half size', 'As if you had stepped back.'],
    over: ['One over the other', 'With an edge to pull between them.'],
    guess: ['Guess first', 'Guess a value before it is shown.'],
    check: ['Check this screen', 'Does it tell the darkest and lightest greys apart?'],
    surround: 'The grey round the pictures',
    closed: 'How far the eyes are closed',
    closedNames: ['a little', 'half', 'well', 'nearly shut'],
  },

  values: {
    title: 'Values',
    number: 'How many values',
    cuts: 'Where they are cut',
    own: 'Each picture at its own',
    same: 'Both at the same',
    again: 'Cut afresh',
    how: 'Pull a cut, or move it with the arrow keys. The bars show how much of each picture a value takes.',
    squint: 'Squint as well, and small spots join the big shapes.',
    cut: (picture: string, lower: string, upper: string) => `${picture}: cut between ${lower} and ${upper}`,
    cutAt: (lightness: number) => `value ${figure(lightness / 10, 1)}`,
    both: 'Both pictures',
    shares: (picture: string) => `${picture}, dark to light`,
    names: {
      2: ['dark', 'light'],
      3: ['dark', 'middle', 'light'],
      4: ['dark', 'half-dark', 'half-light', 'light'],
      5: ['dark', 'half-dark', 'middle', 'half-light', 'light'],
    } as const,
    waiting: 'Looking …',
    note: 'Starting cuts part the picture into groups that are most alike within and least alike between (Otsu, 1979).',
    unlit:
      'The painting’s photo has no card in it: its values may sit a step too high or too low, so cut each picture at its own.',
  },

  patch: {
    title: 'Two patches',
    keys: 'Arrow keys move the cross, space or Enter takes a patch.',
    how: 'Tap a picture to take a patch. The next one stands beside it.',
    names: ['A', 'B'] as const,
    take: (name: string) => `Take ${name} anew`,
    taking: (name: string) => `The next tap takes ${name}`,
    empty: 'not taken yet',
    clear: 'Start again',
    where: (picture: string, plane: string | null) => capital(plane ? `${picture}, ${plane}` : picture),
    sides: { reference: 'reference', painting: 'painting' },
    value: 'value',
    bound: { blown: 'at least', crushed: 'at most' },
    unknown: 'The light of this photo is not known (grade C), so it has no figure.',
    uncorrected:
      'Its photo has no grey card in it: words speak of order only. Mark a grey or white card under “Square up”, and there will be figures.',
    graded: (grade: string) =>
      `The painting’s photo has grade ${grade}; behind ± stands how far it may be off.`,
    second: (words: readonly string[]) => {
      const [value = '', ...colour] = words;
      const rest = colour.length > 0 ? `, ${colour.join(', ')}` : '';
      if (value.startsWith('too near')) return `A and B are ${value}${rest}.`;
      return value.startsWith('about') ? `B has ${value} as A${rest}.` : `B is ${value} than A${rest}.`;
    },
    difference: { lightness: 'value', chroma: 'chroma', warmCool: 'warm–cool', dE00: 'difference' },
    units: { steps: 'steps', chroma: 'of chroma', dE00: 'ΔE00' },
    caption: 'From A to B',
  },

  guess: {
    title: 'Guess first',
    keys: 'Arrow keys move the cross, space or Enter chooses the spot.',
    how: 'Choose a spot on a picture, or a plane. Guess its value, 0 black to 10 white, then see it.',
    any: 'Choose one for me',
    planesOf: { reference: 'Planes of the reference', painting: 'Planes of the painting' },
    about: (side: string, plane: string | null) =>
      plane ? `${plane}, the whole plane, on the ${side}` : `The marked spot on the ${side}`,
    slider: 'Your guess of its value, 0 black to 10 white',
    show: 'Show it',
    next: 'Another one',
    guessed: 'your guess',
    shown: 'its value',
    asSeen: 'The value is the one this screen shows, whatever the photo’s light was.',
    told: (guessed: number, shown: number) => {
      const error = guessed - shown;
      const start = `You said ${figure(guessed, 1)}, it is ${figure(shown, 1)}`;
      return Math.abs(error) < 0.25
        ? `${start}: as near as an eye comes.`
        : `${start}: seen about ${about(error)} too ${error < 0 ? 'dark' : 'light'}.`;
    },
    tendencyTitle: 'How your eye leans',
    tendency: (zone: string, lean: number, miss: number) =>
      Math.abs(lean) < 0.25
        ? `You see ${zone} about right, mostly to within ${about(miss)}.`
        : `You tend to see ${zone} about ${about(lean)} too ${lean < 0 ? 'dark' : 'light'}.`,
    tooFew: 'After a few guesses it says here which way your eye leans.',
    counted: (count: number) => (count === 1 ? 'One guess so far.' : `${count} guesses so far.`),
    kept: 'Kept in this browser only, for yourself. Nobody else sees it.',
    forget: 'Forget my guesses',
    forgotten: 'Forgotten.',
    zones: { darks: 'darks', middles: 'middles', lights: 'lights' } satisfies Record<ValueZone, string>,
  },

  check: {
    title: 'Check this screen',
    lead: 'In each field one square is half a step apart from the other three. Which one? Sit as you usually do.',
    dark: 'The two darkest greys',
    light: 'The two lightest greys',
    squares: ['first', 'second', 'third', 'fourth'],
    square: (name: string) => `the ${name} square`,
    none: 'I see no difference',
    good: 'This screen tells both ends apart. You can trust it with darks and lights.',
    lostDark: 'The darks run together here.',
    lostLight: 'The lights run together here.',
    todo: [
      'Turn the screen’s brightness to about that of a sheet of paper beside it, and turn off anything that changes it by itself.',
      'Turn off warm evening colours and any “vivid” or “reading” picture mode.',
      'Keep lamps and windows from shining on the screen, and look at it straight on.',
      'Set contrast back to where it was when new; on a separate screen, raise black level a little until the darks part.',
    ],
    measures: 'The figures do not depend on it: they are measured from the pictures, not from this screen.',
    again: 'Check again',
    done: 'Done',
    kept: 'Remembered in this browser only.',
    state: {
      none: 'Not checked yet.',
      good: (when: string) => `Checked ${when}: both ends are told apart.`,
      lost: (when: string) => `Checked ${when}: an end of the scale runs together.`,
    },
  },
} as const;
