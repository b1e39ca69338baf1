'use client';
/**
 * One picture with everything over it: outlines, marks, hands of others, and the hand that the tool gives.
 *
 * In the flow: easel -> [easel-picture] -> stage with its layers.
 */
import { useCallback, useMemo } from 'react';
import { CarryLayer, useCarriedOn } from '#app/_carry/carry-layer.tsx';
import { useCarryHand } from '#app/_carry/use-carry-hand.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PlaneView } from '#app/_live/board-live-types.ts';
import { outlineHold } from '#app/_live/presence.ts';
import { LookMarks } from '#app/_look/look-marks.tsx';
import { useLooking } from '#app/_look/look-state.tsx';
import { useGuessHand } from '#app/_look/use-guess-hand.ts';
import { usePatchHand } from '#app/_look/use-patch-hand.ts';
import { MarkLayer } from '#app/_marks/mark-layer.tsx';
import { GrowingMark } from '#app/_marks/mark-lines.tsx';
import { NewPlace } from '#app/_marks/mark-words.tsx';
import { useMarkHand } from '#app/_marks/use-mark-hand.ts';
import { useMarkLabel } from '#app/_marks/use-mark-words.ts';
import { useDrawsOver, useShownMarks } from '#app/_marks/use-shown-marks.ts';
import { CaptureOverlay } from '#app/_photo/capture-overlay.tsx';
import { PhotoLayer } from '#app/_photo/photo-layer.tsx';
import { type PhotoHand, usePhotoHand } from '#app/_photo/use-photo-hand.ts';
import { ProposedLayer, useProposedOn } from '#app/_propose/proposed-layer.tsx';
import { useQuieted } from '#app/_together/use-quieted.ts';
import { words } from '#app/_words/en-easel.ts';
import { useTools } from '#app/_workspace/tools.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';
import { AheadLayer } from './ahead-layer.tsx';
import { type OutlineDraft, useEasel } from './easel-state.tsx';
import { FocusLayer } from './focus-layer.tsx';
import { type Frame, mirroredFrame, plainFrame } from './frame.ts';
import type { Hand } from './hand.ts';
import styles from './layers.module.css';
import { Loupe } from './loupe.tsx';
import { type DrawnPlane, drawnPlanes, OutlineLayer } from './outline-layer.tsx';
import { DraftOutline, OutlinePoints } from './outline-points.tsx';
import { type PlanePlaces, planePlaces } from './plane-places.ts';
import { PointerLayer } from './pointer-layer.tsx';
import { Stage } from './stage.tsx';
import { useAirHand } from './use-air-hand.ts';
import { useFocusHand } from './use-focus-hand.ts';
import { useLookHand } from './use-look-hand.ts';
import { useMayOutline } from './use-may-outline.ts';
import { type OutlineHand, useOutlineHand } from './use-outline-hand.ts';

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
  const { tool, outlining: outliningAs, planeId, markId, setMarkId, linesShown, marksShown } = useTools();
  const quieted = useQuieted();
  const { planes } = useBoardLive();
  const { setPin, setSentence } = useEasel();
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
  const own = useShownMarks(picture.id);
  const labelOf = useMarkLabel(picture.id);
  const passing = useDrawsOver();
  const badge = (planeId && places.badges.get(planeId)) || null;
  const outlining = useOutlineHand(picture, frame, badge && frame.original(badge));
  const photo = usePhotoHand(picture);
  const look = useLookHand();
  const hands: Record<typeof tool, Hand> = {
    look,
    outline: outlining.hand,
    mark: useMarkHand(picture),
    photo: photo.hand,
    patch: usePatchHand(picture.id, setSentence),
    guess: useGuessHand(picture.id, setSentence),
    air: useAirHand(picture),
    focus: useFocusHand(picture),
    carry: useCarryHand(picture),
  };
  const choose = useCallback(
    (id: string) => {
      setPin(null);
      setMarkId(id);
    },
    [setPin, setMarkId],
  );
  const inHand = useOutlineInHand(picture, outlining);
  const proposed = useProposedOn(picture.id);
  const carried = useCarriedOn(picture.id);
  const stored = carried ? drawn.filter(({ plane }) => !carried.has(plane.id)) : drawn;
  return (
    <Stage
      picture={picture}
      frame={frame}
      righted={righted}
      hand={hands[tool]}
      label={label}
      swipe={swipe}
      {...(clip ? { clip } : {})}
    >
      <OfPhoto picture={picture} righted={righted} photo={photo} />
      {proposed && tool !== 'photo' ? (
        <ProposedLayer grouping={proposed} frame={frame} aspect={aspect} />
      ) : (linesShown && tool !== 'photo') || tool === 'outline' ? (
        <OutlineLayer
          drawn={stored}
          badges={places.badges}
          aspect={aspect}
          chosenId={planeId}
          whole={tool !== 'outline' || outliningAs === 'line'}
          hiddenId={drawnByHand(inHand)}
        />
      ) : null}
      <OutlineInHand inHand={inHand} badge={badge} outlining={outlining} />
      {marksShown && !quieted && tool !== 'outline' && tool !== 'photo' ? (
        <MarkLayer
          marks={own}
          {...{ frame, aspect, labelOf, choose }}
          kind={picture.kind}
          chosenId={markId}
          passing={passing}
        />
      ) : null}
      <CarryLayer />
      <FocusLayer />
      <GrowingMark />
      <NewPlace />
      <HeldNames pictureId={picture.id} drawn={drawn} badges={places.badges} />
      <LookMarks />
      <PointerLayer />
    </Stage>
  );
}

