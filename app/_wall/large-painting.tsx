'use client';
/** One painting large, squared; tapped, it tells where. In the flow: beside -> [large-painting] -> one thing to try. */
import { type CSSProperties, type MouseEvent, useMemo } from 'react';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { isProblem } from '#server/core/problem.ts';
import { fractionMapper } from '#server/core/rectify/fraction-mapper.ts';
import { wallWords as words } from '#words/wall.ts';
import styles from './beside.module.css';
import { Drawn } from './drawn.tsx';
import { type Hung, largeSource, ratioOf, smallSource } from './hung.ts';
import { useAsked } from './use-asked.ts';
import type { WallLine } from './wall-line.ts';

interface LargePaintingProps {
  boardId: string;
  hung: Hung;
  line: WallLine;
  /** Where a remark will stand, 0..1 of the upright original, or null. */
  place: FractionPoint | null;
  /** Told where it was tapped, 0..1 of the upright original; null = it cannot be tapped. */
  onPlace: ((at: FractionPoint) => void) | null;
  clip?: string;
}

export function LargePainting({ boardId, hung, line, place, onPlace, clip }: LargePaintingProps) {
  const source = largeSource(boardId, hung, 1280);
  const asked = useAsked(source && JSON.stringify(source), () =>
    source ? line.bitmap(source, { ask: 'squared' }) : Promise.reject(new Error('Nothing is asked.')),
  );
  const small = smallSource(boardId, hung);
  const first = useAsked(small && JSON.stringify(small), () =>
    small ? line.bitmap(small, { ask: 'squared' }) : Promise.reject(new Error('Nothing is asked.')),
  );
  const mapper = useMapper(hung);
  const tap = (event: MouseEvent<HTMLElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const x = (event.clientX - box.left) / box.width;
    const y = (event.clientY - box.top) / box.height;
    // A key on the focused picture brings no place of its own.
    const inside = x >= 0 && x <= 1 && y >= 0 && y <= 1;
    onPlace?.(held(mapper.toOriginal(inside && event.detail > 0 ? [x, y] : [0.5, 0.5])));
  };
  const shown = place && mapper.toSquared(place);
  const frame: CSSProperties = {
    '--ratio': ratioOf(hung),
    ...(clip ? { clipPath: clip } : {}),
  } as CSSProperties;
  const inside = (
    <>
      {asked.failed ? <span className={styles.failed}>{words.failed}</span> : null}
      <Drawn
        bitmap={asked.answer ?? first.answer}
        label={words.pictureOf(hung.letter)}
        className={styles.drawn}
      />
      <span className={styles.letter}>{hung.letter}</span>
      {shown ? (
        <i className={styles.place} style={{ left: `${shown[0] * 100}%`, top: `${shown[1] * 100}%` }} />
      ) : null}
    </>
  );
  if (!onPlace) {
    return (
      <div className={styles.large} style={frame}>
        {inside}
      </div>
    );
  }
  return (
    <button type="button" className={styles.large} style={frame} title={words.thing.hint} onClick={tap}>
      {inside}
    </button>
  );
}

const held = ([x, y]: FractionPoint): FractionPoint => [
  Math.min(1, Math.max(0, x)),
  Math.min(1, Math.max(0, y)),
];

/** Corners that no flat picture can have square nothing. */
function useMapper({ data }: Hung) {
  const photo = data?.work?.photo;
  return useMemo(() => {
    try {
      return fractionMapper(photo);
    } catch (thrown) {
      if (isProblem(thrown)) return fractionMapper(undefined);
      throw thrown;
    }
  }, [photo]);
}
