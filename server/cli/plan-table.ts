/** A plan as tables to read in a terminal: the best frames, balance, where to look, the ladder far to near. Pure. */
import type { PicturePlan } from '../core/plan/plan-picture.ts';
import { aligned } from './aligned.ts';

/** Frames in the table; `--json` has all. */
const SHOWN = 12;

const percent = (share: number): string => (100 * share).toFixed(0);

function frames({ crops }: PicturePlan): string | null {
  if (crops.length === 0) return null;
  const shown = crops.slice(0, SHOWN);
  const rows = shown.map(({ format, box, sky, foreground }, at) => [
    String(at + 1),
    format,
    ...box.map((side) => side.toFixed(3)),
    percent(sky),
    percent(foreground),
  ]);
  const table = aligned(
    [['frame', 'format', 'left', 'top', 'right', 'bottom', 'sky %', 'nearest %'], ...rows],
    2,
  );
  const first = shown.slice(0, 3).map(({ reasons }, at) => `${at + 1}: ${reasons.join(' ')}`);
  const rest = crops.length > SHOWN ? [`${crops.length - SHOWN} more frames with --json.`] : [];
  return [table, ...first, ...rest].join('\n');
}

function balanceLine({ balance: { lever, heavier, heaviness } }: PicturePlan): string {
  const side = heavier === 'even' ? 'neither side is the heavier' : `the ${heavier} is the heavier`;
  return `balance: lever ${lever.toFixed(2)}, ${side}; heaviness (published scale) left ${heaviness.left.toFixed(2)}, right ${heaviness.right.toFixed(2)}`;
}

function readingLines({ readings }: PicturePlan): string | null {
  if (readings.length === 0) return null;
  return readings
    .map(({ id, sentence, muted }) => `${id}: ${sentence}${muted === null ? '' : ` (${muted})`}`)
    .join('\n');
}

function ladderTable({ ladder }: PicturePlan): string | null {
  if (ladder.length === 0) return null;
  const rows = ladder.map((plane) => [
    plane.name,
    ...[plane.dark, plane.mid, plane.light, plane.chroma, plane.strong, plane.warmCool].map((figure) =>
      figure.toFixed(1),
    ),
    plane.airDistance === null ? '–' : plane.airDistance.toFixed(1),
  ]);
  const head = ['plane', 'dark L*', 'mid L*', 'light L*', 'chroma', 'strong', 'warm-cool', 'to air'];
  return aligned([head, ...rows], 1);
}

export function planTable(plan: PicturePlan): string {
  const notes = plan.notes.length > 0 ? plan.notes.join('\n') : null;
  return [frames(plan), balanceLine(plan), readingLines(plan), ladderTable(plan), notes]
    .filter((section) => section !== null)
    .join('\n\n');
}