interface OfPhotoProps {
  picture: PictureView;
  righted: boolean;
  photo: PhotoHand;
}

/** What is seen of the photo itself: where light ran out, or the handles that put it right. */
function OfPhoto({ picture, righted, photo }: OfPhotoProps) {
  const { tool } = useTools();
  if (righted) return <CaptureOverlay />;
  return tool === 'photo' && picture.kind === 'painting' ? <PhotoLayer {...photo} /> : null;
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

interface InHand {
  plane: PlaneView;
  /** A new outline, or null. */
  draft: OutlineDraft | null;
  /** The stored outline as the hand has it now, or null. */
  outline: Outline | null;
}

/** The outline that the hand works on in this picture, or null. */
function useOutlineInHand(picture: PictureView, { pulled }: OutlineHand): InHand | null {
  const { tool, planeId, outlining } = useTools();
  const { planes, outlinesOf } = useBoardLive();
  const { draft } = useEasel();
  const plane = planes.find(({ id }) => id === planeId);
  const allowed = useMayOutline(picture);
  if (tool !== 'outline' || !plane || !allowed) return null;
  if (draft?.pictureId === picture.id) return { plane, draft, outline: null };
  if (outlining !== 'line') return null;
  const outline = pulled?.now ?? outlinesOf(picture.id).get(plane.id);
  return outline ? { plane, draft: null, outline } : null;
}

/** The plane whose outline the hand draws itself; one that is being split stays under its line. */
const drawnByHand = (inHand: InHand | null) =>
  inHand && inHand.draft?.way !== 'split' ? inHand.plane.id : null;

interface OutlineInHandProps {
  inHand: InHand | null;
  badge: FractionPoint | null;
  outlining: OutlineHand;
}

function OutlineInHand({ inHand, badge, outlining }: OutlineInHandProps) {
  const { tool } = useTools();
  const { pulled, chosenPoint, choosePoint, keep } = outlining;
  if (tool !== 'outline') return null;
  const { plane, draft, outline } = inHand ?? {};
  return (
    <>
      <AheadLayer />
      {plane && draft ? <DraftOutline draft={draft} plane={plane} /> : null}
      {plane && outline ? (
        <OutlinePoints {...{ plane, outline, badge, chosenPoint, choosePoint, keep }} />
      ) : null}
      {pulled?.touch && pulled.at !== null ? <Loupe point={pulled.hand} /> : null}
    </>
  );
}
