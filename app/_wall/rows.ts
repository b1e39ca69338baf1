/** The ways of looking that the wall offers, and which are switched on. In the flow: switches -> [rows] -> paintings. Pure. */
import type { ValueNumber } from '#server/core/look/value-numbers.ts';

export const ROWS = ['picture', 'squint', 'values', 'palette', 'ladder'] as const;
export type Row = (typeof ROWS)[number];

/** Rows that tell of values and figures: a class keeps them back while it looks at a painting alone. */
const KEPT_BACK: readonly Row[] = ['values', 'palette', 'ladder'];

export interface Looking {
  rows: readonly Row[];
  count: ValueNumber;
  order: 'value' | 'depth';
}

export const USUAL_LOOKING: Looking = {
  rows: ['picture', 'values', 'palette', 'ladder'],
  count: 3,
  order: 'value',
};

/** Rows that may be switched now, in the order in which they stand. */
export function offeredRows(veiled: boolean): Row[] {
  return ROWS.filter((row) => !veiled || !KEPT_BACK.includes(row));
}

/** With one row switched; at least one stays. */
export function withRow(looking: Looking, row: Row): Looking {
  const on = looking.rows.includes(row);
  const rows = ROWS.filter((each) => (each === row ? !on : looking.rows.includes(each)));
  return rows.length === 0 ? looking : { ...looking, rows };
}
