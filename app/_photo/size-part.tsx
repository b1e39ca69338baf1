'use client';
/**
 * The size of the canvas: chosen from usual ones, those that fit the corners first, or typed.
 *
 * In the flow: corners -> core canvas sizes -> [size-part] -> live photo. Only the proportion counts.
 */
import { type FocusEvent, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { inField } from '#app/_words/figures.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { LivePhoto } from '#server/core/live/layout.ts';
import {
  CANVAS_SIZES,
  type CanvasSize,
  sizesThatFit,
  turnedLike,
} from '#server/core/rectify/canvas-sizes.ts';
import { sideRatioOf } from '#server/core/rectify/side-ratio.ts';
import { words } from '#words/photo.ts';
import styles from './leaf.module.css';
import { lengthOf } from './typed-number.ts';

/** Sizes that fit and are offered first. */
const FITTING = 8;
type Size = [number, number];

export function SizePart({ painting }: { painting: PictureView }) {
  const { photoOf, write } = useBoardLive();
  const photo = photoOf(painting.id);
  const size = photo.size ?? null;
  const keep = (next: Size | null) => write.setSize(painting.id, next);
  return (
    <section className={styles.part} aria-labelledby="size-title">
      <h2 id="size-title" className={styles.title}>
        {words.size.title}
      </h2>
      <p>{words.size.lead}</p>
      <UsualSizes ratio={ratioSeen(photo, painting)} size={size} keep={keep} />
      <SizeFields key={size?.join()} size={size} keep={keep} />
    </section>
  );
}

/** Width / height as the corners show it, or of the whole photo. */
function ratioSeen({ corners }: LivePhoto, { width, height }: PictureView): number {
  return corners ? sideRatioOf(corners, width, height, undefined).ratio : width / height;
}

interface SizeProps {
  size: Size | null;
  keep(size: Size | null): void;
}

function UsualSizes({ ratio, size, keep }: SizeProps & { ratio: number }) {
  const fitting = sizesThatFit(ratio).slice(0, FITTING);
  const sizeValue = (canvas: CanvasSize) => turnedLike(canvas, ratio).join('x');
  const option = (canvas: CanvasSize, group: string) => (
    <option key={`${group}${canvas.name}${sizeValue(canvas)}`} value={sizeValue(canvas)}>
      {words.size.option(canvas.name, ...turnedLike(canvas, ratio), canvas.unit)}
    </option>
  );
  const known = size && CANVAS_SIZES.some((canvas) => sizeValue(canvas) === size.join('x'));
  const choose = (value: string) => {
    const [width, height] = value.split('x').map(Number);
    if (value === '') keep(null);
    else if (width && height) keep([width, height]);
  };
  return (
    <select
      className={styles.input}
      aria-label={words.size.choose}
      value={size === null ? '' : known ? size.join('x') : 'typed'}
      onChange={(event) => choose(event.target.value)}
    >
      <option value="">{words.size.none}</option>
      {size && !known ? <option value="typed">{words.size.chosen}</option> : null}
      {fitting.length > 0 ? (
        <optgroup label={words.size.fitting}>{fitting.map((canvas) => option(canvas, 'fits'))}</optgroup>
      ) : null}
      <optgroup label={words.size.inches}>
        {CANVAS_SIZES.filter(({ unit }) => unit === 'in').map((canvas) => option(canvas, 'in'))}
      </optgroup>
      <optgroup label={words.size.french}>
        {CANVAS_SIZES.filter(({ unit }) => unit === 'cm').map((canvas) => option(canvas, 'cm'))}
      </optgroup>
    </select>
  );
}

function SizeFields({ size, keep }: SizeProps) {
  const [width, setWidth] = useState(size ? inField(size[0]) : '');
  const [height, setHeight] = useState(size ? inField(size[1]) : '');
  const [wrong, setWrong] = useState(false);
  const store = () => {
    const [w, h] = [lengthOf(width), lengthOf(height)];
    const emptied = width.trim() === '' && height.trim() === '';
    setWrong(!emptied && !(w && h));
    if (emptied && size) keep(null);
    if (w && h && (w !== size?.[0] || h !== size[1])) keep([w, h]);
  };
  /** Stored when the hand leaves both fields, so that half a size is never kept. */
  const onBlur = (event: FocusEvent<HTMLFieldSetElement>) => {
    if (!event.currentTarget.contains(event.relatedTarget)) store();
  };
  return (
    <fieldset className={styles.size} onBlur={onBlur}>
      <legend className="unseen">{words.size.title}</legend>
      <SizeField label={words.size.width} text={width} setText={setWidth} store={store} />
      <span aria-hidden="true">×</span>
      <SizeField label={words.size.height} text={height} setText={setHeight} store={store} />
      <p role="alert" className={styles.wrong}>
        {wrong ? words.size.wrong : null}
      </p>
    </fieldset>
  );
}

interface SizeFieldProps {
  label: string;
  text: string;
  setText(text: string): void;
  store(): void;
}

function SizeField({ label, text, setText, store }: SizeFieldProps) {
  return (
    <input
      className={styles.input}
      inputMode="decimal"
      aria-label={label}
      placeholder={label}
      value={text}
      onChange={(event) => setText(event.target.value)}
      onKeyDown={(event) => {
        if (event.key === 'Enter') store();
      }}
    />
  );
}
