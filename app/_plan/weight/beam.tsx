'use client';
/**
 * Balance drawn as a beam under the picture: it dips to the heavier side, a weight hangs where all the pull acts.
 *
 * In the flow: balance -> [beam]. As wide as what was weighed, its pivot under the upright middle. The words beside it
 * say the same.
 */
import type { Box } from '#server/core/plan/crops/crop-scene.ts';
import type { Balance } from '#server/core/plan/weight/balance.ts';
import { planWeightWords as words } from '#words/plan-weight.ts';
import styles from './weight.module.css';

/** Units across the drawing, and its height. */
const WIDE = 1000;
const HIGH = 76;
const PIVOT = 30;
/** The beam dips by at most this many units at its end, reached where the lever is a half. */
const MOST_DIP = 18;

export function Beam({ balance: { lever, heavier }, box: [x0, , x1] }: { balance: Balance; box: Box }) {
  const dip = Math.max(-1, Math.min(1, lever / 0.5)) * MOST_DIP;
  const middle = WIDE / 2;
  const at = middle + lever * middle;
  const hang = PIVOT + (dip * (at - middle)) / middle;
  return (
    <svg
      className={styles.beam}
      style={{ marginLeft: `${x0 * 100}%`, width: `${(x1 - x0) * 100}%` }}
      viewBox={`0 0 ${WIDE} ${HIGH}`}
      role="img"
      aria-label={`${words.beam}. ${words.side[heavier]}`}
    >
      <line x1={middle} y1="0" x2={middle} y2={PIVOT} className={styles.plumb} />
      <line x1="0" y1={PIVOT - dip} x2={WIDE} y2={PIVOT + dip} className={styles.bar} />
      <path d={`M ${middle} ${PIVOT} l 16 34 h -32 z`} className={styles.pivot} />
      <line x1={at} y1={hang} x2={at} y2={hang + 12} className={styles.cord} />
      <rect x={at - 13} y={hang + 10} width="26" height="24" rx="3" className={styles.hung} />
    </svg>
  );
}
