/** How much of a picture lies at each lightness, drawn over a grey scale: cuts belong in the valleys. Pure. */
import { CODE_COUNT } from '#server/core/look/value-counts.ts';
import styles from './values.module.css';

/** Bins of the drawn counts: two L* each. */
const BINS = 50;

/** @param counts As of `countCodes`; null = nothing is known yet. */
export function Heights({ counts }: { counts: Uint32Array | null }) {
  const bins = new Float64Array(BINS);
  counts?.forEach((count, code) => {
    const bin = Math.min(BINS - 1, Math.floor((code / CODE_COUNT) * BINS));
    bins[bin] = (bins[bin] ?? 0) + count;
  });
  const most = Math.max(1, ...bins);
  // The square root, so that a great sky does not flatten all else.
  const points = Array.from(
    bins,
    (bin, at) => `${((at + 0.5) / BINS) * 100},${100 - Math.sqrt(bin / most) * 96}`,
  );
  return (
    <svg className={styles.heights} viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
      <polygon points={`0,100 ${points.join(' ')} 100,100`} />
    </svg>
  );
}
