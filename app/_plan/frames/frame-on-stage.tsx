'use client';
/**
 * The frame on the photograph: what lies outside is veiled, corners and sides can be pulled by hand, touch and key.
 *
 * In the flow: working frame -> [frame-on-stage] -> pull and settle. Where it cuts something its edge is marked.
 */
import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { Box } from '#server/core/plan/crops/crop-scene.ts';
import { FRAME_PARTS, type FramePart, movedFrame, pulledFrame } from '#server/core/plan/crops/edit-frame.ts';
import { frameWords } from '#words/plan-frames.ts';
import { OnStage, OverPicture, useStage } from '../stage/stage-context.tsx';
import styles from './frames.module.css';
import type { Working } from './use-working-frame.ts';

const { hand: words } = frameWords;
/** Shares of the picture that an arrow key moves by. */
const STEP = 0.005;
const FAR = 0.05;
const ARROWS: Record<string, readonly [number, number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
const PLACES: Record<FramePart, readonly [number, number]> = {
  ...{ nw: [0, 0], n: [0.5, 0], ne: [1, 0], e: [1, 0.5] },
  ...{ se: [1, 1], s: [0.5, 1], sw: [0, 1], w: [0, 0.5] },
};

interface FrameOnStageProps {
  working: Working;
  box: Box;
  /** Boxes of what the frame cuts. */
  cut: readonly Box[];
}

export function FrameOnStage({ working, box, cut }: FrameOnStageProps) {
  const hand = useFrameHand(working, box);
  const [x0, y0, x1, y1] = box;
  const percent = (share: number) => `${share * 100}%`;
  return (
    <>
      <OnStage>
        <FrameLines box={box} cut={cut} />
      </OnStage>
      <OverPicture>
        <button
          type="button"
          className={styles.body}
          style={{
            ...{ left: percent(x0), top: percent(y0) },
            ...{ width: percent(x1 - x0), height: percent(y1 - y0) },
          }}
          aria-label={words.body}
          {...hand(null)}
        />
        {FRAME_PARTS.map((part) => {
          const [across, down] = PLACES[part];
          return (
            <button
              key={part}
              type="button"
              className={styles.handle}
              data-part={part}
              style={{ left: percent(x0 + across * (x1 - x0)), top: percent(y0 + down * (y1 - y0)) }}
              aria-label={words.part(part)}
              {...hand(part)}
            />
          );
        })}
      </OverPicture>
    </>
  );
}

/** What a hand or key does to a part of the frame; null = the whole of it. */
function useFrameHand({ pull, settle, ratio }: Working, box: Box) {
  const { fractionAt } = useStage();
  const begun = useRef<{ at: readonly [number, number]; box: Box } | null>(null);
  const after = (part: FramePart | null, from: Box, dx: number, dy: number): Box =>
    part === null ? movedFrame(from, dx, dy) : pulledFrame(from, part, [dx, dy], ratio);
  const pulledTo = (part: FramePart | null, event: PointerEvent): Box | null => {
    if (!begun.current) return null;
    const [x, y] = fractionAt(event.clientX, event.clientY);
    return after(part, begun.current.box, x - begun.current.at[0], y - begun.current.at[1]);
  };
  return (part: FramePart | null) => ({
    onPointerDown(event: PointerEvent<HTMLElement>) {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      begun.current = { at: fractionAt(event.clientX, event.clientY), box };
    },
    onPointerMove(event: PointerEvent) {
      const to = pulledTo(part, event);
      if (to) pull(to);
    },
    onPointerUp(event: PointerEvent) {
      const to = pulledTo(part, event);
      begun.current = null;
      if (to) settle(to);
    },
    onPointerCancel() {
      if (begun.current) settle(begun.current.box);
      begun.current = null;
    },
    onKeyDown(event: KeyboardEvent) {
      const arrow = ARROWS[event.key];
      if (!arrow) return;
      event.preventDefault();
      const by = event.shiftKey ? FAR : STEP;
      settle(after(part, box, arrow[0] * by, arrow[1] * by));
    },
  });
}

/** Stretches of the frame's sides that run through a thing, as from x, y to x, y. */
function cutsOf([x0, y0, x1, y1]: Box, [left, top, right, bottom]: Box): Box[] {
  const [from, to] = [Math.max(x0, left), Math.min(x1, right)];
  const [above, below] = [Math.max(y0, top), Math.min(y1, bottom)];
  const stretches: Box[] = [];
  if (left < x0 && right > x0) stretches.push([x0, above, x0, below]);
  if (left < x1 && right > x1) stretches.push([x1, above, x1, below]);
  if (top < y0 && bottom > y0) stretches.push([from, y0, to, y0]);
  if (top < y1 && bottom > y1) stretches.push([from, y1, to, y1]);
  return stretches;
}

function FrameLines({ box, cut }: { box: Box; cut: readonly Box[] }) {
  const { widthPx, heightPx } = useStage();
  const [x0, x1] = [box[0] * widthPx, box[2] * widthPx];
  const [y0, y1] = [box[1] * heightPx, box[3] * heightPx];
  const outside = `M0 0H${widthPx}V${heightPx}H0Z M${x0} ${y0}V${y1}H${x1}V${y0}Z`;
  const edge = { x: x0, y: y0, width: Math.max(0, x1 - x0), height: Math.max(0, y1 - y0) };
  return (
    <g className={styles.lines}>
      <path className={styles.veil} d={outside} />
      {['casing', 'core'].map((line) => (
        <rect key={line} className={styles[line]} {...edge} />
      ))}
      {cut
        .flatMap((thing) => cutsOf(box, thing))
        .map(([ax, ay, bx, by]) => (
          <g key={`${ax} ${ay} ${bx} ${by}`}>
            {['cutCasing', 'cutCore'].map((line) => (
              <line
                key={line}
                className={styles[line]}
                {...{ x1: ax * widthPx, y1: ay * heightPx, x2: bx * widthPx, y2: by * heightPx }}
              />
            ))}
          </g>
        ))}
    </g>
  );
}
