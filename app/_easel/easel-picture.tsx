'use client';
/**
 * One picture with everything over it: outlines, marks, hands of others, and the hand that the tool gives.
 *
 * In the flow: easel -> [easel-picture] -> stage with its layers.
 */
import { useCallback, useMemo } from 'react';
import { useCarriedOn } from '#app/_carry/use-carried-on.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { carryHold, outlineHold } from '#app/_live/presence.ts';
import { useLooking } from '#app/_look/look-state.tsx';
import { isPointing } from '#app/_look/pointing.ts';
import { MarkLayer } from '#app/_marks/mark-layer.tsx';
import { GrowingMark } from '#app/_marks/mark-lines.tsx';
import { useMarkLabel } from '#app/_marks/use-mark-words.ts';
import { useDrawsOver, useShownMarks } from '#app/_marks/use-shown-marks.ts';
import { usePhotoDesk } from '#app/_photo/photo-desk.tsx';
import { ProposedLayer, useProposedOn } from '#app/_propose/proposed-layer.tsx';
import { useQuieted } from '#app/_together/use-quieted.ts';
import { late } from '#app/_ui/late.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';
import { type PlanePlaces, planePlaces } from '#server/core/planes/plane-places.ts';
import { words } from '#words/easel.ts';
import { useEasel } from './easel-state.tsx';
import { FocusLayer } from './focus-layer.tsx';
import { type Frame, mirroredFrame, plainFrame } from './frame.ts';
import styles from './layers.module.css';
import { type DrawnPlane, drawnPlanes, OutlineLayer, type OutlineLayerProps } from './outline-layer.tsx';
import { PointerLayer } from './pointer-layer.tsx';
import { Stage } from './stage.tsx';
import { type ToolHand, useToolHand } from './use-tool-hand.ts';

// Each tool brings its hand and what it draws when it is first taken up.
const CarryLayer = late(() => import('#app/_carry/carry-layer.tsx').then((module) => module.CarryLayer));
const CarryPlaces = late(() => import('#app/_carry/carry-layer.tsx').then((module) => module.CarryPlaces));
const CaptureOverlay = late(() =>
  import('#app/_photo/capture-overlay.tsx').then((module) => module.CaptureOverlay),
);
const LookWork = late(() => import('#app/_look/look-work.tsx').then((module) => module.LookWork));
const MarkWork = late(() => import('#app/_marks/mark-work.tsx').then((module) => module.MarkWork), 'first');
const OutlineWork = late(() => import('./outline-work.tsx').then((module) => module.OutlineWork));
const PhotoWork = late(() => import('#app/_photo/photo-work.tsx').then((module) => module.PhotoWork));

interface EaselPictureProps {
  picture: PictureView;
  label: string;
  /** The squared frame when the painting is to be shown squared; null = as photographed. */
  squared: Frame | null;
  /** Whether it is shown as it is measured, squared and in the light of its cards. */
  righted: boolean;
  clip?: string;
  swipe(towards: 'left' | 'right'): void;
}

export function EaselPicture({ picture, label, squared, righted, clip, swipe }: EaselPictureProps) {
  const { tool, outlining: outliningAs, planeId, linesShown } = useTools();
  const { planes } = useBoardLive();
  const { width, height } = picture;
  const plain = useMemo(() => plainFrame({ width, height }), [width, height]);
  const frame = useShownFrame(squared ?? plain);
  const aspect = frame.size.height / frame.size.width;
  const outlines = useOutlinesNow(picture.id);
  const drawn = useMemo(() => drawnPlanes(planes, outlines, frame), [planes, outlines, frame]);
  const places = useMemo(
    () => planePlaces(drawn.map(({ plane, outline }) => ({ planeId: plane.id, outline }))),
    [drawn],
  );
  const badge = (planeId && places.badges.get(planeId)) || null;
  const { hand, handNow, there, give } = useToolHand(tool);
  const proposed = useProposedOn(picture.id);
  const carried = useCarriedOn(picture.id);
  const stored = carried ? drawn.filter(({ plane }) => !carried.has(plane.id)) : drawn;
  const layer = {
    ...{ drawn: stored, badges: places.badges, aspect, chosenId: planeId, hiddenId: null },
    whole: tool !== 'outline' || outliningAs === 'line',
  };
  return (
    <Stage {...{ picture, frame, righted, hand, handNow, label, swipe }} {...(clip ? { clip } : {})}>
      {righted ? <OverlayIfShown /> : null}
      {proposed && tool !== 'photo' ? (
        <ProposedLayer grouping={proposed} frame={frame} aspect={aspect} />
      ) : (linesShown && tool !== 'photo' && tool !== 'outline') || (tool === 'outline' && !there) ? (
        <OutlineLayer {...layer} />
      ) : null}
      <ToolWork {...{ picture, frame, badge, give }} layer={proposed ? null : layer} />
      <Marks {...{ picture, frame, aspect }} />
      <FocusLayer />
      <GrowingMark />
      <HeldNames pictureId={picture.id} drawn={drawn} badges={places.badges} />
      <PointerLayer />
    </Stage>
  );
}

