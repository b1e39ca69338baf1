/**
 * Moving a card up or down among the cards, by a fractional index.
 *
 * In the flow: teacher's hand -> [card-order] -> `cards` of the painting's room. Cards with an order stand before
 * those by rank, so those that end up above the moved one get an order too. Pure.
 */
import { orderBetween } from './order.ts';

export interface Orderable {
  key: string;
  order: string | null;
}

/**
 * @param cards As they stand, first to last.
 * @param toIndex Place of the moved card afterwards; kept inside the list.
 * @returns Key of a card → its new order; empty when nothing moves or nothing lies between two equal orders.
 */
export function ordersToMove(cards: readonly Orderable[], key: string, toIndex: number): Map<string, string> {
  const moved = cards.find((card) => card.key === key);
  const at = Math.max(0, Math.min(cards.length - 1, toIndex));
  if (!moved || cards[at] === moved) return new Map();
  const rest = cards.filter((card) => card !== moved);
  const orders = new Map<string, string>();
  let before: string | null = null;
  for (const card of rest.slice(0, at)) {
    if (card.order === null) {
      const order = orderBetween(before, null);
      if (order === null) return new Map();
      orders.set(card.key, order);
    }
    before = card.order ?? orders.get(card.key) ?? null;
  }
  const order = orderBetween(before, rest[at]?.order ?? null);
  return order === null ? new Map() : orders.set(key, order);
}

/** An order before all others: a card that a teacher adds stands first. @param cards In any order. */
export function orderBeforeAll(cards: readonly Orderable[]): string | null {
  const orders = cards.flatMap(({ order }) => (order === null ? [] : [order]));
  return orderBetween(null, orders.sort()[0] ?? null);
}
