'use client';
/**
 * What a sketch over a painting is painted with: a colour from the pictures or a neutral grey, its width and cover.
 *
 * In the flow: mark controls -> [sketch-controls] -> mark desk.
 */
import type { ReactNode } from 'react';
import bar from '#app/_easel/easel-bar.module.css';
import { Button } from '#app/_ui/button.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import { greyOf } from '#server/core/look/nine-steps.ts';
import { markWords } from '#words/marks.ts';
import { AllowSketch } from './allow-sketch.tsx';
import styles from './controls.module.css';
import { useMarkDesk } from './mark-desk.tsx';
import { useSketchRefusal } from './use-sketch-refusal.ts';

const { sketch: words } = markWords;

/** Values of the neutral greys, in steps: dark to light. */
const GREYS = [1, 3, 5, 7, 9] as const;
const greyHex = (value: number) => greyOf(value * 10);
const WIDTH = { min: 0.002, max: 0.1, step: 0.002 } as const;
const COVER = { min: 0.05, max: 1, step: 0.05 } as const;

interface SketchControlsProps {
  painting: PictureView | null;
  /** In the place of the sentence while a stroke is set point by point. */
  acts: ReactNode;
}

export function SketchControls({ painting, acts }: SketchControlsProps) {
  const { taking, layer, setLayer } = useMarkDesk();
  const refusal = useSketchRefusal(painting);
  if (!painting || refusal !== null) {
    return (
      <>
        <p className={bar.sentence}>{refusal}</p>
        {painting ? <AllowSketch painting={painting} /> : null}
      </>
    );
  }
  return (
    <>
      <div className={styles.line}>
        {acts ?? <p className={bar.sentence}>{taking ? words.taking : markWords.how.sketch}</p>}
      </div>
      <Colours />
      <Brush />
      {/* Always there, so that nothing moves under the hand with the first stroke. */}
      <Button weight="word" disabled={!layer} onClick={() => setLayer(null)}>
        {words.another}
      </Button>
    </>
  );
}

function Colours() {
  const { paint, setPaint, taking, setTaking } = useMarkDesk();
  const isGrey = GREYS.some((value) => greyHex(value) === paint.hex);
  const swatch = (hex: string, label: string) => (
    <button
      key={label}
      type="button"
      className={styles.swatch}
      style={{ background: hex }}
      aria-label={label}
      aria-pressed={paint.hex === hex}
      onClick={() => setPaint({ ...paint, hex })}
    />
  );
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would draw its own frame; these are a few swatches in a row.
    <div className={styles.colours} role="group" aria-label={words.colour}>
      {GREYS.map((value) => swatch(greyHex(value), words.grey(value)))}
      {isGrey ? null : swatch(paint.hex, words.taken)}
      <Button weight="quiet" aria-pressed={taking} onClick={() => setTaking(!taking)}>
        {words.take}
      </Button>
    </div>
  );
}

function Brush() {
  const { paint, setPaint } = useMarkDesk();
  const range = (
    key: 'width' | 'opacity',
    label: string,
    { min, max, step }: typeof WIDTH | typeof COVER,
  ) => (
    <label className={styles.range}>
      {label}
      <input
        type="range"
        {...{ min, max, step }}
        value={paint[key]}
        onChange={(event) => setPaint({ ...paint, [key]: Number(event.target.value) })}
      />
    </label>
  );
  return (
    <div className={styles.colours}>
      {range('width', words.width, WIDTH)}
      {range('opacity', words.cover, COVER)}
    </div>
  );
}
