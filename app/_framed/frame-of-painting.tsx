'use client';
/** Chooses which kept frame a painting is made after. In the flow: board or plan page -> [frame-of-painting] -> painting's room. */
import { ChoiceField } from '#app/_ui/field.tsx';
import { frameWords } from '#words/plan-frames.ts';
import { useFrameOf } from './use-frame-of.ts';

const { kept, belongs } = frameWords;

interface FrameOfPaintingProps {
  paintingId: string;
  label: string;
}

export function FrameOfPainting({ paintingId, label }: FrameOfPaintingProps) {
  const { known, frames, frame, set } = useFrameOf(paintingId);
  return (
    <ChoiceField
      label={label}
      value={frame?.id ?? ''}
      disabled={!known}
      {...(known ? {} : { hint: belongs.waiting })}
      onChange={(event) => set(event.target.value || null)}
    >
      <option value="">{kept.whole}</option>
      {frames.map(({ id, name }) => (
        <option key={id} value={id}>
          {name}
        </option>
      ))}
    </ChoiceField>
  );
}
