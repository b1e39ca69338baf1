import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LiveOrder } from '#server/core/live/layout.ts';
import { orderBetween, ordersFor } from '#server/core/live/order.ts';

describe('fractional order', () => {
  test('a thousand moves to any places keep every key between its neighbours and well formed', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(), { minLength: 1, maxLength: 120 }), (places) => {
        const keys: string[] = [];
        for (const place of places) {
          const at = place % (keys.length + 1);
          const key = orderBetween(keys[at - 1] ?? null, keys[at] ?? null);
          expect(key).not.toBeNull();
          expect(LiveOrder.safeParse(key).success).toBe(true);
          keys.splice(at, 0, String(key));
        }
        expect([...keys].sort()).toEqual(keys);
        expect(new Set(keys).size).toBe(keys.length);
      }),
    );
  });

  test('nothing lies between equal or reversed keys', () => {
    expect(orderBetween('V', 'V')).toBeNull();
    expect(orderBetween('W', 'V')).toBeNull();
  });

  test.each([1, 2, 12, 24, 60])('%i fresh keys rise, parse and leave room between them', (count) => {
    const keys = ordersFor(count);
    expect([...new Set(keys)].sort()).toEqual(keys);
    expect(keys).toHaveLength(count);
    for (const [at, key] of keys.entries()) {
      expect(LiveOrder.safeParse(key).success).toBe(true);
      expect(orderBetween(key, keys[at + 1] ?? null)).not.toBeNull();
    }
  });
});
