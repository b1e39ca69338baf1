'use client';
/**
 * The part of the plan where the picture is rearranged: lifting a motif, bending a ridge, and the steps taken so far.
 *
 * In the flow: rearranging -> [rearrange-panel] -> setup room; the hands on the stage are shown while this part is.
 */
import { useEffect, useId, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Button } from '#app/_ui/button.tsx';
import { rearrangeWords as words } from '#words/plan-rearrange.ts';
import { usePlanChoice } from '../plan-choice.tsx';
import { BendHand } from './bend-hand.tsx';
import { LoopHand } from './loop-hand.tsx';
import { MotifHand } from './motif-hand.tsx';
import styles from './rearrange.module.css';
import { useRearranging } from './rearranging.tsx';
import { StepDetail } from './step-detail.tsx';
import { StepRow } from './step-row.tsx';

export function RearrangePanel() {
  const { may } = useBoardLive();
  const { steps, sentence, chosen, drawing, lit, setLit, setDrawing, choose } = useRearranging();
  // Whoever leaves this part leaves its hands too.
  useEffect(
    () => () => {
      setDrawing(false);
      choose(null);
    },
    [setDrawing, choose],
  );
  return (
    <>
      <p>{words.about}</p>
      {may.setup ? <Begin /> : null}
      <p role="alert" className={styles.trouble}>
        {sentence}
      </p>
      <section className={styles.group} aria-labelledby="rearrange-steps">
        <h3 id="rearrange-steps">{words.steps}</h3>
        {steps.length === 0 ? <p className={styles.quiet}>{words.noSteps}</p> : null}
        <ol className={styles.steps}>
          {steps.map((step, at) => (
            <StepRow key={step.id} step={step} isFirst={at === 0} isLast={at === steps.length - 1}>
              {chosen?.id === step.id ? <StepDetail step={chosen} /> : null}
            </StepRow>
          ))}
        </ol>
      </section>
      <div className={styles.group}>
        <label className={styles.tick}>
          <input type="checkbox" checked={lit} onChange={({ target }) => setLit(target.checked)} />
          {words.lit}
        </label>
        {may.setup && steps.length > 0 ? <AsItWas /> : null}
      </div>
      {drawing ? <LoopHand /> : null}
      {may.setup && !drawing && chosen?.kind === 'motif' && !chosen.off ? <MotifHand motif={chosen} /> : null}
      {may.setup && !drawing && chosen?.kind === 'bend' && !chosen.off ? <BendHand bend={chosen} /> : null}
    </>
  );
}

function AsItWas() {
  const { asItWas, setAsItWas } = useRearranging();
  return (
    <label className={styles.tick}>
      <input type="checkbox" checked={asItWas} onChange={({ target }) => setAsItWas(target.checked)} />
      {words.asItWas}
    </label>
  );
}

/** By a loop on the picture, or by a plane that is outlined. */
function Begin() {
  const { drawing, setDrawing } = useRearranging();
  return (
    <div className={styles.group}>
      <div className={styles.row}>
        <Button weight="main" aria-pressed={drawing} onClick={() => setDrawing(!drawing)}>
          {drawing ? words.leave : words.lift}
        </Button>
        {drawing ? (
          <span role="status">
            {words.lifting} {words.liftKeys}
          </span>
        ) : null}
      </div>
      <ByPlane />
    </div>
  );
}

function ByPlane() {
  const { planes, outlinesOf } = useBoardLive();
  const { picture } = usePlanChoice();
  const { lift, bend } = useRearranging();
  const [planeId, setPlaneId] = useState('');
  const id = useId();
  const outlines = picture ? outlinesOf(picture.id) : null;
  const outlined = planes.filter((plane) => outlines?.has(plane.id));
  const plane = outlined.find((each) => each.id === planeId) ?? outlined.find(({ kind }) => kind !== 'sky');
  const outline = plane ? outlines?.get(plane.id) : undefined;
  if (!plane || !outline) return <p className={styles.quiet}>{words.noPlanes}</p>;
  return (
    <fieldset className={styles.row}>
      <legend className="unseen">{words.byPlane}</legend>
      <label htmlFor={id}>{words.plane}</label>
      <select id={id} value={plane.id} onChange={({ target }) => setPlaneId(target.value)}>
        {outlined.map((each) => (
          <option key={each.id} value={each.id}>
            {each.name}
          </option>
        ))}
      </select>
      <Button weight="word" onClick={() => lift(within(outline), plane.id, words.lifted(plane.name))}>
        {words.liftPlane}
      </Button>
      <Button weight="word" onClick={() => bend(outline, words.ridge(plane.name))}>
        {words.bend}
      </Button>
    </fieldset>
  );
}

/** Planes may be outlined a little beyond the picture; a motif lies in it. */
function within(outline: readonly (readonly [number, number])[]): [number, number][] {
  const held = (value: number) => Math.min(1, Math.max(0, value));
  return outline.map(([x, y]) => [held(x), held(y)]);
}
