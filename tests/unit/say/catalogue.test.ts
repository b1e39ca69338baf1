/** How a sentence finds its counterpart. Writing decimals with a comma: CLDR, locale de. */
import { describe, expect, test } from 'vitest';
import { type Catalogue, keyOf, sayIn } from '#server/core/say/catalogue.ts';
import { say } from '#server/core/say/say.ts';

const catalogue: Catalogue = {
  'The {0} is lighter than the {1}.': '„{1}“ ist dunkler als „{0}“.',
  'It covers {0} %.': 'Davon bedeckt: {0} %.',
  '{0} remarks': (count) => (count === '1' ? 'eine Bemerkung' : `${count} Bemerkungen`),
};
const parts = (text: string) => text.split(/\{\d\}/);

describe('saying a sentence', () => {
  test('in English it is what stands in the code', () => {
    expect(say`A box of ${3} by ${'2.5'}: ${'the far hills'}.`).toBe('A box of 3 by 2.5: the far hills.');
    expect(sayIn(null, parts('It covers {0} %.'), ['0.5'])).toBe('It covers 0.5 %.');
  });

  test('its key numbers the gaps', () => {
    expect(keyOf(parts('The {0} is lighter than the {1}.'))).toBe('The {0} is lighter than the {1}.');
    expect(keyOf(['', ' and ', ''])).toBe('{0} and {1}');
  });

  test('gaps may stand in another order', () => {
    const said = sayIn(catalogue, parts('The {0} is lighter than the {1}.'), ['Himmel', 'Wald']);
    expect(said).toBe('„Wald“ ist dunkler als „Himmel“.');
  });

  test.each([
    [12.5, '12,5'],
    ['12.50', '12,50'],
    ['−0.4', '−0,4'],
    ['+1.0', '+1,0'],
    [12, '12'],
    [1e-7, '1e-7'],
    ['Plate 3.1', 'Plate 3.1'],
    ['1.2.3', '1.2.3'],
  ])('%s is written %s in German', (filling, written) => {
    expect(sayIn(catalogue, parts('It covers {0} %.'), [filling])).toBe(`Davon bedeckt: ${written} %.`);
  });

  test('so does Intl', () => {
    const german = new Intl.NumberFormat('de-DE', { minimumFractionDigits: 2, maximumFractionDigits: 2 });
    for (const amount of [0, 0.4, 2.345, 99.995, 640.5])
      expect(sayIn(catalogue, parts('It covers {0} %.'), [amount.toFixed(2)])).toBe(
        `Davon bedeckt: ${german.format(Number(amount.toFixed(2)))} %.`,
      );
  });

  test('grammar may hang on what fills a gap', () => {
    expect(sayIn(catalogue, parts('{0} remarks'), [1])).toBe('eine Bemerkung');
    expect(sayIn(catalogue, parts('{0} remarks'), [4])).toBe('4 Bemerkungen');
  });

  test('words that look like a gap, in what people wrote, are left as they wrote them', () => {
    const said = sayIn(catalogue, parts('The {0} is lighter than the {1}.'), ['{1}', '$&']);
    expect(said).toBe('„$&“ ist dunkler als „{1}“.');
  });

  test('what a catalogue lacks is said in English rather than not at all', () => {
    expect(sayIn(catalogue, parts('Add {0}.'), ['one'])).toBe('Add one.');
  });
});
