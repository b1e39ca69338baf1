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
  useEffect,
  useMemo,
  useState,
} from 'react';
import { Lenses } from '#app/_together/lenses.ts';
import { useOwn } from '#app/_together/use-own.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';
import { AheadStore } from './ahead-store.ts';
import { OutlineLine } from './outline-line.ts';
import { ViewStore } from './view-store.ts';

/**
 * ridge = one line from side to side, closed round the picture's edge; round = all the way round;
 * split = a line across a plane that has its outline already.
 */
export type OutlineWay = 'ridge' | 'round' | 'split';

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
  /** How the pictures lie on this screen. */
  lenses: Lenses;
  /** The worker that follows ridges and edits outlines. */
  outlineLine: OutlineLine;
  /** What lies ahead of the hand. */
  ahead: AheadStore;
  draft: OutlineDraft | null;
  setDraft: Dispatch<SetStateAction<OutlineDraft | null>>;
  /** Whether a new outline bends onto the ridge between two clicks. */
  following: boolean;
  setFollowing(following: boolean): void;
  /** How a new outline is drawn. */
  way: Exclude<OutlineWay, 'split'>;
  setWay(way: Exclude<OutlineWay, 'split'>): void;
  /** A pin, or words on the picture, that has a place and waits for what it says. */
  pin: { pictureId: string; point: FractionPoint; kind: 'pin' | 'text' } | null;
  setPin(pin: EaselState['pin']): void;
  /** Whether a painting is shown put right, where its corners or cards are set. */
  squared: boolean;
  setSquared(squared: boolean): void;
  /** Outlines under the hand by plane, not stored yet, for the instant preview; null = none. */
  moving: { pictureId: string; outlines: ReadonlyMap<string, Outline> } | null;
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

export function EaselStateProvider({ boardId, children }: { boardId: string; children: ReactNode }) {
  const [{ views, lenses, ahead, outlineLine }] = useState(() => ({
    views: new ViewStore(),
    lenses: new Lenses(),
    ahead: new AheadStore(),
    outlineLine: new OutlineLine(boardId),
  }));
  useEffect(() => () => outlineLine.close(), [outlineLine]);
  const [draft, setDraft] = useState<OutlineDraft | null>(null);
  const [following, setFollowing] = useState(true);
  const [way, setWay] = useState<EaselState['way']>('ridge');
  const [pin, setPin] = useState<EaselState['pin']>(null);
  const [squared, wantSquared] = useState(true);
  const { hand } = useTools();
  const setSquared = useOwn(hand, wantSquared);
  const [moving, setMoving] = useState<EaselState['moving']>(null);
  const [sentence, setSentence] = useState<string | null>(null);
  const easel = useMemo<EaselState>(
    () => ({
      ...{ views, lenses, ahead, outlineLine },
      ...{ draft, setDraft, following, setFollowing, way, setWay, pin, setPin },
      ...{ squared, setSquared, moving, setMoving, sentence, setSentence },
    }),
    [views, lenses, ahead, outlineLine, draft, following, way, pin, squared, moving, sentence, setSquared],
  );
  return <EaselContext value={easel}>{children}</EaselContext>;
}
