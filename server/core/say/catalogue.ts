/**
 * A catalogue of sentences: from the English sentence, as it stands in the code, to that of another language.
 *
 * In the flow: sentence with gaps -> [catalogue] -> sentence of the house. The English text is the key, with
 * its gaps numbered: `The {0} is lighter than the {1}.` Pure.
 */

/** What stands in a gap: words already said, or a number. */
export type Filling = string | number;

/** A sentence with the same gaps, or where grammar hangs on what fills them, a function of the filled gaps. */
export type Said = string | ((...fillings: string[]) => string);

export type Catalogue = Readonly<Record<string, Said>>;

const NUMBER = /^([-−+±]?)(\d+)\.(\d+)$/;

/** The key of a sentence: its parts with numbered gaps between. */
export function keyOf(parts: readonly string[]): string {
  return parts.map((part, at) => (at === 0 ? part : `{${at - 1}}${part}`)).join('');
}

/** A number as a language with a decimal comma writes it; other words as they are. */
function withComma(filling: Filling): string {
  return String(filling).replace(NUMBER, '$1$2,$3');
}

/**
 * A sentence in the language of a catalogue. What the catalogue lacks stays English: a sentence that can be read
 * is better than none, and a test keeps catalogues complete.
 *
 * @param parts What stands around the gaps, one more than there are fillings.
 */
export function sayIn(
  catalogue: Catalogue | null,
  parts: readonly string[],
  fillings: readonly Filling[],
): string {
  const said = catalogue?.[keyOf(parts)];
  if (said === undefined)
    return parts.map((part, at) => (at === 0 ? part : `${fillings[at - 1]}${part}`)).join('');
  const filled = fillings.map(withComma);
  if (typeof said === 'function') return said(...filled);
  return said.replace(/\{(\d)\}/g, (gap, at: string) => filled[Number(at)] ?? gap);
}
