/**
 * Why a frame is proposed, in sentences that can be checked on the picture.
 *
 * In the flow: judged frame -> [reasons] -> plan. At most 30 words each; figures are those of the frame. Pure.
 */
import { placeInWords } from '../../readings/words.ts';
import { say } from '../../say/say.ts';
import type { CropScene } from './crop-scene.ts';
import { formatInWords } from './formats.ts';
import type { Judged } from './judge.ts';

/** In percent, its sign left out. */
const percent = (share: number): number => Math.round(100 * share);
const THIRD = 1 / 3;
/** Weight of the things kept, from which nothing that matters is lost. */
const NEARLY_ALL = 0.97;
/** Shares of the frame within which the horizon, or the focus, stands in its middle. */
const MIDDLE = 0.05;

function roomReason({ sky, foreground }: Judged): string {
  const shares = say`Sky ${percent(sky)} %, nearest plane ${percent(foreground)} % of the frame`;
  if (sky > THIRD && foreground > THIRD) return say`${shares}: both over a third, so it is still wide.`;
  if (sky > THIRD || foreground > THIRD) return say`${shares}: one of them leads.`;
  return say`${shares}: neither takes a third.`;
}

function horizonReason({ horizon }: Judged): string[] {
  if (horizon === null) return [];
  const where = percent(horizon);
  return [
    Math.abs(horizon - 0.5) < MIDDLE
      ? say`The horizon stands ${where} % down, near the middle.`
      : say`The horizon stands ${where} % down: the parts are unequal.`,
  ];
}

function weightReason({ heavier, lever }: Judged): string {
  const figure = lever.toFixed(2).replace('-', '−');
  if (heavier === 'even') return say`Left and right weigh about the same (lever ${figure}).`;
  return heavier === 'left'
    ? say`The weight lies to the left (lever ${figure}).`
    : say`The weight lies to the right (lever ${figure}).`;
}

function cutReason({ cut, kept }: Judged): string {
  const strongest = cut.toSorted((one, two) => two.weight - one.weight)[0];
  if (strongest) {
    const place = placeInWords(strongest.middle);
    return cut.length === 1
      ? say`One thing is cut by the frame, the strongest at the picture's ${place}.`
      : say`${cut.length} things are cut by the frame, the strongest at the picture's ${place}.`;
  }
  return kept >= NEARLY_ALL
    ? say`None of the things that stand out is cut; all of them are inside.`
    : say`None of the things that stand out is cut; ${percent(kept)} % of their weight is inside.`;
}

function focusReason({ focus }: Judged, { marked }: CropScene): string[] {
  if (!focus) return [];
  const [x, y] = focus;
  if (Math.min(x, y, 1 - x, 1 - y) < 0) {
    return [marked ? say`Your focus lies outside.` : say`What pulls most lies outside.`];
  }
  return [
    marked
      ? say`Your focus stands ${percent(x)} % across and ${percent(y)} % down.`
      : say`What pulls most stands ${percent(x)} % across and ${percent(y)} % down.`,
  ];
}

/** Names of canvases: one or another. */
function anyOf(canvases: readonly string[]): string {
  return canvases.map(formatInWords).reduce((one, other) => say`${one} or ${other}`);
}

interface Real {
  /** Real canvases that the frame fills. */
  readonly canvases: readonly string[];
  /** Pixels of the photograph to one of the scene, along a side. */
  readonly enlarged: number;
}

export function reasonsFor(judged: Judged, scene: CropScene, { canvases, enlarged }: Real): string[] {
  const [x0, y0, x1, y1] = judged.box;
  const [wide, high] = [(x1 - x0) * scene.widthPx * enlarged, (y1 - y0) * scene.heightPx * enlarged];
  const pixels = `${Math.round(wide)} x ${Math.round(high)}`;
  return [
    roomReason(judged),
    ...horizonReason(judged),
    weightReason(judged),
    cutReason(judged),
    ...focusReason(judged, scene),
    say`${pixels} pixels are left to paint from.`,
    ...(canvases.length > 0 ? [say`It fills a canvas of ${anyOf(canvases)}.`] : []),
  ];
}
