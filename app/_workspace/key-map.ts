/**
 * Which letter does what on the board screen. A letter alone, and only while no text is being written.
 *
 * In the flow: key map -> use-board-keys and the list of keys. Pure.
 */

/** Shown as written here; matched without regard to case. */
export const LETTER_KEYS = {
  look: 'L',
  outline: 'O',
  find: 'F',
  post: 'C',
  mark: 'M',
  draw: 'D',
  arrow: 'E',
  loop: 'J',
  text: 'I',
  sample: 'Y',
  sketch: 'Z',
  sketches: '1',
  photo: 'Q',
  patch: 'P',
  guess: 'U',
  squint: 'S',
  grey: 'G',
  values: 'V',
  two: '2',
  three: '3',
  four: '4',
  five: '5',
  nine: '9',
  mirror: 'R',
  half: 'H',
  ways: 'W',
  lines: 'N',
  marks: 'K',
  surround: 'B',
  arrange: 'A',
  side: 'X',
  table: 'T',
  help: '?',
} as const satisfies Record<string, string>;

export type LetterAction = keyof typeof LETTER_KEYS;

/** The action of a key press, or null. @param key As in `KeyboardEvent.key`. */
export function letterAction(key: string): LetterAction | null {
  const entries = Object.entries(LETTER_KEYS) as [LetterAction, string][]; // Object.entries widens the keys.
  return entries.find(([, letter]) => letter === key.toUpperCase())?.[0] ?? null;
}
