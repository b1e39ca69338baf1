/**
 * Every word of marks and remarks: kinds, how each is made, states, nods, layers. Whole sentences; painters' words. Pure.
 */
import type { MarkKind, MarkState } from '#server/core/live/layout.ts';

type Kind = Exclude<MarkKind, 'reply'>;

/** "Tove", "Tove and Pelle", "Tove, Pelle and Mina". */
function named(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

export const markWords = {
  kind: 'What the mark is',
  kinds: {
    pin: 'Pin',
    stroke: 'Line',
    arrow: 'Arrow',
    outline: 'Loop',
    text: 'Words',
    patch: 'Colour',
    sketch: 'Sketch over',
  } satisfies Record<Kind, string>,
  /** What a mark is called when it is spoken of. */
  called: {
    pin: 'Remark',
    stroke: 'Line',
    arrow: 'Arrow',
    outline: 'Loop',
    text: 'Words',
    patch: 'Colour',
    sketch: 'Sketch',
  } satisfies Record<Kind, string>,
  /** In the place of words where a mark has none. */
  wordless: {
    pin: '',
    stroke: 'a line',
    arrow: 'an arrow',
    outline: 'a loop',
    text: '',
    patch: 'a colour',
    sketch: 'a sketch',
  } satisfies Record<Kind, string>,
  how: {
    pin: 'Press where you mean it, then say what you see.',
    stroke: 'Draw on the picture, or set points along it and finish. Your line is seen by everyone.',
    arrow: 'Draw from its tail to its head, or set both ends.',
    outline: 'Draw round what you mean, or set points round it and finish.',
    text: 'Press where the words should stand, then write them.',
    patch: 'Press on a colour. It is shown to everyone with its reading.',
    sketch: 'Paint what you would try. It lies over the painting and changes nothing in it.',
  } satisfies Record<Kind, string>,
  keysOf: {
    pin: 'Arrow keys move the cross, space or Enter sets a pin.',
    stroke:
      'Arrow keys move the cross, space sets a point of the line, Enter finishes it, Escape gives it up.',
    arrow: 'Arrow keys move the cross, space or Enter sets the tail and then the head.',
    outline:
      'Arrow keys move the cross, space sets a point of the loop, Enter closes it, Escape gives it up.',
    text: 'Arrow keys move the cross, space or Enter sets where the words stand.',
    patch: 'Arrow keys move the cross, space or Enter takes the colour there.',
    sketch:
      'Arrow keys move the cross, space sets a point of the stroke, Enter paints it, Escape gives it up.',
  } satisfies Record<Kind, string>,
  onlyLook: 'You may look at this board. To mark the pictures, ask its owner for a link that lets you.',
  say: { pin: 'What do you see here?', text: 'What should stand here?' },
  send: 'Say it',
  cancel: 'Not now',
  finish: 'Finish',
  back: 'Take back a point',
  giveUp: 'Give up',
  tooShort: 'A line needs two points, a loop three. Draw a little farther.',
  sayMore: 'What do you mean by it? (if you like)',
  keep: 'Keep',
  colourGone: 'The colour could not be taken just now. Try again in a moment.',

  sketch: {
    colour: 'Colour to paint with',
    take: 'From the picture',
    taking: 'Press on a colour in a picture …',
    takingKeys: 'Arrow keys move the cross, space or Enter takes the colour there, Escape leaves it.',
    grey: (value: number) => `Grey of value ${value}`,
    taken: 'The colour that was taken',
    width: 'Width',
    cover: 'Cover',
    another: 'Begin another sketch',
    allow: 'Others may sketch over this painting',
    allowed: 'Others may sketch over this painting.',
    notAllowed: (painter: string) =>
      `${painter} has not allowed sketching over this painting. Ask before you paint over somebody’s picture.`,
    ownNotAllowed: 'Sketching over this painting is off. Allow it under Remarks to sketch here yourself.',
    onlyPaintings: 'Only a painting can be sketched over, not a reference.',
    kept: 'Kept for you alone: the painter does not allow sketching over this painting now.',
  },

  patch: {
    exact: 'as the reference shows it',
    grade: (grade: 'A' | 'B') => `photo of grade ${grade}`,
    withheld: 'The photo is of grade C or not graded: its colours say nothing in figures.',
    value: (step: string) => `value ${step}`,
    lightness: (text: string) => `L* ${text}`,
    chroma: (text: string) => `chroma ${text}`,
    hue: (text: string) => `hue ${text}`,
    noHue: 'no hue to speak of',
    label: (words: string) => `Sample: ${words}`,
  },

  label: (called: string, number: number, name: string, where: string, state: string | null, text: string) =>
    `${called} ${number} by ${name}, ${where}${state ? `, ${state}` : ''}${text ? `: ${text}` : ''}`,
  onPicture: { reference: 'Marks on the reference', painting: 'Marks on the painting' },
  across: ['left', 'centre', 'right'],
  down: ['upper', 'middle', 'lower'],
  spot: (down: string, across: string) =>
    down === 'middle' && across === 'centre' ? 'in the middle' : `${down} ${across}`,
  where: (side: string, plane: string | null, spot: string) =>
    `on the ${side}, ${plane ? `${plane}, ` : ''}${spot}`,
  elsewhere: 'on a picture that is not shown',
  sides: { reference: 'reference', painting: 'painting' },

  /** Who said it first, and who brought it here from a file. */
  broughtIn: (from: string, author: string) => `${from}, brought in by ${author}`,
  states: {
    open: 'open',
    tried: 'tried',
    done: 'done',
    declined: 'declined',
  } satisfies Record<MarkState, string>,
  set: {
    open: 'Open again',
    tried: 'Tried',
    done: 'Done',
    declined: 'Decline',
  } satisfies Record<MarkState, string>,
  setLabel: (number: number) => `What became of remark ${number}`,

  nod: 'Nod',
  nodded: 'You nod',
  nodLabel: (name: string) => `Nod at what ${name} says`,
  unnodLabel: (name: string) => `Take back the nod at what ${name} says`,
  /** @param others Names. */
  agree: (self: boolean, others: readonly string[]) => {
    if (self) return others.length === 0 ? 'You agree' : `${named(['You', ...others])} agree`;
    return `${named(others)} ${others.length === 1 ? 'agrees' : 'agree'}`;
  },

  hide: 'Hide',
  unhide: 'Show again',
  hideLabel: (name: string) => `Hide what ${name} says from the others`,
  unhideLabel: (name: string) => `Show what ${name} says to all again`,
  hidden: {
    own: 'Hidden by the painter: you see it, and so do the teacher and the host.',
    others: 'Hidden: its author sees it, and so do the painter, the teacher and the host.',
  },
  plane: 'Plane',
  noPlane: 'the whole picture',

  filter: {
    open: 'Choose which remarks',
    label: 'Which remarks are shown, on this screen',
    pictures: 'Pictures',
    these: 'These pictures',
    all: 'All pictures',
    whose: 'Whose marks are shown',
    everyone: 'Everyone’s',
    noOnes: 'No one’s',
    only: 'Only',
    onlyLabel: (name: string) => `Only the marks of ${name}`,
    plane: 'Plane',
    anyPlane: 'any plane',
    noPlane: 'no plane',
    state: 'State',
    anyState: 'any state',
    sketches: 'Sketches over the painting',
    clear: 'Show all',
    none: 'No remark is as you chose. Show all, or choose otherwise.',
    nobody: 'Nobody has marked these pictures yet.',
    now: (parts: readonly string[]) => `Shown: ${parts.join(', ')}.`,
    people: (names: readonly string[]) => (names.length === 0 ? 'no one’s' : `by ${named(names)}`),
    but: (names: readonly string[]) => `everyone’s but those of ${named(names)}`,
  },

  keys: {
    mark: 'mark the pictures; again: the next kind of mark',
    draw: 'mark with a line',
    arrow: 'mark with an arrow',
    loop: 'mark with a loop',
    text: 'set words on the picture',
    sample: 'mark a colour with its reading',
    sketch: 'sketch over the painting',
    sketches: 'sketches on and off',
  },
} as const;
