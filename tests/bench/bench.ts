/**
 * `npm run bench [-- --full] [--only PART]`: every target that can be measured so far, each beside its yardstick from this run.
 *
 * Always ends with status 0: a slow machine is no failure. The last line counts the targets that were missed.
 */
import { setTimeout } from 'node:timers/promises';
import { calibrationRows } from './calibration.ts';
import { carryingRows } from './carrying.ts';
import { firstPaintRows } from './first-paint.ts';
import { letGoRows } from './let-go.ts';
import { liveRows } from './live.ts';
import { measureRows } from './measure.ts';
import { pageRows } from './page.ts';
import { planeRows } from './planes.ts';
import { plannedRows } from './planned.ts';
import type { BenchRow } from './row.ts';
import { sheetRows } from './sheet.ts';
import { wallRows } from './wall.ts';

// Every y-websocket client listens for the end of the process, and there are hundreds here.
process.setMaxListeners(0);

const full = process.argv.includes('--full');
const only = process.argv[process.argv.indexOf('--only') + 1];
const PART_LIMIT_MS = (full ? 60 : 10) * 60_000;

interface Part {
  name: string;
  rows: () => Promise<BenchRow[]>;
  /** Longest that it may take, where that is more than usual. */
  limitMs?: number;
}

const PARTS: readonly Part[] = [
  { name: 'measuring', rows: () => measureRows() },
  { name: 'let go', rows: () => letGoRows() },
  { name: 'planes', rows: () => planeRows() },
  // A hundred paintings, each painted first.
  { name: 'carrying', rows: () => carryingRows(), limitMs: 20 * 60_000 },
  // Some 900 pairs, each painted, photographed and measured.
  { name: 'readings', rows: () => calibrationRows(), limitMs: 60 * 60_000 },
  { name: 'live', rows: () => liveRows({ full }) },
  { name: 'start and page', rows: () => pageRows() },
  { name: 'first paint', rows: () => firstPaintRows() },
  { name: 'wall', rows: () => wallRows() },
  { name: 'planned pictures', rows: () => plannedRows() },
  { name: 'sheet', rows: () => sheetRows() },
];

const COLUMNS = ['name', 'measured', 'yardstick', 'ratio', 'target', 'met'] as const;
const HEADINGS = ['what', 'measured', 'yardstick', 'ratio', 'target', 'met'];

function cellsOf(row: BenchRow): string[] {
  return COLUMNS.map((column) => {
    if (column === 'met') return row.met === null ? '–' : row.met ? 'yes' : 'NO';
    return row[column] || '–';
  });
}

function table(rows: readonly BenchRow[]): string {
  const cells = [HEADINGS, ...rows.map(cellsOf)];
  const widths = HEADINGS.map((_, column) =>
    Math.max(...cells.map((line) => [...(line[column] ?? '')].length)),
  );
  const lines = cells.map((line) =>
    line
      .map((cell, column) => cell + ' '.repeat((widths[column] ?? 0) - [...cell].length))
      .join('  ')
      .trimEnd(),
  );
  lines.splice(1, 0, widths.map((width) => '-'.repeat(width)).join('  '));
  return lines.join('\n');
}

/** A part that breaks, or never ends, gives one row that says so; the others still run. */
async function rowsOf({ name, rows, limitMs = PART_LIMIT_MS }: Part): Promise<BenchRow[]> {
  process.stderr.write(`Measuring: ${name} …\n`);
  const limit = new AbortController();
  const late = setTimeout(limitMs, undefined, { signal: limit.signal, ref: false }).then(() => {
    throw new Error(`took longer than ${limitMs / 60_000} minutes`);
  });
  try {
    return await Promise.race([rows(), late]);
  } catch (thrown) {
    const why = (thrown instanceof Error ? thrown.message : String(thrown)).split('\n')[0] ?? '';
    return [{ name, measured: `not measured: ${why}`, yardstick: '', ratio: '', target: '', met: null }];
  } finally {
    late.catch(() => {});
    limit.abort();
  }
}

const rows: BenchRow[] = [];
const wanted = process.argv.includes('--only') ? PARTS.filter(({ name }) => name === only) : PARTS;
if (wanted.length === 0)
  console.log(`There is no part '${only}'. Parts: ${PARTS.map(({ name }) => name).join(', ')}.`);
for (const part of wanted) rows.push(...(await rowsOf(part)));
console.log(table(rows));
const targets = rows.filter(({ met }) => met !== null);
const missed = targets.filter(({ met }) => met === false).length;
console.log(
  `\n${targets.length} targets, ${missed} missed; ${rows.length - targets.length} rows without a target or not measured.`,
);
process.exit(0);
