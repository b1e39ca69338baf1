'use client';
/**
 * Which is looked at: the whole photograph or one of its kept frames.
 *
 * In the flow: kept-frames -> [frame-choice] -> plan-choice. Nothing where no frame was kept.
 */
import { ChoiceField } from '#app/_ui/field.tsx';
import { planWords } from '#words/plan.ts';
import { useKeptFrames } from './kept-frames.ts';
import { usePlanChoice } from './plan-choice.tsx';

export function FrameChoice() {
  const { frames } = useKeptFrames();
  const { frameId, setFrameId } = usePlanChoice();
  if (frames.length === 0) return null;
  return (
    <ChoiceField
      label={planWords.of}
      value={frameId ?? ''}
      onChange={(event) => setFrameId(event.target.value || null)}
    >
      <option value="">{planWords.whole}</option>
      {frames.map(({ id, name }) => (
        <option key={id} value={id}>
          {name}
        </option>
      ))}
    </ChoiceField>
  );
}
