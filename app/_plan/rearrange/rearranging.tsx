'use client';
/**
 * The steps of rearranging the chosen photograph: as they live with the board, the chosen one, what the hand does to it.
 *
 * In the flow: setup room + hand -> [rearranging] -> panel, hands on the stage, preview. What can't be done is said in one
 * sentence, and nothing is written. IO: the `setup` room.
 */
import { uuidv4 } from 'lib0/random';
import { createContext, type ReactNode, useContext, useMemo, useState } from 'react';
import type * as Y from 'yjs';
import { useBoardLive, useRoomDocument } from '#app/_live/board-live.tsx';
import { PerDocument } from '#app/_live/read-board.ts';
import { MOST_STEPS, type Rearranging } from '#server/core/contract/rearranging.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { orderBetween } from '#server/core/live/order.ts';
import {
  changeStep,
  hasRoomForStep,
  type KeptBend,
  type KeptMotif,
  putBend,
  putMotif,
  type RearrangeStep,
  readAsItWas,
  readSteps,
  removeStep,
  setAsItWas,
} from '#server/core/live/plan/rearranging.ts';
import { checkMotif, checkPlaced } from '#server/core/plan/rearrange/check-motif.ts';
import { ridgeLine } from '#server/core/plan/rearrange/ridge-line.ts';
import { isProblem } from '#server/core/problem.ts';
import { rearrangeWords as words } from '#words/plan-rearrange.ts';
import { usePlanChoice } from '../plan-choice.tsx';

export type StepChange = Partial<Omit<KeptMotif, 'kind' | 'id'>> | Partial<Omit<KeptBend, 'kind' | 'id'>>;

export interface RearrangingHere {
  /** In their order, what is under the hand among them. */
  steps: readonly RearrangeStep[];
  /** Those that are done just now. */
  done: Rearranging;
  asItWas: boolean;
  setAsItWas(asItWas: boolean): void;
  chosen: RearrangeStep | null;
  choose(id: string | null): void;
  /** What the hand does to the chosen step without writing it; null = it let go. */
  move(change: StepChange | null): void;
  moving: boolean;
  /** Writes a change, where it can be done. */
  change(step: RearrangeStep, change: StepChange): void;
  remove(step: RearrangeStep): void;
  /** Swaps a step with the one before (−1) or after it (1). */
  shift(step: RearrangeStep, by: -1 | 1): void;
  /** @returns whether it was lifted. */
  lift(outline: readonly FractionPoint[], planeId: string | null, name: string): boolean;
  bend(outline: readonly FractionPoint[], name: string): void;
  /** Why the last thing could not be done, or null. */
  sentence: string | null;
  drawing: boolean;
  setDrawing(drawing: boolean): void;
  lit: boolean;
  setLit(lit: boolean): void;
}

const Context = createContext<RearrangingHere | null>(null);

/** @throws Error outside a `RearrangingProvider`: a bug. */
export function useRearranging(): RearrangingHere {
  const here = useContext(Context);
  if (!here) throw new Error('Rearranging is used outside RearrangingProvider.');
  return here;
}

const stepsIn = new PerDocument((doc, pictureId) => readSteps(doc, pictureId));
const NONE: readonly RearrangeStep[] = [];

/** The sentence of what can't be done, or null. */
function troubleOf(attempt: () => void): string | null {
  try {
    attempt();
    return null;
  } catch (thrown) {
    if (isProblem(thrown)) return thrown.message;
    throw thrown;
  }
}

function doneOf(steps: readonly RearrangeStep[], asItWas: boolean): Rearranging {
  const now = asItWas ? [] : steps.filter(({ off }) => !off);
  return {
    motifs: now
      .filter((step): step is KeptMotif => step.kind === 'motif')
      .map(({ kind: _, id: __, ...rest }) => rest),
    bends: now
      .filter((step): step is KeptBend => step.kind === 'bend')
      .map(({ kind: _, id: __, ...rest }) => rest),
  };
}

/** Where a ridge is bent at first: a little, over a third of it. */
const FIRST_BEND = { lift: 0.03, reach: 0.25 };

