/**
 * Says a sentence in the language of the house.
 *
 * In the flow: rules, measures, refusals -> [say] -> sentences for people. In English a sentence stays as it is
 * written; in another language its counterpart is looked up. Pure but for the language, which is read once.
 *
 * @example say`The ${lighter} is lighter than the ${darker}.`
 */
import { sentences } from '#sentences';
import { type Filling, sayIn } from './catalogue.ts';

/** A sentence with gaps, as a template. Whatever fills a gap has been said itself, or is a name or a number. */
export function say(parts: TemplateStringsArray, ...fillings: Filling[]): string {
  return sayIn(sentences, parts, fillings);
}

/**
 * One of a closed set of short texts that serve as values too, such as the reasons against a photo. Its catalogue
 * is told of them by `VALUES_SAID` in the test of catalogues, since nobody can read them off the code.
 */
export function sayValue(text: string): string {
  return sayIn(sentences, [text], []);
}
