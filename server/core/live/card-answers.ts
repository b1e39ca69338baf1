/**
 * What a teacher changed on adjustment cards, and what the painter answered: the `painting/<pictureId>` room.
 *
 * In the flow: measured cards + these -> `show-cards` -> talk. Readers leave out what does not parse. Pure apart from
 * the document given.
 */
import type * as Y from 'yjs';
import { z } from 'zod/mini';
import { edit, putEntry, readEntries } from './document.ts';
import { LiveAnswer, LiveCard, LiveCardKey, LiveId } from './layout.ts';

/** Key of a card (`plane-<id>`, `picture`, `photo`, `own-<id>`) → its changed parts. */
export function readCards(doc: Y.Doc): Map<string, LiveCard> {
  const cards = new Map<string, LiveCard>();
  for (const [flat, value] of readEntries(doc, 'cards', LiveCardKey, z.unknown())) {
    const dot = flat.indexOf('.');
    const [card, part] = [flat.slice(0, dot), flat.slice(dot + 1)];
    const parsed = LiveCard.safeParse({ [part]: value });
    if (parsed.success) cards.set(card, { ...cards.get(card), ...parsed.data });
  }
  return cards;
}

/** Sets parts of a card; null takes a part back to what was measured. One step. */
export function changeCard(
  doc: Y.Doc,
  card: string,
  change: { [P in keyof LiveCard]?: LiveCard[P] | null },
): void {
  edit(doc, () => {
    for (const [part, value] of Object.entries(change))
      putEntry(doc, 'cards', `${card}.${part}`, value ?? null);
  });
}

/** Puts cards into a new order. @param orders Key of a card → its order. One step. */
export function orderCards(doc: Y.Doc, orders: ReadonlyMap<string, string>): void {
  edit(doc, () => {
    for (const [card, order] of orders) putEntry(doc, 'cards', `${card}.order`, order);
  });
}

/** Takes away everything that was said on a card: a measured one is as measured again, one's own is gone. */
export function clearCard(doc: Y.Doc, card: string): void {
  edit(doc, () => {
    for (const flat of [...doc.getMap('cards').keys()]) {
      if (flat.startsWith(`${card}.`)) putEntry(doc, 'cards', flat, null);
    }
  });
}

/** Key of a card or id of a mark → the painter's answer. */
export function readAnswers(doc: Y.Doc): Map<string, LiveAnswer> {
  return readEntries(doc, 'answers', LiveId, LiveAnswer);
}

/** @param answer Null = not answered. */
export function setAnswer(doc: Y.Doc, key: string, answer: LiveAnswer | null): void {
  putEntry(doc, 'answers', key, answer);
}
