'use client';
/**
 * The photograph's place on the screen, and where a part of the plan may put something of its own.
 *
 * In the flow: stage -> [stage-context] -> parts. A part draws by rendering `OnStage` (SVG, in pixels of the shown
 * picture), `InPlaceOfPicture` (a canvas over the photograph), `OverPicture` (handles) and `UnderStage` (a row of controls
 * under it), wherever it stands itself. No IO.
 */
import { createContext, type ReactNode, useContext, useMemo, useState } from 'react';
import { createPortal } from 'react-dom';
import type { FractionPoint } from '#server/core/contract/setup.ts';

export interface StageView {
  /** Size of the shown picture on the screen, pixels; 0 before it is laid out. */
  widthPx: number;
  heightPx: number;
  /** From the window's pixels to 0..1 of the upright picture; may lie outside. */
  fractionAt(clientX: number, clientY: number): FractionPoint;
}

export interface StagePlaces {
  overlay: SVGSVGElement | null;
  instead: HTMLDivElement | null;
  over: HTMLDivElement | null;
  under: HTMLDivElement | null;
}

interface Inside extends StagePlaces {
  view: StageView;
  setPlace(name: keyof StagePlaces, element: Element | null): void;
  setSize(size: { widthPx: number; heightPx: number }): void;
}

const Context = createContext<Inside | null>(null);

/** For the stage itself. @throws Error outside a `StageProvider`: a bug. */
export function useStagePlaces(): Inside {
  const inside = useContext(Context);
  if (!inside) throw new Error('The stage is used outside StageProvider.');
  return inside;
}

/** Where the photograph stands on the screen. */
export function useStage(): StageView {
  return useStagePlaces().view;
}

const NOWHERE: StagePlaces = { overlay: null, instead: null, over: null, under: null };

export function StageProvider({ children }: { children: ReactNode }) {
  const [places, setPlaces] = useState(NOWHERE);
  const [size, setSize] = useState({ widthPx: 0, heightPx: 0 });
  const inside = useMemo<Inside>(() => {
    const { overlay } = places;
    const view: StageView = {
      ...size,
      fractionAt(clientX, clientY) {
        const place = overlay?.getBoundingClientRect();
        if (!place || place.width === 0) return [0, 0];
        return [(clientX - place.left) / place.width, (clientY - place.top) / place.height];
      },
    };
    return {
      ...places,
      view,
      setSize,
      setPlace: (name, element) => setPlaces((before) => ({ ...before, [name]: element })),
    };
  }, [places, size]);
  return <Context value={inside}>{children}</Context>;
}

/** SVG over the picture; one unit is one pixel of the screen, 0, 0 the picture's top left. */
export function OnStage({ children }: { children: ReactNode }) {
  const { overlay, view } = useStagePlaces();
  return overlay && view.widthPx > 0 ? createPortal(children, overlay) : null;
}

/** What is shown instead of the photograph, filling its place. */
export function InPlaceOfPicture({ children }: { children: ReactNode }) {
  const { instead } = useStagePlaces();
  return instead ? createPortal(children, instead) : null;
}

/** HTML over everything on the picture, for what is taken by hand or key; only its own elements take the pointer. */
export function OverPicture({ children }: { children: ReactNode }) {
  const { over } = useStagePlaces();
  return over ? createPortal(children, over) : null;
}

/** A row directly under the picture, as wide as it. */
export function UnderStage({ children }: { children: ReactNode }) {
  const { under } = useStagePlaces();
  return under ? createPortal(children, under) : null;
}
