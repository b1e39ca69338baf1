/**
 * Which letter does what on the board screen. A letter alone, and only while no text is being written.
 *
 * In the flow: key map -> use-board-keys and the list of keys. Pure.
 */
import type { words } from '#app/_words/en.ts';

export type KeyAction = Exclude<keyof typeof words.keys, 'title' | 'lead' | 'letters' | 'zoom' | 'pan'>;

/** Shown as written here; matched without regard to case. */
export const LETTER_KEYS = {
  look: 'L',
  outline: 'O',
  mark: 'M',
  draw: 'D',
  photo: 'Q',
  squint: 'S',
  grey: 'G',
  surround: 'B',
  lines: 'N',
  marks: 'K',
  arrange: 'A',
  side: 'X',
  table: 'T',
  help: '?',
} as const satisfies Partial<Record<KeyAction, string>>;

export type LetterAction = keyof typeof LETTER_KEYS;

/** The action of a key press, or null. @param key As in `KeyboardEvent.key`. */
export function letterAction(key: string): LetterAction | null {
  const entries = Object.entries(LETTER_KEYS) as [LetterAction, string][]; // Object.entries widens the keys.
  return entries.find(([, letter]) => letter === key.toUpperCase())?.[0] ?? null;
}
