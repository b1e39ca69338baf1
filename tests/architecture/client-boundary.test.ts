/** Where browser code may begin: 'use client' stands only in underscore folders and in Next's error page. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
}

const sources = filesBelow('app').filter((file) => /\.tsx?$/.test(file));

describe('the border between server and browser', () => {
  test('there are pages to look at', () => expect(sources.length).toBeGreaterThan(10));

  test("'use client' stands only in underscore folders and error.tsx", () => {
    const strays = sources.filter(
      (file) =>
        /^['"]use client['"]/m.test(readFileSync(file, 'utf8')) &&
        !/^app\/(.*\/)?_/.test(file) &&
        !file.endsWith('error.tsx'),
    );
    expect(strays).toEqual([]);
  });

  test('words come in the language that is built: by #words, but among words themselves', () => {
    const strays = sources.filter(
      (file) => !file.startsWith('app/_words/') && /_words\/(en|de)\//.test(readFileSync(file, 'utf8')),
    );
    expect(strays).toEqual([]);
  });

  test('nothing in app reads the environment', () => {
    const readers = sources.filter((file) => readFileSync(file, 'utf8').includes('process.env'));
    expect(readers).toEqual([]);
  });
});
