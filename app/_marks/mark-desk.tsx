'use client';
/**
 * What the marking hand holds and which marks this one screen shows. Nothing here is seen by other people.
 *
 * In the flow: tray, keys, bar, talk <-> [mark-desk] -> hands, pictures, talk.
 */
import {
  createContext,
  type Dispatch,
  type ReactNode,
  type SetStateAction,
  useContext,
  useMemo,
  useState,
} from 'react';
import type { MarkKind, MarkPaint } from '#server/core/live/layout.ts';
import { greyOf } from '#server/core/look/nine-steps.ts';
import { GrowingStore } from './growing-store.ts';
import { EVERYTHING, type MarkFilter } from './mark-filter.ts';

/** In the order of the row of kinds. */
export const HAND_KINDS = ['pin', 'stroke', 'arrow', 'outline', 'text', 'patch', 'sketch'] as const;
export type HandKind = (typeof HAND_KINDS)[number] & MarkKind;

export function nextKind(kind: HandKind): HandKind {
  return HAND_KINDS[(HAND_KINDS.indexOf(kind) + 1) % HAND_KINDS.length] ?? 'pin';
}

/** The middle one of the greys. */
const FIRST_PAINT: MarkPaint = { hex: greyOf(50), width: 0.016, opacity: 0.8 };

export interface MarkDesk {
  kind: HandKind;
  setKind(kind: HandKind): void;
  /** What a sketch is painted with. */
  paint: MarkPaint;
  setPaint: Dispatch<SetStateAction<MarkPaint>>;
  /** Whether the next tap takes a colour to paint with. */
  taking: boolean;
  setTaking(taking: boolean): void;
  /** The sketch that further strokes join; null = the next stroke begins one. */
  layer: { pictureId: string; id: string } | null;
  setLayer(layer: MarkDesk['layer']): void;
  sketchesShown: boolean;
  setSketchesShown(shown: boolean): void;
  filter: MarkFilter;
  setFilter(filter: MarkFilter): void;
  growing: GrowingStore;
}

const MarkDeskContext = createContext<MarkDesk | null>(null);

/** @throws Error outside `MarkDeskProvider`: a bug. */
export function useMarkDesk(): MarkDesk {
  const desk = useContext(MarkDeskContext);
  if (!desk) throw new Error('useMarkDesk is used outside MarkDeskProvider.');
  return desk;
}

export function MarkDeskProvider({ children }: { children: ReactNode }) {
  const [growing] = useState(() => new GrowingStore());
  const [kind, chooseKind] = useState<HandKind>('pin');
  const [paint, setPaint] = useState(FIRST_PAINT);
  const [taking, setTaking] = useState(false);
  const [layer, setLayer] = useState<MarkDesk['layer']>(null);
  const [sketchesShown, setSketchesShown] = useState(true);
  const [filter, setFilter] = useState(EVERYTHING);
  const desk = useMemo<MarkDesk>(
    () => ({
      kind,
      setKind(next) {
        growing.set(null);
        setTaking(false);
        setLayer(null);
        chooseKind(next);
      },
      ...{ paint, setPaint, taking, setTaking, layer, setLayer },
      ...{ sketchesShown, setSketchesShown, filter, setFilter, growing },
    }),
    [kind, paint, taking, layer, sketchesShown, filter, growing],
  );
  return <MarkDeskContext value={desk}>{children}</MarkDeskContext>;
}
