'use client';
/**
 * How the eye is shown the pictures: squint, values, scale, mirror, patches. State of this one screen.
 *
 * Nothing here is seen by other people. In the flow: tray, keys, panels -> [look-state] -> pictures. The line to the
 * worker that computes lives and ends with it.
 */
import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useState } from 'react';
import type { OwnHand } from '#app/_together/own-hand.ts';
import { useOwn } from '#app/_together/use-own.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import type { Patch } from '#server/core/look/patch.ts';
import type { ValueNumber } from '#server/core/look/value-numbers.ts';
import { HoverStore } from './hover-store.ts';
import { LookLine } from './look-line.ts';

/** What stands in the ladder's place. The patch and guess tools bring their own. */
export type LookPanelName = 'ways' | 'values';

/** How far the eyes are closed: sigma of the blur as a share of the picture's long side. */
export const SQUINT_SHARES = [0.004, 0.008, 0.014, 0.024] as const;
const USUAL_CLOSED = 2;

/** A patch, and where it was taken: 0..1 of the upright original. */
export interface TakenPatch {
  pictureId: string;
  point: FractionPoint;
  patch: Patch;
}

export type Patches = readonly [TakenPatch | null, TakenPatch | null];

/** What is guessed: a spot, or a whole plane, which has a place as well. */
export interface GuessedSpot {
  pictureId: string;
  point: FractionPoint;
  /** Value in steps, 0..10, as this screen shows it. */
  shown: number;
  /** Name of the plane, or null for a spot. */
  plane: string | null;
}

export interface Looking {
  /** Index into `SQUINT_SHARES`. */
  closed: number;
  setClosed(closed: number): void;
  valuesShown: boolean;
  setValuesShown(shown: boolean): void;
  valueNumber: ValueNumber;
  setValueNumber(number: ValueNumber): void;
  /** Both pictures are cut at the same values; else each at its own. */
  sameCuts: boolean;
  setSameCuts(same: boolean): void;
  nineShown: boolean;
  setNineShown(shown: boolean): void;
  mirrored: boolean;
  setMirrored(mirrored: boolean): void;
  half: boolean;
  setHalf(half: boolean): void;
  panel: LookPanelName | null;
  setPanel(panel: LookPanelName | null): void;
  patches: Patches;
  /** Which of the two the next tap takes. */
  patchInHand: 0 | 1;
  choosePatch(which: 0 | 1): void;
  /** Takes a patch; after the first, taps go on to take the second. */
  takePatch(taken: TakenPatch): void;
  clearPatches(): void;
  spot: GuessedSpot | null;
  setSpot(spot: GuessedSpot | null): void;
  checkOpen: boolean;
  setCheckOpen(open: boolean): void;
  /** Value under the hand, for the scales beside the pictures. */
  hover: HoverStore;
  line: LookLine;
  /** Pictures that are shown put right just now; read when a spot is taken. */
  rightedNow: Map<string, boolean>;
}

/** Kept apart from the rest, so that a pulled cut redraws the value maps and nothing else. */
export interface MovedCuts {
  /** Cuts moved by hand, L*, by picture (or `both`) and number; missing = the starting cuts. */
  movedCuts: ReadonlyMap<string, readonly number[]>;
  moveCuts(key: string, cuts: readonly number[] | null): void;
}

const CutsContext = createContext<MovedCuts | null>(null);
const LookContext = createContext<Looking | null>(null);

/** @throws Error outside `LookProvider`: a bug. */
export function useLooking(): Looking {
  const looking = useContext(LookContext);
  if (!looking) throw new Error('useLooking is used outside LookProvider.');
  return looking;
}

/** @throws Error as above. */
export function useMovedCuts(): MovedCuts {
  const cuts = useContext(CutsContext);
  if (!cuts) throw new Error('useMovedCuts is used outside LookProvider.');
  return cuts;
}

function useCuts(): MovedCuts {
  const [movedCuts, setMovedCuts] = useState<ReadonlyMap<string, readonly number[]>>(new Map());
  const moveCuts = useCallback((key: string, cuts: readonly number[] | null) => {
    setMovedCuts((before) => {
      const next = new Map(before);
      if (cuts) next.set(key, cuts);
      else next.delete(key);
      return next;
    });
  }, []);
  return useMemo(() => ({ movedCuts, moveCuts }), [movedCuts, moveCuts]);
}

function usePatches() {
  const [patches, setPatches] = useState<Patches>([null, null]);
  const [patchInHand, choosePatch] = useState<0 | 1>(0);
  const takePatch = useCallback(
    (taken: TakenPatch) => {
      setPatches(([first, second]) => (patchInHand === 0 ? [taken, second] : [first, taken]));
      choosePatch(1);
    },
    [patchInHand],
  );
  const clearPatches = useCallback(() => {
    setPatches([null, null]);
    choosePatch(0);
  }, []);
  return { patches, patchInHand, choosePatch, takePatch, clearPatches };
}

function useValues(hand: OwnHand) {
  const [valuesShown, wantValuesShown] = useState(false);
  const [valueNumber, wantValueNumber] = useState<ValueNumber>(3);
  const [sameCuts, wantSameCuts] = useState(false);
  return {
    ...{ valuesShown, setValuesShown: useOwn(hand, wantValuesShown) },
    ...{ valueNumber, setValueNumber: useOwn(hand, wantValueNumber) },
    ...{ sameCuts, setSameCuts: useOwn(hand, wantSameCuts) },
  };
}

function useWays(hand: OwnHand) {
  const [closed, wantClosed] = useState(USUAL_CLOSED);
  const [nineShown, setNineShown] = useState(false);
  const [mirrored, wantMirrored] = useState(false);
  const [half, wantHalf] = useState(false);
  const [setClosed, setMirrored, setHalf] = [
    useOwn(hand, wantClosed),
    useOwn(hand, wantMirrored),
    useOwn(hand, wantHalf),
  ];
  const [panel, setPanel] = useState<LookPanelName | null>(null);
  const [checkOpen, setCheckOpen] = useState(false);
  const [spot, setSpot] = useState<GuessedSpot | null>(null);
  return {
    ...{ closed, setClosed, nineShown, setNineShown, mirrored, setMirrored, half, setHalf },
    ...{ panel, setPanel, checkOpen, setCheckOpen, spot, setSpot },
  };
}

/** @param hand Told of every change of what others may look at with this person. */
export function LookProvider({ hand, children }: { hand: OwnHand; children: ReactNode }) {
  const [fixed] = useState(() => ({
    hover: new HoverStore(),
    line: new LookLine(),
    rightedNow: new Map<string, boolean>(),
  }));
  useEffect(() => () => fixed.line.close(), [fixed]);
  const values = useValues(hand);
  const ways = useWays(hand);
  const patches = usePatches();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the three are spread below, each by its members.
  const looking = useMemo<Looking>(
    () => ({ ...values, ...ways, ...patches, ...fixed }),
    [...Object.values(values), ...Object.values(ways), ...Object.values(patches), fixed],
  );
  const cuts = useCuts();
  return (
    <LookContext value={looking}>
      <CutsContext value={cuts}>{children}</CutsContext>
    </LookContext>
  );
}
