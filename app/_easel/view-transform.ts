/**
 * Where a picture lies in its window, and back: screen points to 0..1 of the picture.
 *
 * One view (a middle and a zoom) is shared by all pictures on the easel, so that they pan and zoom together
 * whatever their sizes; zoom 1 shows the whole picture. Screen units are CSS pixels from the window's top left.
 * Pure.
 */
import type { FractionPoint } from '#server/core/contract/setup.ts';

export interface View {
  /** 0..1 of the picture: what stands in the middle of the window. */
  middleX: number;
  middleY: number;
  /** 1 = the whole picture fits. */
  zoom: number;
}

export interface Size {
  width: number;
  height: number;
}

/** The picture's rectangle in its window, CSS pixels. */
export interface Placement extends Size {
  left: number;
  top: number;
}

export const WHOLE: View = { middleX: 0.5, middleY: 0.5, zoom: 1 };
export const ZOOM_MOST = 24;
/** Zoom of the whole picture at half its fitting size. */
export const HALF_SIZE = 0.5;

const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));

/** CSS pixels per picture pixel at which the whole picture fits; 0 for an empty window. */
function fitScale(window: Size, picture: Size): number {
  return Math.max(0, Math.min(window.width / picture.width, window.height / picture.height));
}

/** Where the picture lies. An edge never comes further in than needed: a picture that fits stands in the middle. */
export function placementOf(view: View, window: Size, picture: Size): Placement {
  const scale = fitScale(window, picture) * view.zoom;
  const width = picture.width * scale;
  const height = picture.height * scale;
  return {
    width,
    height,
    left: along(view.middleX, width, window.width),
    top: along(view.middleY, height, window.height),
  };
}

/** Start of a picture of length `shown` so that `middle` of it stands mid-window, without empty space beside it. */
function along(middle: number, shown: number, window: number): number {
  if (shown <= window) return (window - shown) / 2;
  return clamp(window / 2 - middle * shown, window - shown, 0);
}

/** 0..1 of the picture under a screen point; outside 0..1 beyond the picture. */
export function toFraction(placement: Placement, x: number, y: number): FractionPoint {
  return [(x - placement.left) / placement.width, (y - placement.top) / placement.height];
}

export function toScreen(placement: Placement, [x, y]: FractionPoint): { x: number; y: number } {
  return { x: placement.left + x * placement.width, y: placement.top + y * placement.height };
}

/** The view whose middle is what the window really shows once edges were held. */
function heldView(view: View, window: Size, picture: Size): View {
  const placement = placementOf(view, window, picture);
  const [middleX, middleY] = toFraction(placement, window.width / 2, window.height / 2);
  return { zoom: view.zoom, middleX: clamp(middleX, 0, 1), middleY: clamp(middleY, 0, 1) };
}

/** Moves the picture by screen pixels. */
export function panned(view: View, window: Size, picture: Size, dx: number, dy: number): View {
  const { width, height } = placementOf(view, window, picture);
  if (width === 0 || height === 0) return view;
  const moved = { ...view, middleX: view.middleX - dx / width, middleY: view.middleY - dy / height };
  return heldView(moved, window, picture);
}

/** Zooms by `factor` (above 1 = closer) so that what lies under the screen point stays there. */
export function zoomedAt(
  view: View,
  window: Size,
  picture: Size,
  { factor, x, y }: { factor: number; x: number; y: number },
): View {
  const zoom = clamp(view.zoom * factor, 1, ZOOM_MOST);
  const before = placementOf(view, window, picture);
  if (before.width === 0 || before.height === 0) return view;
  const [fx, fy] = toFraction(before, x, y);
  const scale = zoom / view.zoom;
  const middleX = fx + (window.width / 2 - x) / (before.width * scale);
  const middleY = fy + (window.height / 2 - y) / (before.height * scale);
  return heldView({ zoom, middleX, middleY }, window, picture);
}

/** The smallest copy, by its long side, that still has a pixel for every pixel of the screen; else the largest. */
export function copyFor<S extends number>(sizes: readonly S[], shownLongSidePx: number): S {
  const rising = [...sizes].sort((a, b) => a - b);
  const enough = rising.find((size) => size >= shownLongSidePx * 0.9) ?? rising.at(-1);
  if (enough === undefined) throw new Error('No copies to choose from.');
  return enough;
}
