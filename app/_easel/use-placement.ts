'use client';
/**
 * Lays a picture's sheet where the shared view wants it, without redrawing anything above it.
 *
 * In the flow: view-store -> [use-placement] -> the sheet's style. IO: the DOM of one stage.
 */
import { type RefObject, useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { PICTURE_SIZES, type PictureSize } from '#server/core/contract/picture-choices.ts';
import { cssMatrix, type Frame } from './frame.ts';
import type { ViewStore } from './view-store.ts';
import { copyFor, type Placement, placementOf, type Size } from './view-transform.ts';

export interface Placed {
  stage: RefObject<HTMLDivElement | null>;
  sheet: RefObject<HTMLDivElement | null>;
  /** What of the picture is shown, without what is marked on it. */
  cut: RefObject<HTMLDivElement | null>;
  windowSize(): Size;
  placement(): Placement;
  /** The copy that is sharp enough at the present zoom. */
  copy: PictureSize;
  /** Whether the whole picture is shown; then a finger may still scroll the page. */
  whole: boolean;
}

/** The hand rests after this long without another step of zoom. */
const SETTLE_MS = 140;

interface Settling {
  /** Width and frame for which the sheet was last laid out. */
  laid: { width: number; frame: Frame } | null;
  timer: ReturnType<typeof setTimeout> | undefined;
}

/**
 * The caption stays under the picture, not under the empty part of its window, and the scale is as high as it. Told to
 * those beside the window alone: hundreds of marks inside it would all be styled anew with every step of the hand.
 */
function tellBeside(stage: HTMLElement | null, slack: number, margin: number): void {
  for (const beside of stage?.closest('figure')?.children ?? []) {
    if (!(beside instanceof HTMLElement) || beside.contains(stage)) continue;
    beside.style.setProperty('--slack', `${slack}px`);
    beside.style.setProperty('--margin', `${margin}px`);
  }
}

export function usePlacement(views: ViewStore, frame: Frame): Placed {
  const stage = useRef<HTMLDivElement>(null);
  const sheet = useRef<HTMLDivElement>(null);
  const cut = useRef<HTMLDivElement>(null);
  const size = useRef<Size>({ width: 0, height: 0 });
  const [copy, setCopy] = useState<PictureSize>(640);
  const [whole, setWhole] = useState(true);

  const placement = useCallback(() => placementOf(views.get(), size.current, frame.size), [views, frame]);
  const settle = useRef<Settling>({ laid: null, timer: undefined });
  /** Gives the sheet its true size: what stands on it keeps its own size, lines stay sharp. */
  const layOut = useCallback(
    ({ left, top, width, height }: Placement) => {
      const element = sheet.current;
      if (!element) return;
      element.style.transform = `translate(${left}px, ${top}px)`;
      element.style.width = `${width}px`;
      element.style.height = `${height}px`;
      // Whatever lies in the picture's own frame is bent alike: `.bent` takes it from here. Not told to the whole sheet, for
      // every mark on it would be styled anew.
      const bent = frame.matrix ? cssMatrix(frame.matrix, width, height) : 'none';
      cut.current?.style.setProperty('--bent', bent);
      settle.current.laid = { width, frame };
      // From here on the style sheet need not know the window's size any more.
      stage.current?.toggleAttribute('data-laid', true);
    },
    [frame],
  );
  const lay = useCallback(() => {
    const element = sheet.current;
    if (!element || size.current.width === 0) return;
    const { left, top, width, height } = placement();
    // While the hand zooms, the sheet is only drawn larger; it is laid out anew once the hand rests.
    const { laid, timer } = settle.current;
    const zooming = laid !== null && laid.frame === frame && laid.width !== width;
    if (zooming) {
      element.style.transform = `translate(${left}px, ${top}px) scale(${width / laid.width})`;
      clearTimeout(timer);
      settle.current.timer = setTimeout(() => layOut(placement()), SETTLE_MS);
    } else if (laid?.frame === frame && laid.width === width) {
      element.style.transform = `translate(${left}px, ${top}px)`;
    } else layOut({ left, top, width, height });
    tellBeside(stage.current, Math.max(0, size.current.height - top - height), Math.max(0, left));
    const needed = Math.max(width, height) * globalThis.devicePixelRatio;
    setCopy((kept) => copyFor(PICTURE_SIZES, Math.max(kept, needed)));
    setWhole(views.get().zoom <= 1);
  }, [placement, layOut, frame, views]);

  useEffect(() => views.subscribe(lay), [views, lay]);
  useLayoutEffect(() => {
    const element = stage.current;
    if (!element) return;
    const measure = () => {
      size.current = { width: element.clientWidth, height: element.clientHeight };
      settle.current.laid = null;
      lay();
    };
    measure();
    const watcher = new ResizeObserver(measure);
    watcher.observe(element);
    return () => {
      watcher.disconnect();
      clearTimeout(settle.current.timer);
    };
  }, [lay]);

  const windowSize = useCallback(() => size.current, []);
  return { stage, sheet, cut, windowSize, placement, copy, whole };
}
