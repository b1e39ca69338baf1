'use client';
/** Under the list of planes: that they can be carried over to the painting. In the flow: plane list -> [carry-offer] -> desk. */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { carryHold } from '#app/_live/presence.ts';
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { carryWords as words } from '#words/carry.ts';
import styles from './carry.module.css';
import { useCarryDoor } from './carry-desk.tsx';
import { useCarryWish } from './use-carry-wish.ts';

export function CarryOffer() {
  const { planes, outlinesOf, may, heldBy } = useBoardLive();
  const { paintingId } = useTools();
  const { begin, work } = useCarryDoor();
  const first = useCarryWish(null);
  const { missing, sources } = work ?? first;
  const placing = work?.placing === true;
  if (!paintingId || !may.painting(paintingId) || planes.length === 0 || sources.length === 0) return null;
  const here = outlinesOf(paintingId).size;
  const other = heldBy(carryHold(paintingId));
  // Nothing to carry as far as this screen knows, and nothing that could be done anew.
  if (here === 0 && missing.length === 0 && sources.length < 2) return null;
  return (
    <div className={styles.offer}>
      {placing || other ? null : (
        <Button weight={here === 0 && missing.length > 0 ? 'main' : 'quiet'} onClick={begin}>
          {offerOf(here, missing.length)}
        </Button>
      )}
      <p role="status">{other ? words.heldBy(other) : placing ? words.onEasel : null}</p>
    </div>
  );
}

/** @param here Planes on the painting. @param missing Planes of the source that it lacks. */
function offerOf(here: number, missing: number): string {
  if (here === 0) return words.offer;
  return missing > 0 ? words.offerRest(missing) : words.offerAgain;
}
