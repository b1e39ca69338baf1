/** German is whole: every sentence and every word has its counterpart, with the same gaps, and none is English. */
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { german } from '#server/core/say/de/german.ts';
import { saidUnder, textsIn } from '#tests/helpers/said.ts';
import { VALUES_SAID } from './values-said.ts';

const said = saidUnder('server', 'app');
const gapsOf = (text: string) => [...new Set(text.match(/\{\d\}/g) ?? [])].sort();

/** English words that are no German words when written like this. */
const ENGLISH =
  /(?<![\p{L}’'-])(?:the|The|and|of|with|this|This|that|from|is|are|its|your|you|not|for|than)(?![\p{L}’'-])/u;

describe('the catalogue of sentences', () => {
  test('the code says some', () => expect(said.size).toBeGreaterThan(400));

  test('no sentence is without its counterpart', () => {
    const lacking = [...said].filter(([key]) => !Object.hasOwn(german, key));
    expect(lacking.map(([key, file]) => `${file}: ${key}`)).toEqual([]);
  });

  test('no value that is shown is without its counterpart', () => {
    expect(VALUES_SAID.filter((value) => !Object.hasOwn(german, value))).toEqual([]);
  });

  test('nothing stands in it that nobody says', () => {
    const known = new Set([...said.keys(), ...VALUES_SAID]);
    expect(Object.keys(german).filter((key) => !known.has(key))).toEqual([]);
  });

  test('each counterpart has the gaps of its sentence', () => {
    const other = Object.entries(german).filter(
      ([key, text]) => typeof text === 'string' && String(gapsOf(key)) !== String(gapsOf(text)),
    );
    expect(other).toEqual([]);
  });

  test('where grammar hangs on the gaps, all of them are taken and something is said', () => {
    for (const [key, text] of Object.entries(german)) {
      if (typeof text !== 'function') continue;
      const fillings = gapsOf(key).map((_, at) => String(at + 2));
      const spoken = text(...fillings);
      expect(text.length, key).toBeLessThanOrEqual(fillings.length);
      expect(spoken, key).toMatch(/\p{L}/u);
      expect(spoken, key).not.toMatch(/undefined|null|NaN|\{\d\}/);
    }
  });
});

const CATALOGUES = readdirSync('server/core/say/de').map((name) => `server/core/say/de/${name}`);
const WORDS = readdirSync('app/_words/de').map((name) => `app/_words/de/${name}`);

describe('German words', () => {
  test('every file of words has a German one', () => {
    expect(readdirSync('app/_words/de').sort()).toEqual(readdirSync('app/_words/en').sort());
  });

  test.each([...CATALOGUES, ...WORDS])('%s holds no English sentence', (file) => {
    const english = textsIn(file).filter((text) => ENGLISH.test(text));
    expect(english).toEqual([]);
  });

  test.each([...CATALOGUES, ...WORDS])('%s quotes as German does', (file) => {
    expect(textsIn(file).filter((text) => /[“][^”„“]*”|"/.test(text))).toEqual([]);
  });
});
