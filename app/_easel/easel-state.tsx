'use client';
/**
 * What the parts of the easel share while the hand works: the view, an outline being drawn, a pin being set.
 *
 * Nothing here is seen by others. In the flow: easel -> [easel-state] -> stages, bar under the pictures.
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
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';
import { ViewStore } from './view-store.ts';

/** ridge = one line from side to side, closed round the picture's edge; round = all the way round. */
export type OutlineWay = 'ridge' | 'round';

export interface OutlineDraft {
  pictureId: string;
  planeId: string;
  way: OutlineWay;
  points: FractionPoint[];
  /** The points that the hand set; those between them were followed or drawn in one go. */
  stops: FractionPoint[];
}

export interface EaselState {
  views: ViewStore;
  draft: OutlineDraft | null;
  setDraft: Dispatch<SetStateAction<OutlineDraft | null>>;
  /** Whether a new outline bends onto the ridge between two clicks. */
  following: boolean;
  setFollowing(following: boolean): void;
  way: OutlineWay;
  setWay(way: OutlineWay): void;
  /** A pin that has a place and waits for its words. */
  pin: { pictureId: string; point: FractionPoint } | null;
  setPin(pin: EaselState['pin']): void;
  /** Whether a painting is shown put right, where its corners or cards are set. */
  squared: boolean;
  setSquared(squared: boolean): void;
  /** The outline under the hand, not stored yet, for the instant preview; null = none. */
  moving: { pictureId: string; planeId: string; outline: Outline } | null;
  setMoving(moving: EaselState['moving']): void;
  /** A sentence about what the hand just tried, or null. */
  sentence: string | null;
  setSentence(sentence: string | null): void;
}

const EaselContext = createContext<EaselState | null>(null);

/** @throws Error outside `EaselStateProvider`: a bug. */
export function useEasel(): EaselState {
  const easel = useContext(EaselContext);
  if (!easel) throw new Error('useEasel is used outside the easel.');
  return easel;
}

export function EaselStateProvider({ children }: { children: ReactNode }) {
  const [views] = useState(() => new ViewStore());
  const [draft, setDraft] = useState<OutlineDraft | null>(null);
  const [following, setFollowing] = useState(true);
  const [way, setWay] = useState<OutlineWay>('ridge');
  const [pin, setPin] = useState<EaselState['pin']>(null);
  const [squared, setSquared] = useState(true);
  const [moving, setMoving] = useState<EaselState['moving']>(null);
  const [sentence, setSentence] = useState<string | null>(null);
  const easel = useMemo<EaselState>(
    () => ({
      ...{ views, draft, setDraft, following, setFollowing, way, setWay, pin, setPin },
      ...{ squared, setSquared, moving, setMoving, sentence, setSentence },
    }),
    [views, draft, following, way, pin, squared, moving, sentence],
  );
  return <EaselContext value={easel}>{children}</EaselContext>;
}
