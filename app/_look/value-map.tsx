'use client';
/**
 * The picture in a few values, over itself. Drawn from the small copy, whatever the zoom, since nothing finer is left.
 *
 * In the flow: soft layers, loaded late -> [value map] -> screen.
 */
import { useEffect, useMemo, useRef } from 'react';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { luminanceFromLightness } from '#server/core/colour/lab.ts';
import { codeOfLinear } from '#server/core/colour/transfer.ts';
import { groupOfCodes } from '#server/core/look/value-groups.ts';
import styles from './layers.module.css';
import { useLookPixels, useValuesOf } from './use-look-pixels.ts';
import { LEAST_SQUINT, useSquint } from './use-squint.ts';

/** RGBA of each code, little-endian as canvases are, so that a pixel is written at once. */
function paletteOf(cuts: readonly number[], lightnesses: readonly number[]): Uint32Array {
  const greys = lightnesses.map((lightness) => codeOfLinear(luminanceFromLightness(lightness)));
  return Uint32Array.from(groupOfCodes(cuts), (group) => {
    const grey = greys[group] ?? 0;
    return (0xff000000 | (grey << 16) | (grey << 8) | grey) >>> 0;
  });
}

export function ValueMap({ pictureId, squared }: { pictureId: string; squared: boolean }) {
  const { referenceId } = useTools();
  const { cuts, groups } = useValuesOf(pictureId, referenceId ?? pictureId);
  const shown = useLookPixels(pictureId, { squint: useSquint() ?? LEAST_SQUINT, squared });
  const canvas = useRef<HTMLCanvasElement>(null);
  const palette = useMemo(
    () =>
      groups &&
      paletteOf(
        cuts,
        groups.map(({ lightness }) => lightness),
      ),
    [cuts, groups],
  );
  const { pixels } = shown;
  useEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (!context || !pixels || !palette) return;
    const { widthPx, heightPx } = pixels.lit;
    if (context.canvas.width !== widthPx) context.canvas.width = widthPx;
    if (context.canvas.height !== heightPx) context.canvas.height = heightPx;
    const image = context.createImageData(widthPx, heightPx);
    const words = new Uint32Array(image.data.buffer);
    const { codes } = pixels;
    for (let pixel = 0; pixel < words.length; pixel++) words[pixel] = palette[codes[pixel] ?? 0] ?? 0;
    context.putImageData(image, 0, 0);
  }, [pixels, palette]);
  return <canvas ref={canvas} className={styles.soft} data-drawn={palette ? '' : undefined} />;
}
