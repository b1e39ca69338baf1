/**
 * Phrases with gaps: `{plane}`, `{part}`, `{amount}` are filled from what the words are about, where that is known.
 *
 * In the flow: phrase + mark's plane and the measured card there -> [slots] -> field. Pure.
 */

import { LANGUAGE } from '../say/language.ts';

export const SLOTS = ['plane', 'part', 'amount'] as const;
export type Slot = (typeof SLOTS)[number];
export type SlotWords = Partial<Record<Slot, string>>;

/** The gaps as the house writes them; the English ones are understood in every house. */
const NAMES: Readonly<Record<string, Slot>> = {
  plane: 'plane',
  part: 'part',
  amount: 'amount',
  ...(LANGUAGE === 'de' ? ({ Ebene: 'plane', Teil: 'part', Maß: 'amount' } as const) : {}),
};
const GAP = new RegExp(`\\{(${Object.keys(NAMES).join('|')})\\}`, 'g');

/** What came of a phrase. `gap` is where the first slot still stands that nothing filled, from and to. */
export interface Filled {
  words: string;
  gap: [from: number, to: number] | null;
}

/** A slot that is not known stays as it is written; one at the head of the phrase is given a capital. */
export function fillSlots(phrase: string, known: SlotWords): Filled {
  const words = phrase.replace(GAP, (gap, name: string, at: number) => {
    const slot = NAMES[name];
    const filled = slot && known[slot];
    if (!filled) return gap;
    return at === 0 ? filled.charAt(0).toUpperCase() + filled.slice(1) : filled;
  });
  const left = [...words.matchAll(GAP)][0];
  return { words, gap: left ? [left.index, left.index + left[0].length] : null };
}

/**
 * Puts a phrase into a text at the caret, apart from the words before and after it.
 *
 * @param from, to What is chosen in the text and is replaced. @returns The new text and what is chosen in it then.
 */
export function insertAt(text: string, from: number, to: number, { words, gap }: Filled) {
  const head = text.slice(0, from);
  const tail = text.slice(to);
  const before = head !== '' && !/\s$/.test(head) ? ' ' : '';
  const after = tail !== '' && !/^[\s.,;:!?)]/.test(tail) ? ' ' : '';
  const start = head.length + before.length;
  const end = start + words.length;
  return {
    text: head + before + words + after + tail,
    chosen: gap ? ([start + gap[0], start + gap[1]] as const) : ([end, end] as const),
  };
}
