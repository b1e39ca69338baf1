/**
 * Plates made ready for measuring, kept while a painter works, so that moving an outline never decodes again.
 *
 * In the flow: measure-picture ↔ [prepared-cache]. Lives in the worker. Pure.
 */
import type { Prepared } from '../core/measure/prepare.ts';

/** About seven plates of 2048 px at 45 MB each. */
const MOST_BYTES = 320_000_000;

export interface PreparedCache {
  /** The kept one, or what `make` yields; two callers with one key share one making. */
  get(key: string, make: () => Promise<Prepared>): Promise<Prepared>;
}

/** @param mostBytes What all kept plates may take together; the last used stay, and one always does. */
export function createPreparedCache(mostBytes = MOST_BYTES): PreparedCache {
  const kept = new Map<string, { making: Promise<Prepared>; bytes: number }>();

  function trim(): void {
    let total = 0;
    for (const { bytes } of kept.values()) total += bytes;
    for (const [key, { bytes }] of kept) {
      if (total <= mostBytes || kept.size === 1) return;
      kept.delete(key);
      total -= bytes;
    }
  }

  return {
    async get(key, make) {
      const entry = kept.get(key) ?? { making: make(), bytes: 0 };
      kept.delete(key);
      kept.set(key, entry);
      try {
        const prepared = await entry.making;
        entry.bytes = bytesOf(prepared);
        trim();
        return prepared;
      } catch (thrown) {
        kept.delete(key);
        throw thrown;
      }
    },
  };
}

/** Bytes of all typed arrays in it, however deep. */
function bytesOf(value: unknown): number {
  if (ArrayBuffer.isView(value)) return value.byteLength;
  if (typeof value !== 'object' || value === null) return 0;
  return Object.values(value).reduce((total: number, part) => total + bytesOf(part), 0);
}
