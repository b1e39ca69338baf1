'use client';
/**
 * One picture with everything over it: outlines, marks, hands of others, and the hand that the tool gives.
 *
 * In the flow: easel -> [easel-picture] -> stage with its layers.
 */
import { useCallback, useMemo } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import { useEasel } from './easel-state.tsx';
import { type Frame, plainFrame } from './frame.ts';
import type { Hand } from './hand.ts';
import { Loupe } from './loupe.tsx';
import { GrowingStroke, MarkLayer } from './mark-layer.tsx';
import { drawnPlanes, OutlineLayer } from './outline-layer.tsx';
import { DraftOutline, OutlinePoints } from './outline-points.tsx';
import { PhotoLayer } from './photo-layer.tsx';
import { NewPin } from './pin-words.tsx';
import { planePlaces } from './plane-places.ts';
import { PointerLayer } from './pointer-layer.tsx';
import { Stage } from './stage.tsx';
import { useDrawHand, useLookHand, usePinHand } from './use-mark-hands.ts';
import { useOutlineHand } from './use-outline-hand.ts';
import { usePhotoHand } from './use-photo-hand.ts';

interface EaselPictureProps {
  picture: PictureView;
  label: string;
  /** The squared frame when the painting is to be shown squared; null = as photographed. */
  squared: Frame | null;
  clip?: string;
  swipe(towards: 'left' | 'right'): void;
}

export function EaselPicture({ picture, label, squared, clip, swipe }: EaselPictureProps) {
  const { tool, planeId, markId, setMarkId, linesShown, marksShown } = useTools();
  const { planes, outlinesOf, marks } = useBoardLive();
  const { draft, setPin } = useEasel();
  const { width, height } = picture;
  const plain = useMemo(() => plainFrame({ width, height }), [width, height]);
  const frame = squared && tool !== 'photo' ? squared : plain;
  const aspect = frame.size.height / frame.size.width;
  const outlines = outlinesOf(picture.id);
  const drawn = useMemo(() => drawnPlanes(planes, outlines, frame), [planes, outlines, frame]);
  const places = useMemo(
    () => planePlaces(drawn.map(({ plane, outline }) => ({ planeId: plane.id, outline }))),
    [drawn],
  );
  const own = useMemo(
    () => marks.filter((mark) => mark.pictureId === picture.id && mark.kind !== 'reply'),
    [marks, picture.id],
  );
  const badge = (planeId && places.badges.get(planeId)) || null;
  const outlining = useOutlineHand(picture, frame, badge && frame.original(badge));
  const drawing = useDrawHand(picture);
  const photo = usePhotoHand(picture);
  const hands: Record<typeof tool, Hand> = {
    look: useLookHand(),
    outline: outlining.hand,
    mark: usePinHand(picture),
    draw: drawing.hand,
    photo: photo.hand,
  };
  const choose = useCallback(
    (id: string) => {
      setPin(null);
      setMarkId(id);
    },
    [setPin, setMarkId],
  );
  const plane = planes.find(({ id }) => id === planeId);
  const stored = planeId ? outlines.get(planeId) : undefined;
  const drafting = tool === 'outline' && draft?.pictureId === picture.id ? draft : null;
  const pulledOutline = outlining.pulled?.now ?? stored;
  const editing = tool === 'outline' && plane && pulledOutline && !drafting;
  return (
    <Stage
      picture={picture}
      frame={frame}
      hand={hands[tool]}
      label={label}
      swipe={swipe}
      {...(clip ? { clip } : {})}
    >
      {linesShown || tool === 'outline' ? (
        <OutlineLayer
          drawn={drawn}
          badges={places.badges}
          aspect={aspect}
          chosenId={planeId}
          hiddenId={editing || drafting ? planeId : null}
        />
      ) : null}
      {drafting && plane ? <DraftOutline draft={drafting} plane={plane} /> : null}
      {editing ? (
        <OutlinePoints
          plane={plane}
          outline={pulledOutline}
          badge={badge}
          chosenPoint={outlining.chosenPoint}
          choosePoint={outlining.choosePoint}
          keep={outlining.keep}
        />
      ) : null}
      {outlining.pulled?.touch && outlining.pulled.at !== null ? (
        <Loupe point={outlining.pulled.hand} />
      ) : null}
      {tool === 'photo' && picture.kind === 'painting' ? <PhotoLayer {...photo} /> : null}
      {marksShown ? (
        <MarkLayer marks={own} frame={frame} aspect={aspect} chosenId={markId} choose={choose} />
      ) : null}
      <GrowingStroke points={drawing.growing} frame={frame} aspect={aspect} />
      <NewPin />
      <PointerLayer />
    </Stage>
  );
}
