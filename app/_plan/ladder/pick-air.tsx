'use client';
/**
 * Picking the colour of the air on the photograph: by a tap, or with a cross that is moved by key.
 *
 * In the flow: stage -> [pick-air] -> plan worker, mean of a small disc of the lossless copy -> wished air. IO: a worker.
 */
import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { losslessAddress } from '#app/_easel/picture-copies.tsx';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { QuestionLine } from '#app/_workers/question-line.ts';
import type { FractionPoint, LabColour } from '#server/core/contract/setup.ts';
import { planLadderWords } from '#words/plan-ladder.ts';
import { usePlanChoice } from '../plan-choice.tsx';
import { OnStage, OverPicture, useStage } from '../stage/stage-context.tsx';
import type { PlanAnswer, PlanQuestion } from './plan.worker.ts';
import styles from './planned.module.css';

const { air: words } = planLadderWords;
/** Share of a side that a key moves the cross by; with Shift a fifth of it. */
const STEP = 0.02;
const WAYS: Record<string, FractionPoint> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
/** Where the sky often meets the farthest ridge. */
const START: FractionPoint = [0.5, 0.3];

function within(value: number): number {
  return Math.min(1, Math.max(0, value));
}

/** Takes the colour at a point; the line to the worker lives as long as picking does. */
function useColourAt(take: (colour: LabColour) => void, say: (sentence: string) => void) {
  const { board } = useBoardLive();
  const { picture } = usePlanChoice();
  const [line] = useState(
    () =>
      new QuestionLine<PlanQuestion, PlanAnswer>(
        () => new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module' }),
      ),
  );
  useEffect(() => () => line.close(), [line]);
  return (point: FractionPoint) => {
    if (!picture) return;
    const address = new URL(losslessAddress(board.id, picture.id), location.href).href;
    line.ask({ ask: 'colour', address, point }).then(
      (answer) => {
        if ('colour' in answer && answer.colour) take(answer.colour);
        else say(words.outside);
      },
      () => say(words.unavailable),
    );
  };
}

interface PickAirProps {
  onPick(colour: LabColour): void;
  onLeave(): void;
}

export function PickAir({ onPick, onLeave }: PickAirProps) {
  const { fractionAt, widthPx, heightPx } = useStage();
  const [point, setPoint] = useState<FractionPoint | null>(null);
  const [sentence, setSentence] = useState<string>(words.picking);
  const place = useRef<HTMLButtonElement>(null);
  const takeAt = useColourAt(onPick, setSentence);
  useEffect(() => place.current?.focus(), []);
  const press = (event: KeyboardEvent) => {
    const way = WAYS[event.key];
    if (way) {
      const by = event.shiftKey ? STEP / 5 : STEP;
      setPoint((before) => {
        const [x, y] = before ?? START;
        return [within(x + way[0] * by), within(y + way[1] * by)];
      });
    } else if (event.key === 'Escape') onLeave();
    else if (event.key === 'Enter' || event.key === ' ') takeAt(point ?? START);
    else return;
    event.preventDefault();
  };
  return (
    <div className={styles.lines}>
      <p role="status">{sentence}</p>
      <p className={styles.quiet}>{words.pickKeys}</p>
      <Button weight="word" onClick={onLeave}>
        {words.leave}
      </Button>
      <OverPicture>
        <button
          ref={place}
          type="button"
          className={styles.pickPlace}
          aria-label={words.pickPoint}
          onKeyDown={press}
          onPointerMove={({ clientX, clientY }) => setPoint(fractionAt(clientX, clientY))}
          onClick={({ clientX, clientY, detail }) => {
            // A click made by a key has no place of its own.
            if (detail > 0) takeAt(fractionAt(clientX, clientY));
          }}
        />
      </OverPicture>
      {point ? (
        <OnStage>
          <g transform={`translate(${point[0] * widthPx} ${point[1] * heightPx})`}>
            <circle r="9" fill="none" stroke="var(--over-dark)" strokeWidth="3.5" />
            <circle r="9" fill="none" stroke="var(--over-light)" strokeWidth="1.5" />
          </g>
        </OnStage>
      ) : null}
    </div>
  );
}
