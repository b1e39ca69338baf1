/**
 * Readings on painted pairs, through the whole measuring path: how many drawn faults are found, how often a faithful
 * painting is accused, reading by reading.
 *
 * Pairs come from a generator whose parameters were frozen before any rate was looked at (`fixtures/painted`). Rates
 * have no yardstick but their targets. IO: none.
 */
import { countPainted, type PaintedCounts } from '../fixtures/painted/calibrate-painted.ts';
import { LARGE_FAULT_IDS, SMALL_FAULT_IDS } from '../fixtures/painted/painted-pair.ts';
import { PAINTED } from '../fixtures/painted/parameters.ts';
import type { BenchRow } from './row.ts';

const LEAST_HITS = 0.95;
const MOST_ALARMS = 0.02;

const percent = (part: number, whole: number) => `${((100 * part) / Math.max(1, whole)).toFixed(1)} %`;

function summaryRows(counts: PaintedCounts, size: string): BenchRow[] {
  const { grade, hits, pairsWithFaults, alarmed, pairsWithout, withColour } = counts;
  const rows: BenchRow[] = [
    {
      name: `readings at grade ${grade}, ${size}: faults found`,
      measured: `${hits} of ${pairsWithFaults}`,
      yardstick: '',
      ratio: percent(hits, pairsWithFaults),
      target: grade === 'C' ? '' : `≥ ${LEAST_HITS * 100} %`,
      met: grade === 'C' ? null : hits >= LEAST_HITS * pairsWithFaults,
    },
    {
      name: `readings at grade ${grade}, ${size}: faithful pictures accused`,
      measured: `${alarmed} of ${pairsWithout}`,
      yardstick: '',
      ratio: percent(alarmed, pairsWithout),
      target: grade === 'C' ? '' : `≤ ${MOST_ALARMS * 100} %`,
      met: grade === 'C' ? null : alarmed <= MOST_ALARMS * pairsWithout,
    },
  ];
  if (grade !== 'C') return rows;
  const pairs = pairsWithFaults + pairsWithout;
  const name = `readings at grade C, ${size}: pictures with a colour reading`;
  const colour = { measured: `${withColour} of ${pairs}`, yardstick: '', ratio: percent(withColour, pairs) };
  return [...rows, { name, ...colour, target: 'none', met: withColour === 0 }];
}

function readingRows({ grade, rows }: PaintedCounts): BenchRow[] {
  return [...rows.values()].map(({ id, drawn, hits, falseAlarms, missedAt }) => ({
    name: `  ${id} at grade ${grade}`,
    measured: drawn === 0 ? 'not drawn' : `found ${hits} of ${drawn}`,
    yardstick:
      missedAt.length === 0 ? '' : `missed at ${missedAt.map((times) => times.toFixed(1)).join(', ')} ×`,
    ratio: `falsely ${falseAlarms}`,
    target: '',
    met: null,
  }));
}

/** For each grade the rates over all pictures, then one row a reading. */
export async function calibrationRows(): Promise<BenchRow[]> {
  const rows: BenchRow[] = [];
  for (const grade of ['A', 'B', 'C'] as const) {
    const faults = SMALL_FAULT_IDS.filter((id) => grade !== 'C' || !id.startsWith('C'));
    const pairs =
      grade === 'C'
        ? { pairsWithFaults: PAINTED.pairsAtC, pairsWithout: PAINTED.pairsAtC }
        : { pairsWithFaults: PAINTED.pairsWithFaults, pairsWithout: PAINTED.pairsWithout };
    const counts = await countPainted({ grade, faults, ...pairs });
    rows.push(...summaryRows(counts, 'small pictures'), ...readingRows(counts));
    if (grade === 'C') continue;
    const large = await countPainted({
      ...{ grade, faults: LARGE_FAULT_IDS, large: true },
      ...{ pairsWithFaults: PAINTED.largeWithFaults, pairsWithout: PAINTED.largeWithout },
    });
    rows.push(...summaryRows(large, 'large pictures'), ...readingRows(large));
  }
  return rows;
}
