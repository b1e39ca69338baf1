'use client';
/**
 * Taking the plan that is shown: paintings are held against it from then on, and it is kept with who took it and when.
 *
 * In the flow: planned ladder -> [take-plan] -> `ladder`, `target`, `kept` of the setup room. IO: the clock, an id.
 */
import { uuidv4 } from 'lib0/random';
import { useBoardLive, useRoomDocument } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { edit } from '#server/core/live/document.ts';
import { readTaken, takePlan } from '#server/core/live/plan/taken-plan.ts';
import { setWishes } from '#server/core/live/plan/wishes.ts';
import { planLadderWords as words } from '#words/plan-ladder.ts';
import { usePlanChoice } from '../plan-choice.tsx';
import styles from './planned.module.css';
import { usePlannedLadder } from './planned-ladder.tsx';
import type { PlannedView } from './planned-view.ts';

/** Figures are compared as they are shown: to a tenth. */
function isTaken({ rungs }: PlannedView, taken: ReturnType<typeof readTaken>): boolean {
  const shown = (list: readonly object[]) =>
    JSON.stringify(list, (_, value) => (typeof value === 'number' ? Math.round(value * 10) / 10 : value));
  return taken !== null && shown(rungs) === shown(taken);
}

export function TakePlan() {
  const { board, may } = useBoardLive();
  const doc = useRoomDocument('setup');
  const { picture, frameId } = usePlanChoice();
  const { view, current, wishes, wish } = usePlannedLadder();
  if (!doc || !view || view.rungs.length === 0) return null;
  const taken = readTaken(doc);
  const same = isTaken(view, taken);
  const take = () => {
    const from = { pictureId: picture?.id ?? null, cropId: frameId };
    edit(doc, () => {
      setWishes(doc, from);
      takePlan(doc, uuidv4(), {
        ...{ at: Date.now(), by: board.me.id, name: '' },
        wishes: { ...wishes, ...from },
        handles: { ...wish.handles },
        ladder: view.rungs,
      });
    });
  };
  return (
    <div className={styles.take}>
      <p role="status">{same ? words.taken : taken ? words.takenAfter : ''}</p>
      {/* A frame may have moved a moment ago: what is taken is what was asked for, never the figures before it. */}
      {may.setup ? (
        <Button weight="main" disabled={same || !current} onClick={take}>
          {words.take}
        </Button>
      ) : null}
    </div>
  );
}
