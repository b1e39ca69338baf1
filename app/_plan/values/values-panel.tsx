'use client';
/**
 * The photograph or a kept frame in two to five values: thumbnails side by side, cuts that can be moved, one to paint from.
 *
 * In the flow: parts -> [values-panel] -> thumbnails, cuts, stage, sheet to take away.
 */
import { useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { Choice } from '#app/_look/choice.tsx';
import { ShareBar } from '#app/_look/share-bar.tsx';
import { Button } from '#app/_ui/button.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import { VALUE_NUMBERS, type ValueNumber } from '#server/core/look/value-numbers.ts';
import type { PlannedValues, ValuePicture } from '#server/core/look/value-plan.ts';
import type { Box } from '#server/core/plan/crops/crop-scene.ts';
import { lookWords } from '#words/look.ts';
import { planWords } from '#words/plan.ts';
import { valueWords as words } from '#words/plan-values.ts';
import { FrameChoice } from '../frame-choice.tsx';
import { useKeptFrames } from '../kept-frames.ts';
import { usePlanChoice } from '../plan-choice.tsx';
import { CutScale } from './cut-scale.tsx';
import { TakeSheet } from './take-sheet.tsx';
import { useValuePicture } from './use-value-picture.ts';
import { useValuePlans, type ValuePlans } from './use-value-plans.ts';
import { ValueCanvas } from './value-canvas.tsx';
import styles from './values.module.css';
import { ValuesOnStage } from './values-on-stage.tsx';

const WHOLE: Box = [0, 0, 1, 1];
/** Sigma of the softening, share of the frame's long side: leaves join; small trees join; masses alone stay. */
const SQUINTS = [0.004, 0.012, 0.026] as const;

export function ValuesPanel() {
  const { picture } = usePlanChoice();
  return picture ? <Values picture={picture} /> : null;
}

function Values({ picture }: { picture: PictureView }) {
  const { chosen } = useKeptFrames();
  const [squint, setSquint] = useState<number>(SQUINTS[0]);
  const [looked, setLooked] = useState<ValueNumber | null>(null);
  const [hidden, setHidden] = useState(false);
  const box = chosen?.box ?? WHOLE;
  const values = useValuePicture(picture.id, box, squint);
  const plans = useValuePlans(chosen?.id ?? picture.id, values.picture);
  const count = looked ?? plans.settled ?? 3;
  const plan = plans.byNumber?.get(count) ?? null;
  return (
    <>
      {values.picture && plan && !hidden ? (
        <ValuesOnStage box={box} picture={values.picture} plan={plan} label={words.names[count]} />
      ) : null}
      <div className={styles.controls}>
        <FrameChoice />
        <Choice<number>
          label={words.eyes}
          options={SQUINTS.map((value, at) => ({ value, name: words.closed[at] ?? '' }))}
          chosen={squint}
          onChoose={setSquint}
        />
      </div>
      {values.failed ? <p role="alert">{words.failed}</p> : null}
      <Thumbnails picture={values.picture} plans={plans} count={count} onLook={setLooked} />
      {plan ? (
        <OnePlan
          {...{ count, plans, plan, hidden }}
          counts={values.picture?.counts ?? null}
          onHide={() => setHidden(!hidden)}
        />
      ) : null}
      {values.picture && plans.byNumber ? (
        <TakeSheet picture={values.picture} plans={plans} name={chosen?.name ?? planWords.whole} />
      ) : null}
    </>
  );
}

interface OnePlanProps {
  count: ValueNumber;
  plans: ValuePlans;
  plan: PlannedValues;
  counts: Uint32Array | null;
  /** Whether the photograph is shown instead. */
  hidden: boolean;
  onHide(): void;
}

function OnePlan({ count, plans, plan, counts, hidden, onHide }: OnePlanProps) {
  const { may } = useBoardLive();
  return (
    <section className={styles.part} aria-labelledby="value-cuts">
      <h2 id="value-cuts">{words.names[count]}</h2>
      <CutScale count={count} plans={plans} plan={plan} counts={counts} />
      <ShareBar label={words.shares} groups={plan.groups} names={lookWords.values.names[count]} />
      <p className={styles.quiet}>{words.how}</p>
      <div className={styles.acts}>
        {may.setup ? <Settle count={count} plans={plans} /> : null}
        <Button weight="word" disabled={!plans.moved(count)} onClick={() => plans.afresh(count)}>
          {words.again}
        </Button>
        <Button weight="word" onClick={onHide}>
          {hidden ? words.show : words.hide}
        </Button>
      </div>
    </section>
  );
}

function Settle({ count, plans }: { count: ValueNumber; plans: ValuePlans }) {
  if (plans.settled !== count) {
    return <Button onClick={() => plans.settle(count)}>{words.settle}</Button>;
  }
  return (
    <>
      <b>{words.settled}</b>
      <Button weight="word" onClick={() => plans.settle(null)}>
        {words.unsettle}
      </Button>
    </>
  );
}

interface ThumbnailsProps {
  picture: ValuePicture | null;
  plans: ValuePlans;
  count: ValueNumber;
  onLook(count: ValueNumber): void;
}

function Thumbnails({ picture, plans, count, onLook }: ThumbnailsProps) {
  if (!picture || !plans.byNumber) return <p className={styles.quiet}>{words.waiting}</p>;
  return (
    <ul className={styles.thumbnails} aria-label={words.plans}>
      {VALUE_NUMBERS.map((number) => {
        const plan = plans.byNumber?.get(number);
        return plan ? (
          <li key={number}>
            <button type="button" aria-pressed={number === count} onClick={() => onLook(number)}>
              <ValueCanvas picture={picture} plan={plan} label="" />
              <span>{words.names[number]}</span>
              {plans.settled === number ? <b>{words.sheet.settled}</b> : null}
            </button>
          </li>
        ) : null;
      })}
    </ul>
  );
}
