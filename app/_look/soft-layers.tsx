'use client';
/**
 * What the looking tools lay over a picture: the squinted picture, or the picture in a few values.
 *
 * In the flow: stage -> [soft layers] -> screen. Drawn from the small copy, whatever the zoom, since nothing finer is
 * left in them. What is squared is squared first, so that no wall runs into the painting.
 */
import { useEffect, useRef, useState } from 'react';
import { late } from '#app/_ui/late.tsx';
import styles from './layers.module.css';
import { useLooking } from './look-state.tsx';
import { useLookWish, useSquint } from './use-squint.ts';

const ValueMap = late(() => import('./value-map.tsx').then((module) => module.ValueMap));

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
  if (valuesShown) return <ValueMap pictureId={soft.pictureId} squared={soft.squared} />;
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
