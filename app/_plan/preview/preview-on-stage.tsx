'use client';
/**
 * The picture as it is planned, in place of the photograph: rearranged, and in the planned light; with an edge to draw over
 * it, and one key that shows the photograph alone.
 *
 * In the flow: rearranging + planned ladder -> preview worker -> [preview-on-stage] -> stage, weight and shapes. IO: a worker.
 */
import { useEffect, useMemo, useRef, useState } from 'react';
import { pictureAddress } from '#app/_api/client.ts';
import { losslessAddress } from '#app/_easel/picture-copies.tsx';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { lettersOn } from '#app/_ui/letters.ts';
import type { Rearranging } from '#server/core/contract/rearranging.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import { WHOLE } from '#server/core/plan/in-frame.ts';
import type { PlanGround } from '#server/core/plan/ladder/plan-ground.ts';
import { rearrangeWords as words } from '#words/plan-rearrange.ts';
import { usePlannedLadder } from '../ladder/planned-ladder.tsx';
import { usePlanChoice } from '../plan-choice.tsx';
import { useRearranging } from '../rearrange/rearranging.tsx';
import { InPlaceOfPicture, UnderStage } from '../stage/stage-context.tsx';
import { useRearranged } from '../weight/rearranged.tsx';
import styles from './preview.module.css';
import { PreviewLine, type PreviewWish } from './preview-line.ts';
import { PreviewRow } from './preview-row.tsx';
import { Wipe } from './wipe.tsx';

const NO_PLANES: PlanGround = { planes: [], air: null, box: WHOLE };

/** What is to be painted, or null where the photograph alone is wanted. */
function useWanted(
  picture: PictureView | null,
): { wish: PreviewWish; shown: boolean; compared: boolean } | null {
  const { board, ready } = useBoardLive();
  const { part } = usePlanChoice();
  const { ground, wish } = usePlannedLadder();
  const { done, lit, moving } = useRearranging();
  const isLit = ground !== null && (part === 'ladder' || (part === 'rearrange' && lit && !moving));
  const wanted = useMemo<PreviewWish | null>(() => {
    if (!picture || !ready || !(isLit || hasSteps(done))) return null;
    const whole = (address: string) => new URL(address, location.href).href;
    return {
      shown: whole(pictureAddress(board.id, picture.id, 1280)),
      small: whole(losslessAddress(board.id, picture.id)),
      ground: ground ?? NO_PLANES,
      steps: done,
      wish: isLit ? wish : null,
    };
  }, [board.id, picture, ready, isLit, ground, done, wish]);
  if (!wanted) return null;
  const compared = part === 'rearrange' || part === 'ladder';
  // What is weighed is the picture as it is rearranged, whole.
  return { wish: wanted, shown: compared || part === 'weight', compared };
}

type Said = { by: 'webgl' | 'plain' } | { sentence: string } | null;

/** The worker's line and what it said last; another photograph has a canvas of its own. */
function usePainting(pictureId: string | undefined, wish: PreviewWish | undefined) {
  const { setRaster } = useRearranged();
  const [line, setLine] = useState<PreviewLine | null>(null);
  const [said, setSaid] = useState<Said>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the photograph is why it opens anew.
  useEffect(() => {
    const opened = new PreviewLine(
      (answer) => {
        setSaid('by' in answer ? { by: answer.by } : answer);
        if ('small' in answer) setRaster(answer.small);
      },
      () => setSaid({ sentence: words.failed }),
    );
    setLine(opened);
    setSaid(null);
    return () => {
      opened.close();
      setRaster(null);
    };
  }, [pictureId, setRaster]);
  useEffect(() => {
    if (wish) line?.ask(wish);
    else setRaster(null);
  }, [line, wish, setRaster]);
  return { line, said };
}

export function PreviewOnStage() {
  const { picture, part } = usePlanChoice();
  const wanted = useWanted(picture);
  const { line, said } = usePainting(picture?.id, wanted?.wish);
  if (!wanted?.shown || !line) return null;
  // Whoever compares light sees half of each at first; whoever moves a motif sees all of what they do.
  const first = part === 'ladder' ? 0.5 : 0;
  if (wanted.compared) return <Compared key={part} {...{ line, said, first }} wish={wanted.wish} />;
  return (
    <InPlaceOfPicture>
      <Painted line={line} said={said} wish={wanted.wish} hidden={false} from={0} />
    </InPlaceOfPicture>
  );
}

interface ShownProps {
  line: PreviewLine;
  said: Said;
  wish: PreviewWish;
}

function hasSteps({ motifs, bends }: Rearranging): boolean {
  return motifs.length + bends.length > 0;
}

/** @param first Where the edge stands at first, share of the width. */
function Compared({ line, said, wish, first }: ShownProps & { first: number }) {
  const [edge, setEdge] = useState(first);
  const [alone, setAlone] = useState(false);
  useAloneKey(() => setAlone((before) => !before));
  const isPainted = said !== null && 'by' in said;
  return (
    <>
      <InPlaceOfPicture>
        <Painted {...{ line, said, wish }} hidden={alone} from={edge} />
      </InPlaceOfPicture>
      {isPainted && !alone ? <Wipe edge={edge} setEdge={setEdge} /> : null}
      <UnderStage>
        <PreviewRow
          sentence={said === null ? words.working : 'sentence' in said ? said.sentence : null}
          {...{ alone, setAlone }}
          isLit={wish.wish !== null}
          isRearranged={hasSteps(wish.steps)}
        />
      </UnderStage>
    </>
  );
}

interface PaintedProps extends ShownProps {
  hidden: boolean;
  /** Share of the width from which on it is shown; left of it lies the photograph. */
  from: number;
}

/** `data-by` says how it was painted, for whoever tests it. */
function Painted({ line, said, wish, hidden, from }: PaintedProps) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    place.current?.append(line.canvas);
    return () => line.canvas.remove();
  }, [line]);
  const by = said !== null && 'by' in said ? said.by : '';
  return (
    <div
      ref={place}
      className={styles.painted}
      role="img"
      aria-label={wish.wish ? words.plannedLight : words.rearranged}
      data-by={by}
      style={{
        clipPath: `inset(0 0 0 ${from * 100}%)`,
        visibility: hidden || by === '' ? 'hidden' : 'visible',
      }}
    />
  );
}

/** `O` shows the photograph alone, and again the plan; not while somebody writes. */
function useAloneKey(turn: () => void): void {
  const latest = useRef(turn);
  latest.current = turn;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key.toLowerCase() !== 'o' || event.ctrlKey || event.metaKey || event.altKey) return;
      const at = event.target;
      const writes =
        at instanceof HTMLElement &&
        at.closest('input:not([type="checkbox"], [type="range"]), textarea, select');
      if (!writes && lettersOn()) latest.current();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}
