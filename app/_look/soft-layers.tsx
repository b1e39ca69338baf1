'use client';
/**
 * What the looking tools lay over a picture: the squinted picture, or the picture in a few values.
 *
 * In the flow: stage -> [soft layers] -> screen. Drawn from the small copy, whatever the zoom, since nothing finer is
 * left in them. What is squared is squared first, so that no wall runs into the painting.
 */
import { useEffect, useMemo, useRef, useState } from 'react';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { luminanceFromLightness } from '#server/core/colour/lab.ts';
import { codeOfLinear } from '#server/core/colour/transfer.ts';
import { groupOfCodes } from '#server/core/look/value-groups.ts';
import styles from './layers.module.css';
import { useLooking } from './look-state.tsx';
import { LEAST_SQUINT, useLookPixels, useLookWish, useSquint, useValuesOf } from './use-look-pixels.ts';

interface Soft {
  pictureId: string;
  /** Shown in the light of its cards: then that is what is squinted at. */
  righted: boolean;
  /** Shown squared by its corners. */
  squared: boolean;
}

export function SoftLayers(soft: Soft) {
  const { valuesShown } = useLooking();
  const squint = useSquint();
  useTellsWhatIsShown(soft);
  if (valuesShown) return <ValueMap {...soft} />;
  return squint === null ? null : <Squinted {...soft} squint={squint} />;
}

/** Guesses are held against what is on the screen: so it is known whether that is the photo put right. */
function useTellsWhatIsShown({ pictureId, righted }: Soft): void {
  const { rightedNow } = useLooking();
  useEffect(() => {
    rightedNow.set(pictureId, righted);
  }, [rightedNow, pictureId, righted]);
}

function Squinted({ pictureId, righted, squared, squint }: Soft & { squint: number }) {
  const { line } = useLooking();
  const wish = useLookWish(pictureId, { squint, squared, asPosted: !righted });
  const canvas = useRef<HTMLCanvasElement>(null);
  const [drawn, setDrawn] = useState(false);
  useEffect(() => {
    if (!wish) return;
    let wanted = true;
    line.squinted(wish).then(
      (bitmap) => {
        const context = canvas.current?.getContext('2d');
        if (!wanted || !context) return;
        context.canvas.width = bitmap.width;
        context.canvas.height = bitmap.height;
        context.drawImage(bitmap, 0, 0);
        setDrawn(true);
      },
      () => undefined, // The browser's own blur stays; the next press asks again.
    );
    return () => {
      wanted = false;
    };
  }, [line, wish]);
  return (
    <canvas
      ref={canvas}
      className={styles.soft}
      data-coming={drawn ? undefined : ''}
      data-drawn={drawn || undefined}
    />
  );
}

/** RGBA of each code, little-endian as canvases are, so that a pixel is written at once. */
function paletteOf(cuts: readonly number[], lightnesses: readonly number[]): Uint32Array {
  const greys = lightnesses.map((lightness) => codeOfLinear(luminanceFromLightness(lightness)));
  return Uint32Array.from(groupOfCodes(cuts), (group) => {
    const grey = greys[group] ?? 0;
    return (0xff000000 | (grey << 16) | (grey << 8) | grey) >>> 0;
  });
}

function ValueMap({ pictureId, squared }: Soft) {
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
