/**
 * Rows about hostile clients in full number: what the test sends shortened. IO: a store and a server of this process.
 */
import { closeStage, openStage } from '#tests/access/cast.ts';
import { type FuzzReport, fuzzForbidden, fuzzMalformed } from '#tests/live/fuzz.ts';
import type { BenchRow } from './row.ts';

const SEED = 20_261_125;

/** A thousand valid but forbidden updates, ten thousand malformed frames. */
export async function fuzzRows(): Promise<BenchRow[]> {
  const stage = await openStage();
  try {
    return [
      fuzzRow('valid but forbidden updates', await fuzzForbidden(stage, 1000, SEED)),
      fuzzRow('malformed frames', await fuzzMalformed(stage, 10_000, SEED)),
    ];
  } finally {
    await closeStage(stage);
  }
}

function fuzzRow(name: string, { sent, taken, heard, disturbed, codes }: FuzzReport): BenchRow {
  return {
    name: `${sent.toLocaleString('en')} ${name}`,
    measured: `${taken.length} taken, ${heard} heard by others, ${disturbed.length} disturbed`,
    yardstick: `closed with ${[...codes.keys()].sort().join(', ')}`,
    ratio: '',
    target: '0, 0, 0',
    met: taken.length + heard + disturbed.length === 0,
  };
}
