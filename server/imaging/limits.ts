/**
 * What a picture may be at most and at least; each number with the reason for its value.
 *
 * In the flow: upload → [limits] → inspect. Pure.
 */

/** 100 million pixels: three bytes each is 300 MB in memory, which a small server can still bear once. */
export const MAX_PIXELS = 100_000_000;

/** Below 64 px on a side no plane holds enough pixels for a percentile. */
export const MIN_SIDE_PX = 64;

/** Long side over short side. A longer strip would shrink to a plate too thin to hold planes. */
export const MAX_SIDE_RATIO = 12;

/** Seconds that taking in one picture may last: ten times what 100 megapixels took on two slow cores. */
export const TAKE_IN_SECONDS = 60;

/** Seconds that measuring one pair may last. */
export const MEASURE_SECONDS = 60;

/** Seconds that planning from one photograph may last. */
export const PLAN_SECONDS = 120;

/** Seconds that laying one state of a painting on another may last. */
export const COMPARE_SECONDS = 60;
