'use client';
/**
 * Finding planes, as part of the list of planes: the groupings where they are wanted, a button where they are not, and
 * after a taking what it did.
 *
 * In the flow: plane list -> [find-part] -> chooser.
 */
import { useEffect, useRef, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { planesHold } from '#app/_live/presence.ts';
import { Button } from '#app/_ui/button.tsx';
import { late } from '#app/_ui/late.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { proposeWords as words } from '#words/propose.ts';
import { firstTarget } from './find-target.ts';
import styles from './propose.module.css';
import { useProposeDesk } from './propose-desk.tsx';
import { standing, type Taken } from './taken.ts';
import { useFindTargets } from './use-find-targets.ts';

const Chooser = late(() => import('./chooser.tsx').then((module) => module.Chooser));

interface FindPartProps {
  /** Whether the leaf it stands on is the one that is shown. */
  shown: boolean;
  /** Once planes were taken: gives the keys to what comes next. */
  onTaken(): void;
}

export function FindPart({ shown, onTaken }: FindPartProps) {
  const { planes, ready, outlinesOf } = useBoardLive();
  const { open, close, choosing: stillChoosing, setChoosing } = useProposeDesk();
  const targets = useFindTargets();
  const [taken, setTaken] = useState<Taken | null>(null);
  const bare = planes.length === 0;
  const first = firstTarget(targets, (pictureId) => outlinesOf(pictureId).size);
  // What was begun in one picture stays there, whatever becomes of the outlines meanwhile.
  const begun = useRef(first);
  const choosing = ready && shown && (bare || open) && first !== null;
  if (!choosing) begun.current = first;
  useEffect(() => setChoosing(choosing), [setChoosing, choosing]);
  // Planes that come from somebody else are seen at once, not behind what one was looking at.
  useEffect(() => {
    if (!bare) close();
  }, [bare, close]);
  const started = targets.find(({ picture }) => picture.id === begun.current?.picture.id) ?? first;
  const done = useRef(onTaken);
  done.current = onTaken;
  const told = useRef<Taken | null>(null);
  // Once the groupings have left the screen and the rest is back.
  useEffect(() => {
    if (!taken || stillChoosing || told.current === taken) return;
    told.current = taken;
    done.current();
  }, [taken, stillChoosing]);
  return (
    <>
      {ready && bare && targets.length === 0 ? <p className={styles.note}>{words.onlyLook}</p> : null}
      {choosing && started ? <Chooser targets={targets} first={started} onTaken={setTaken} /> : null}
      {choosing ? null : <ChosenByOther />}
      {taken && !choosing ? <AfterTaking taken={taken} done={() => setTaken(null)} /> : null}
    </>
  );
}

/** Somebody else who is choosing planes for a picture of the easel. */
function ChosenByOther() {
  const { heldBy } = useBoardLive();
  const { referenceId, paintingId } = useTools();
  const on = (pictureId: string | null) => pictureId && heldBy(planesHold(pictureId));
  const person = on(referenceId) || on(paintingId);
  return (
    <p className={styles.note} role="status">
      {person ? words.choosing(person) : null}
    </p>
  );
}

function AfterTaking({ taken, done }: { taken: Taken; done(): void }) {
  const { planes, undo } = useBoardLive();
  const state = standing(taken, planes);
  if (state === 'undone') return null;
  const sentence =
    state === 'overtaken'
      ? words.overtaken
      : taken.ids
        ? words.taken(taken.ids.length, taken.side)
        : words.laid(taken.side);
  return (
    <p className={styles.taken} role="status">
      {sentence}{' '}
      {state === 'stands' ? (
        <Button
          weight="word"
          onClick={() => {
            undo();
            done();
          }}
        >
          {words.undo}
        </Button>
      ) : null}
    </p>
  );
}

/** Under the planes that are there: finding them anew, or why this person cannot. */
export function FindAgain() {
  const { board, planes } = useBoardLive();
  const { paintingId } = useTools();
  const { choosing, ask } = useProposeDesk();
  const targets = useFindTargets();
  if (planes.length === 0 || choosing) return null;
  if (targets.length > 0) {
    return (
      <div>
        <Button aria-keyshortcuts="F" onClick={ask}>
          {words.again}
        </Button>
      </div>
    );
  }
  const theirs = board.pictures.some(({ id }) => id === paintingId);
  return theirs ? <p className={styles.note}>{words.notYours}</p> : null;
}
