'use client';
/** In the painting's caption: its photo's grade, which opens the leaf that says why. In the flow: easel -> [capture-caption]. */
import { useBoardMeasures } from '#app/_measures/board-measures.tsx';
import { photoShownWords as words } from '#words/photo-shown.ts';
import styles from './leaf.module.css';
import { usePhotoDesk } from './photo-desk.tsx';

export function CaptureCaption() {
  const { document } = useBoardMeasures();
  const { askLeaf } = usePhotoDesk();
  const grade = document?.capture.grade;
  if (!grade) return null;
  return (
    <button type="button" className={styles.caption} onClick={askLeaf}>
      {words.trust.caption(grade)}
      <span className="unseen">. {words.trust.captionMore}</span>
    </button>
  );
}
