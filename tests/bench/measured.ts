/** What the rows of the bench share: a row that may fail, medians, ratios. */
import type { BenchRow } from './row.ts';

/** Each thing is measured this often, with its yardstick in turn; the median counts. */
export const ROUNDS = 3;

/** A row, or in its place one that says why it could not be measured. */
export async function row(name: string, measure: () => Promise<Omit<BenchRow, 'name'>>): Promise<BenchRow> {
  try {
    return { name, ...(await measure()) };
  } catch (thrown) {
    return notMeasured(name, thrown instanceof Error ? thrown.message : String(thrown));
  }
}

/** @param why Its first line is shown. */
export function notMeasured(name: string, why: string): BenchRow {
  const reason = why.split('\n')[0] ?? '';
  return { name, measured: `not measured: ${reason}`, yardstick: '', ratio: '', target: '', met: null };
}

export function median(values: number[]): number {
  const sorted = [...values].sort((one, two) => one - two);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

export function times(ratio: number): string {
  return `${ratio.toFixed(ratio < 10 ? 2 : 1)} ×`;
}
