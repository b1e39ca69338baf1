'use client';
/** A value plan in its place on the photograph; what lies outside of its frame is veiled. In the flow: values-panel -> stage. */
import type { PlannedValues, ValuePicture } from '#server/core/look/value-plan.ts';
import type { Box } from '#server/core/plan/crops/crop-scene.ts';
import { InPlaceOfPicture, OnStage, useStage } from '../stage/stage-context.tsx';
import { ValueCanvas } from './value-canvas.tsx';
import styles from './values.module.css';

interface ValuesOnStageProps {
  box: Box;
  picture: ValuePicture;
  plan: PlannedValues;
  label: string;
}

export function ValuesOnStage({ box, picture, plan, label }: ValuesOnStageProps) {
  const { widthPx, heightPx } = useStage();
  const [x0, y0, x1, y1] = box;
  const whole = x0 === 0 && y0 === 0 && x1 === 1 && y1 === 1;
  const inner = `M${x0 * widthPx} ${y0 * heightPx}V${y1 * heightPx}H${x1 * widthPx}V${y0 * heightPx}Z`;
  return (
    <>
      <InPlaceOfPicture>
        <div className={styles.field}>
          <div
            className={styles.place}
            style={{
              ...{ left: `${x0 * 100}%`, top: `${y0 * 100}%` },
              ...{ width: `${(x1 - x0) * 100}%`, height: `${(y1 - y0) * 100}%` },
            }}
          >
            <ValueCanvas picture={picture} plan={plan} label={label} />
          </div>
        </div>
      </InPlaceOfPicture>
      {whole ? null : (
        <OnStage>
          <path className={styles.veil} d={`M0 0H${widthPx}V${heightPx}H0Z ${inner}`} />
        </OnStage>
      )}
    </>
  );
}
