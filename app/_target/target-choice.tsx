'use client';
/**
 * What the paintings of the board are held against: the reference photograph or the plan. Said to all; changed by whoever
 * writes the scene.
 *
 * In the flow: setup room -> [target-choice] -> `target` of its plan; the server measures anew.
 */
import { useBoardLive, useRoomDocument } from '#app/_live/board-live.tsx';
import { PerDocument } from '#app/_live/read-board.ts';
import { Choice } from '#app/_look/choice.tsx';
import { type LiveTarget, readTaken, readTarget, setTarget } from '#server/core/live/plan/taken-plan.ts';
import { targetWords as words } from '#words/target.ts';

const TARGETS: readonly LiveTarget[] = ['reference', 'plan'];
const targetIn = new PerDocument((doc) => ({ target: readTarget(doc), taken: readTaken(doc) !== null }));

/** Nothing where no plan was taken: then there is no choice. */
export function TargetChoice() {
  const { may } = useBoardLive();
  const doc = useRoomDocument('setup');
  const now = doc ? targetIn.of(doc) : null;
  if (!doc || !now?.taken || !may.setup) return null;
  return (
    <Choice
      label={words.title}
      options={TARGETS.map((value) => ({ value, name: words[value] }))}
      chosen={now.target}
      onChoose={(target) => setTarget(doc, target)}
    />
  );
}
