/**
 * What stands as the source of a rule that painters go by and no book is cited for: a value, which whoever shows sources
 * looks out for. Shown as it is, it is said with `sayValue`. Pure.
 */
export const NO_SOURCE = 'common practice, no source';
