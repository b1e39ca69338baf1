/**
 * The shape that words have in every language: that of the English ones, with any text in place of theirs.
 *
 * A language that lacks a word, has one too many or takes other things into a sentence does not compile. Types only.
 */
export type Worded<T> = T extends string
  ? string
  : T extends (...taken: infer Taken) => infer Given
    ? (...taken: Taken) => Worded<Given>
    : T extends object
      ? { readonly [Key in keyof T]: Worded<T[Key]> }
      : T;
