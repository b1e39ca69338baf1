/**
 * Version of the numbers. Raised whenever a formula, a decoder's setting or a definition changes, so that kept
 * results are worked out again.
 */
export const FORMULA_VERSION = 10;