interface ToolWorkProps {
  picture: PictureView;
  frame: Frame;
  badge: FractionPoint | null;
  layer: OutlineLayerProps | null;
  give: ToolHand['give'];
}

/** What the tool in hand draws; with it comes its hand. */
function ToolWork({ picture, frame, badge, layer, give }: ToolWorkProps) {
  const { tool } = useTools();
  const { heldBy } = useBoardLive();
  const work = { picture, give };
  return (
    <>
      {tool === 'outline' ? <OutlineWork {...work} {...{ frame, badge, layer }} /> : null}
      {tool === 'photo' ? <PhotoWork {...work} /> : null}
      {tool === 'mark' ? <MarkWork {...work} /> : null}
      {isPointing(tool) ? <LookWork {...work} tool={tool} /> : null}
      {tool === 'carry' ? <CarryPlaces {...work} /> : heldBy(carryHold(picture.id)) ? <CarryLayer /> : null}
    </>
  );
}

/** The marks over a picture, where the tool in hand leaves room for them. */
function Marks({ picture, frame, aspect }: { picture: PictureView; frame: Frame; aspect: number }) {
  const { tool, markId, setMarkId, marksShown } = useTools();
  const { setPin } = useEasel();
  const quieted = useQuieted();
  const marks = useShownMarks(picture.id);
  const labelOf = useMarkLabel(picture.id);
  const passing = useDrawsOver();
  const choose = useCallback(
    (id: string) => {
      setPin(null);
      setMarkId(id);
    },
    [setPin, setMarkId],
  );
  if (!marksShown || quieted || tool === 'outline' || tool === 'photo') return null;
  return (
    <MarkLayer
      {...{ marks, frame, aspect, labelOf, choose, passing }}
      kind={picture.kind}
      chosenId={markId}
    />
  );
}

/** Where light ran out, over the picture put right; its script comes once it is switched on. */
function OverlayIfShown() {
  const { overlayShown } = usePhotoDesk();
  return overlayShown ? <CaptureOverlay /> : null;
}

/** The outlines as they are stored, with those that are being painted over as the hand has them. */
function useOutlinesNow(pictureId: string): ReadonlyMap<string, Outline> {
  const { outlining } = useTools();
  const { outlinesOf } = useBoardLive();
  const { moving } = useEasel();
  const stored = outlinesOf(pictureId);
  const painted = moving?.pictureId === pictureId && outlining !== 'line' ? moving.outlines : null;
  return useMemo(() => (painted ? new Map([...stored, ...painted]) : stored), [stored, painted]);
}

/** The frame as one looks at it now: mirrored or not. */
function useShownFrame(frame: Frame): Frame {
  const { mirrored } = useLooking();
  return useMemo(() => (mirrored ? mirroredFrame(frame) : frame), [mirrored, frame]);
}

/** Beside the number of each outline that somebody else is moving: their name. */
function HeldNames(held: { pictureId: string; drawn: readonly DrawnPlane[]; badges: PlanePlaces['badges'] }) {
  const { heldBy } = useBoardLive();
  return held.drawn.map(({ plane }) => {
    const place = held.badges.get(plane.id);
    const holder = heldBy(outlineHold(held.pictureId, plane.id));
    return holder && place ? (
      <span
        key={plane.id}
        className={styles.heldName}
        style={{ left: `${place[0] * 100}%`, top: `${place[1] * 100}%` }}
        role="status"
      >
        {words.outline.movedBy(holder)}
      </span>
    ) : null;
  });
}
