/** What each key of the board does, in words. In the flow: [key-words] -> the list of keys. Pure. */

import { lookWords } from '#words/look.ts';
import { markWords } from '#words/marks.ts';
import { proposeWords } from '#words/propose.ts';
import { words } from '#words/shell.ts';
import type { LetterAction } from './key-map.ts';

/** What each key does, for the list of keys. */
export const KEY_WORDS: Record<LetterAction, string> = {
  ...words.keys,
  ...markWords.keys,
  ...lookWords.keys,
  ...proposeWords.keyList,
};