interface Writing {
  doc: Y.Doc | null;
  picture: PictureView | null;
  steps: readonly RearrangeStep[];
  choose(id: string): void;
  say(sentence: string | null): void;
}

/** Everything that writes; without the room or the leave to write nothing happens. */
function writersOf({ doc, picture, steps, choose, say }: Writing) {
  const added = (
    name: string,
    put: (id: string, common: { pictureId: string; name: string; order: string; off: false }) => void,
  ) => {
    if (!doc || !picture) return false;
    if (!hasRoomForStep(doc)) {
      say(words.full(MOST_STEPS));
      return false;
    }
    const id = uuidv4();
    const order = orderBetween(steps.at(-1)?.order ?? null, null) ?? 'V';
    put(id, { pictureId: picture.id, name: name.slice(0, 80), order, off: false });
    choose(id);
    say(null);
    return true;
  };
  return {
    lift(outline: readonly FractionPoint[], planeId: string | null, name: string): boolean {
      if (!doc || !picture) return false;
      const trouble = troubleOf(() => checkMotif(outline, picture));
      say(trouble);
      if (trouble) return false;
      return added(name, (id, common) =>
        putMotif(doc, id, {
          ...common,
          outline: [...outline],
          planeId,
          move: [0, 0],
          scale: 1,
          mirrored: false,
        }),
      );
    },
    bend(outline: readonly FractionPoint[], name: string): void {
      const line = ridgeLine(outline);
      const middle = line[Math.floor(line.length / 2)];
      if (!doc || !middle) return;
      added(name, (id, common) => putBend(doc, id, { ...common, line, at: middle[0], ...FIRST_BEND }));
    },
    change(step: RearrangeStep, change: StepChange): void {
      const next = { ...step, ...change } as RearrangeStep;
      const trouble = next.kind === 'motif' ? troubleOf(() => checkPlaced(next)) : null;
      say(trouble);
      if (doc && !trouble) changeStep(doc, step, change);
    },
    remove: (step: RearrangeStep) => doc && removeStep(doc, step),
    shift(step: RearrangeStep, by: -1 | 1): void {
      const to = steps.findIndex(({ id }) => id === step.id) + by;
      const [low, high] = by < 0 ? [steps[to - 1], steps[to]] : [steps[to], steps[to + 1]];
      const order = orderBetween(low?.order ?? null, high?.order ?? null);
      if (doc && steps[to] && order) changeStep(doc, step, { order });
    },
    setAsItWas: (asItWas: boolean) => doc && picture && setAsItWas(doc, picture.id, asItWas),
  };
}

export function RearrangingProvider({ children }: { children: ReactNode }) {
  const { may } = useBoardLive();
  const { picture } = usePlanChoice();
  const doc = useRoomDocument('setup');
  const [chosenId, choose] = useState<string | null>(null);
  const [moving, move] = useState<StepChange | null>(null);
  const [sentence, say] = useState<string | null>(null);
  const [drawing, setDrawing] = useState(false);
  const [lit, setLit] = useState(false);
  const written = doc && picture ? stepsIn.of(doc, picture.id) : NONE;
  const asItWas = doc !== null && picture !== null && readAsItWas(doc, picture.id);
  const steps = useMemo(
    () =>
      written.map((step) =>
        moving && step.id === chosenId ? ({ ...step, ...moving } as RearrangeStep) : step,
      ),
    [written, moving, chosenId],
  );
  const done = useMemo(() => doneOf(steps, asItWas), [steps, asItWas]);
  const here = useMemo<RearrangingHere>(() => {
    const write = writersOf({ doc: may.setup ? doc : null, picture, steps: written, choose, say });
    return {
      ...{ steps, done, asItWas, choose, move, sentence, drawing, setDrawing, lit, setLit, ...write },
      moving: moving !== null,
      chosen: steps.find(({ id }) => id === chosenId) ?? null,
      change(step, change) {
        write.change(written.find(({ id }) => id === step.id) ?? step, change);
        move(null);
      },
    };
  }, [may.setup, doc, picture, written, steps, done, asItWas, sentence, drawing, lit, moving, chosenId]);
  return <Context value={here}>{children}</Context>;
}
