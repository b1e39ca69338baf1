/**
 * The few greys of the look that are needed where no style sheet reaches: a canvas, a drawing that leaves the page, the
 * colour a browser gives its own frame. They are those of `app/language.css`, which a test holds them to. Pure.
 */

/** `--mid`, L* 55. */
export const SURROUND = '#848484';
/** `--over-light`, L* 97. */
export const OVER_LIGHT = '#f7f7f7';
/** `--over-dark`, L* 6.5. */
export const OVER_DARK = '#141414';
/** `--over-casing`: the dark under a light line. */
export const OVER_CASING = 'rgb(0 0 0 / 0.75)';
