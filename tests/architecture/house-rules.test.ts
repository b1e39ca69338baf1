/** Rules of the house that no linter knows: file sizes, places, and words that must not be committed. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const HARD_STOP_LINES = 300;
const tracked = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], {
  encoding: 'utf8',
})
  .split('\n')
  .filter(Boolean);
const code = tracked.filter((file) => /\.(ts|tsx|mjs|cjs|css)$/.test(file));

const TOP_LEVEL = new Set([
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'next.config.mjs',
  'biome.json',
  'app',
  'prisma',
  'server',
  'tests',
  'README.md',
  'DEVELOPERS.md',
  'LICENSE',
]);

describe('the house', () => {
  test('the top level holds only what was agreed, and dotfiles', () => {
    const top = new Set(tracked.map((file) => file.split('/')[0] ?? ''));
    expect([...top].filter((name) => !TOP_LEVEL.has(name) && !name.startsWith('.'))).toEqual([]);
  });

  test('no file is longer than the hard stop', () => {
    const long = code.filter((file) => readFileSync(file, 'utf8').split('\n').length > HARD_STOP_LINES + 1);
    expect(long).toEqual([]);
  });

  test('the lock file names no download address', () => {
    expect(readFileSync('package-lock.json', 'utf8')).not.toContain('"resolved"');
  });

  test('no test is skipped or focused', () => {
    const pattern = /\b(?:it|test|describe)\.(?:skip|only|todo|fixme)\b/;
    const guilty = code.filter(
      (file) => file.startsWith('tests/') && pattern.test(readFileSync(file, 'utf8')),
    );
    expect(guilty).toEqual([]);
  });
});
