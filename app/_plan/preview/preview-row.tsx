'use client';
/** Under the planned picture: what lies on which side, the photograph alone, the picture to take away at full size. */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { rearrangeWords as words } from '#words/plan-rearrange.ts';
import { usePlanChoice } from '../plan-choice.tsx';
import styles from './preview.module.css';

interface PreviewRowProps {
  /** What is being done, or why nothing can be shown; null = the picture is there. */
  sentence: string | null;
  alone: boolean;
  setAlone(alone: boolean): void;
  isLit: boolean;
  isRearranged: boolean;
}

export function PreviewRow({ sentence, alone, setAlone, isLit, isRearranged }: PreviewRowProps) {
  const { board } = useBoardLive();
  const { picture } = usePlanChoice();
  if (!picture) return null;
  const address = `/api/boards/${board.id}/plan/${picture.id}`;
  return (
    <div className={styles.row}>
      <p role="status">{sentence ?? (alone ? words.alone : words.edgeSays)}</p>
      <Button weight="word" aria-pressed={alone} aria-keyshortcuts="o" onClick={() => setAlone(!alone)}>
        {words.alone} <kbd>{words.aloneKey}</kbd>
      </Button>
      {isLit ? (
        <a href={`${address}/preview`} target="_blank" rel="noreferrer">
          {words.takeLit}
        </a>
      ) : null}
      {isRearranged ? (
        <a href={`${address}/rearranged`} target="_blank" rel="noreferrer">
          {words.takeRearranged}
        </a>
      ) : null}
    </div>
  );
}
