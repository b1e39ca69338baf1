/** Figures as a table: RFC 4180, read back by a reader written after its grammar; a row a plane and side. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { GAP_KEYS, type MeasureDocument } from '#server/core/contract/measures.ts';
import { type Cell, toCsv } from '#server/core/outward/csv.ts';
import { measuresTable } from '#server/core/outward/measures-table.ts';

/** RFC 4180, section 2: file = record *(CRLF record), field = escaped / non-escaped. */
function readCsv(text: string): string[][] {
  const records: string[][] = [];
  let [record, at]: [string[], number] = [[], text.startsWith('\uFEFF') ? 1 : 0];
  while (at < text.length) {
    let field = '';
    if (text[at] === '"') {
      for (at++; text[at] !== '"' || text[at + 1] === '"'; at++) {
        if (text[at] === '"') at++;
        field += text[at];
      }
      at++;
    } else {
      for (; at < text.length && !/[",\r\n]/.test(text[at] ?? ''); at++) field += text[at];
    }
    record.push(field);
    if (text[at] === ',') {
      at++;
      if (at === text.length) record.push('');
    } else if (text.startsWith('\r\n', at)) {
      records.push(record);
      [record, at] = [[], at + 2];
    } else throw new Error(`Not RFC 4180 at ${at}: ${JSON.stringify(text.slice(at - 10, at + 10))}`);
  }
  return records;
}

const cell: fc.Arbitrary<Cell> = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.constantFrom('=1+1', '@x', '-y', '+z', '\tq', 'a,"b"\r\nc'),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.constant(null),
);

test('whatever is in a table comes back from it, numbers to the last digit, and nothing can be taken for a formula', () => {
  fc.assert(
    fc.property(
      fc
        .integer({ min: 1, max: 5 })
        .chain((width) =>
          fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 5 }),
        ),
      (rows) => {
        const back = readCsv(toCsv(rows));
        expect(back).toHaveLength(rows.length);
        for (const [at, row] of rows.entries()) {
          for (const [place, value] of row.entries()) {
            const found = back[at]?.[place] ?? '?';
            if (value === null) expect(found).toBe('');
            else if (typeof value === 'number') expect(Number(found) === value).toBe(true);
            else {
              expect([value, `'${value}`]).toContain(found);
              expect(found).not.toMatch(/^[=+\-@\t\r]/);
            }
          }
        }
      },
    ),
  );
});

const figures = (dark: number) => ({
  ...Object.fromEntries(GAP_KEYS.map((key) => [key, null])),
  dark,
  notes: ['Small.'],
  doubt: { dark: [dark - 1, dark + 1] },
});
const measured = {
  ...{ version: 1, target: 'reference', capture: { grade: 'B', reasons: [] } },
  planes: [
    {
      name: 'Far ridge',
      reference: figures(50),
      painting: figures(41.123456789),
      gap: { ...figures(-8.9), notes: undefined },
      recession: null,
      doubt: { gap: { dark: [-10, -7] }, recession: {} },
    },
    { name: 'Meadow, near', reference: null, painting: figures(20), gap: null, recession: null },
  ],
} as unknown as MeasureDocument;
const picture = {
  id: 'p1',
  kind: 'painting' as const,
  painter: 'Pelle',
  caption: null,
  postedAt: '2026-11-29T10:00:00.000Z',
};

test('a plane has a row for the reference, the painting and what lies between, each with unit and interval', () => {
  const [head, ...rows] = readCsv(toCsv(measuresTable([{ ...picture, measures: measured, pending: null }])));
  const column = (name: string) => head?.findIndex((each) => each.startsWith(name)) ?? -1;
  const [side, dark] = [column('Side'), column('Dark [CIE L* 5th percentile]')];
  expect(
    rows.map((row) => [row[column('Plane')], row[column('Place')], row[side], ...row.slice(dark, dark + 3)]),
  ).toEqual([
    ['Far ridge', '1', 'reference', '50', '49', '51'],
    ['Far ridge', '1', 'painting', '41.123456789', '40.123456789', '42.123456789'],
    ['Far ridge', '1', 'painting minus target', '-8.9', '-10', '-7'],
    ['Meadow, near', '2', 'painting', '20', '19', '21'],
  ]);
  for (const row of rows) expect(row).toHaveLength(head?.length ?? 0);
  const units = head?.filter((each) => /\[.+\]/.test(each)) ?? [];
  expect(units).toHaveLength(3 * GAP_KEYS.length);
});

test('a picture without figures has a row that says what it waits for', () => {
  const [head, row] = readCsv(
    toCsv(measuresTable([{ ...picture, measures: null, pending: 'Waiting for planes.' }])),
  );
  expect(row).toHaveLength(head?.length ?? 0);
  expect(row?.at(-1)).toBe('Waiting for planes.');
});
