/** The table in DEVELOPERS.md says what the code goes by, row for row. */
import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { BOARD_ROLES } from '#server/core/contract/roles.ts';
import { PERMISSIONS, type Reach } from '#server/core/permissions/table.ts';

const WORDS: Record<Reach, string> = { any: 'yes', own: 'own', ward: 'ward’s', none: 'no' };

test('DEVELOPERS.md shows every row of the permission table as it is', async () => {
  const guide = await readFile(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8');
  const section = guide.split('\n## Who may do what\n')[1]?.split('\n## ')[0] ?? '';
  const rows = section.split('\n').filter((line) => line.startsWith('|'));
  expect(rows).toEqual([
    `| | ${BOARD_ROLES.join(' | ')} |`,
    `|${'---|'.repeat(BOARD_ROLES.length + 1)}`,
    ...Object.values(PERMISSIONS).map(({ says, reach }) => {
      return `| ${says} | ${BOARD_ROLES.map((role) => WORDS[reach[role]]).join(' | ')} |`;
    }),
  ]);
});
