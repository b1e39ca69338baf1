/** What each key of the board does, in words. In the flow: [key-words] -> the list of keys. Pure. */
import { words } from '#app/_words/en.ts';
import { lookWords } from '#app/_words/en-look.ts';
import { markWords } from '#app/_words/en-marks.ts';
import { proposeWords } from '#app/_words/en-propose.ts';
import type { LetterAction } from './key-map.ts';

/** What each key does, for the list of keys. */
export const KEY_WORDS: Record<LetterAction, string> = {
  ...words.keys,
  ...markWords.keys,
  ...lookWords.keys,
  ...proposeWords.keyList,
};
