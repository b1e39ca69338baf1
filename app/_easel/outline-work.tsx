'use client';
/**
 * The outline tool on one picture: its hand, all outlines, and the one that is worked on.
 *
 * In the flow: easel-picture, loaded late -> [outline-work] -> stage.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PlaneView } from '#app/_live/board-live-types.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';
import { AheadLayer } from './ahead-layer.tsx';
import { type OutlineDraft, useEasel } from './easel-state.tsx';
import type { Frame } from './frame.ts';
import { Loupe } from './loupe.tsx';
import { OutlineLayer, type OutlineLayerProps } from './outline-layer.tsx';
import { DraftOutline, OutlinePoints } from './outline-points.tsx';
import { useMayOutline } from './use-may-outline.ts';
import { type OutlineHand, useOutlineHand } from './use-outline-hand.ts';
import { type ToolHand, useGiveHand } from './use-tool-hand.ts';

interface OutlineWorkProps {
  picture: PictureView;
  frame: Frame;
  /** Where the chosen plane's number stands, in 0..1 of what is shown; null = nowhere. */
  badge: FractionPoint | null;
  /** The outlines as they are drawn while none is in hand; null while others are looked at. */
  layer: OutlineLayerProps | null;
  give: ToolHand['give'];
}

export function OutlineWork({ picture, frame, badge, layer, give }: OutlineWorkProps) {
  const outlining = useOutlineHand(picture, frame, badge && frame.original(badge));
  useGiveHand(give, outlining.hand);
  const inHand = useOutlineInHand(picture, outlining);
  const { pulled, chosenPoint, choosePoint, keep } = outlining;
  const { plane, draft, outline } = inHand ?? {};
  return (
    <>
      {layer ? <OutlineLayer {...layer} hiddenId={drawnByHand(inHand)} /> : null}
      <AheadLayer />
      {plane && draft ? <DraftOutline draft={draft} plane={plane} /> : null}
      {plane && outline ? (
        <OutlinePoints {...{ plane, outline, badge, chosenPoint, choosePoint, keep }} />
      ) : null}
      {pulled?.touch && pulled.at !== null ? <Loupe point={pulled.hand} /> : null}
    </>
  );
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
  const { planeId, outlining } = useTools();
  const { planes, outlinesOf } = useBoardLive();
  const { draft } = useEasel();
  const plane = planes.find(({ id }) => id === planeId);
  const allowed = useMayOutline(picture);
  if (!plane || !allowed) return null;
  if (draft?.pictureId === picture.id) return { plane, draft, outline: null };
  if (outlining !== 'line') return null;
  const outline = pulled?.now ?? outlinesOf(picture.id).get(plane.id);
  return outline ? { plane, draft: null, outline } : null;
}

/** The plane whose outline the hand draws itself; one that is being split stays under its line. */
const drawnByHand = (inHand: InHand | null) =>
  inHand && inHand.draft?.way !== 'split' ? inHand.plane.id : null;
