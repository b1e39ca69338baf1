'use client';
/**
 * Where the eye should come to rest, drawn quietly on the painting.
 *
 * In the flow: live `focus` -> [focus-layer] -> screen. The talk says the same in words.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import styles from './focus-layer.module.css';
import { useStage } from './stage-context.tsx';

/** Circumference of the ring's radius of 18, cut into four arcs with as many gaps. */
const ARC = (2 * Math.PI * 18) / 8;

/** Four short arcs round the place, seen on light and on dark; nothing lies over the paint itself. */
export function FocusLayer() {
  const { picture, frame } = useStage();
  const { focusOf } = useBoardLive();
  const { linesShown, tool } = useTools();
  const point = picture.kind === 'painting' ? focusOf(picture.id) : null;
  if (!point || !(linesShown || tool === 'focus')) return null;
  const [x, y] = frame.shown(point);
  return (
    <svg
      className={styles.focus}
      style={{ left: `${x * 100}%`, top: `${y * 100}%` }}
      viewBox="0 0 40 40"
      aria-hidden="true"
    >
      {['casing', 'core'].map((line) => (
        <circle
          key={line}
          className={styles[line]}
          cx="20"
          cy="20"
          r="18"
          strokeDasharray={ARC}
          strokeDashoffset={ARC / 2}
        />
      ))}
    </svg>
  );
}
