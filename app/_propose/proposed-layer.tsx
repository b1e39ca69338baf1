'use client';
/** A grouping over a picture of the easel, drawn like outlines that are stored. In the flow: propose-desk -> [layer]. */
import { useMemo } from 'react';
import type { Frame } from '#app/_easel/frame.ts';
import { type DrawnPlane, OutlineLayer } from '#app/_easel/outline-layer.tsx';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import type { Grouping } from './groupings.ts';
import { useProposeDesk } from './propose-desk.tsx';

/** The grouping that is looked at on this picture, or null. */
export function useProposedOn(pictureId: string): Grouping | null {
  const { shown } = useProposeDesk();
  return shown?.pictureId === pictureId ? shown.grouping : null;
}

interface ProposedLayerProps {
  grouping: Grouping;
  frame: Frame;
  aspect: number;
}

export function ProposedLayer({ grouping, frame, aspect }: ProposedLayerProps) {
  const { drawn, badges } = useMemo(() => layerOf(grouping, frame), [grouping, frame]);
  return <OutlineLayer drawn={drawn} badges={badges} aspect={aspect} chosenId={null} hiddenId={null} whole />;
}

function layerOf(grouping: Grouping, { shown }: Frame) {
  const badges = new Map<string, FractionPoint>();
  const drawn = grouping.map(({ name, kind, outline, numberAt }, at): DrawnPlane => {
    const id = `proposed-${at}`;
    if (numberAt) badges.set(id, shown(numberAt));
    const plane = { id, name, kind, tilt: null, number: at + 1, unreliable: null };
    return { plane, outline: outline.map(shown) };
  });
  return { drawn, badges };
}
