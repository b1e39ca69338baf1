/**
 * Cards that leave out how paint is mixed or layered, where the school setting asks for it: what to do and how to see
 * whether it worked stay.
 *
 * In the flow: measured document -> [without-mixing] -> handler, instant preview. Pure.
 */
import type { AdjustmentCard, CardAction } from '../contract/critique.ts';
import { say } from '../say/say.ts';

/** Said in place of a hint that mixes or layers. */
export const OWN_WAY = say`Try it in your own way, a little at a time, and ask your teacher which paint to use.`;

/** @param document Anything that carries cards. @returns The same where no card mixes. */
export function withoutMixing<Document extends { cards?: AdjustmentCard[] }>(document: Document): Document {
  const { cards = [] } = document;
  if (!cards.some(({ healthLine }) => healthLine)) return document;
  return {
    ...document,
    cards: cards.map((card) => ({ ...card, actions: card.actions.map(plain), healthLine: false })),
  };
}

function plain(action: CardAction): CardAction {
  return action.mixes ? { ...action, how: OWN_WAY, mixes: false } : action;
}
