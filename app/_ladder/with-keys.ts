/** Keys for lists whose items have names that need not be unique. Pure. */

export interface Keyed<Item> {
  /** The name, and which of its namesakes it is. */
  key: string;
  item: Item;
  /** Place in the list, from 0. */
  index: number;
}

/** @param nameOf The name of an item; two of one name get different keys, in the order of the list. */
export function withKeys<Item>(items: readonly Item[], nameOf: (item: Item) => string): Keyed<Item>[] {
  const seen = new Map<string, number>();
  return items.map((item, index) => {
    const name = nameOf(item);
    const earlier = seen.get(name) ?? 0;
    seen.set(name, earlier + 1);
    return { key: `${name} ${earlier}`, item, index };
  });
}
