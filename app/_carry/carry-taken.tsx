'use client';
/** Under the pictures once planes were carried over: what became of them. In the flow: easel bar -> [carry-taken] -> carry-desk. */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { carryWords as words } from '#words/carry.ts';
import { words as shellWords } from '#words/shell.ts';
import styles from './carry.module.css';
import { useCarryDoor } from './carry-desk.tsx';
import { namesOf } from './names-of.ts';

/** After planes were taken: what of them to look at again, and the way back. */
export function CarryTaken() {
  const { taken, forgetTaken } = useCarryDoor();
  const { planes, undo } = useBoardLive();
  const { paintingId, setTool, setPlaneId } = useTools();
  if (!taken || taken.paintingId !== paintingId) return null;
  const [first] = taken.doubts;
  const again = namesOf(taken.doubts, planes).map(({ name }) => name);
  return (
    <div className={styles.controls}>
      <p role="status">
        {words.taken(taken.count)} {again.length > 0 ? words.lookAgain(again) : null}
      </p>
      <div className={styles.acts}>
        <Button
          onClick={() => {
            if (first) setPlaneId(first.planeId);
            setTool('outline');
            forgetTaken();
          }}
        >
          {words.correct}
        </Button>
        <Button
          weight="word"
          onClick={() => {
            undo();
            forgetTaken();
          }}
        >
          {words.undo}
        </Button>
        <Button weight="word" onClick={forgetTaken}>
          {shellWords.close}
        </Button>
      </div>
    </div>
  );
}
