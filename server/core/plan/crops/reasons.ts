/**
 * Why a frame is proposed, in sentences that can be checked on the picture.
 *
 * In the flow: judged frame -> [reasons] -> plan. At most 30 words each; figures are those of the frame. Pure.
 */
import { placeInWords } from '../../readings/words.ts';
import type { CropScene } from './crop-scene.ts';
import type { Judged } from './judge.ts';

const percent = (share: number): string => `${Math.round(100 * share)} %`;
const THIRD = 1 / 3;
/** Weight of the things kept, from which nothing that matters is lost. */
const NEARLY_ALL = 0.97;
/** Shares of the frame within which the horizon, or the focus, stands in its middle. */
const MIDDLE = 0.05;

function roomReason({ sky, foreground }: Judged): string {
  const shares = `Sky ${percent(sky)}, nearest plane ${percent(foreground)} of the frame`;
  if (sky > THIRD && foreground > THIRD) return `${shares}: both over a third, so it is still wide.`;
  if (sky > THIRD || foreground > THIRD) return `${shares}: one of them leads.`;
  return `${shares}: neither takes a third.`;
}

function horizonReason({ horizon }: Judged): string[] {
  if (horizon === null) return [];
  const where = `The horizon stands ${percent(horizon)} down`;
  return [
    Math.abs(horizon - 0.5) < MIDDLE ? `${where}, near the middle.` : `${where}: the parts are unequal.`,
  ];
}

function weightReason({ heavier, lever }: Judged): string {
  const figure = lever.toFixed(2).replace('-', '−');
  return heavier === 'even'
    ? `Left and right weigh about the same (lever ${figure}).`
    : `The weight lies to the ${heavier} (lever ${figure}).`;
}

function cutReason({ cut, kept }: Judged): string {
  const strongest = cut.toSorted((one, two) => two.weight - one.weight)[0];
  if (strongest) {
    const things = cut.length === 1 ? 'One thing is' : `${cut.length} things are`;
    return `${things} cut by the frame, the strongest at the picture's ${placeInWords(strongest.middle)}.`;
  }
  const rest = kept >= NEARLY_ALL ? 'all of them are inside' : `${percent(kept)} of their weight is inside`;
  return `None of the things that stand out is cut; ${rest}.`;
}

function focusReason({ focus }: Judged, { marked }: CropScene): string[] {
  if (!focus) return [];
  const what = marked ? 'Your focus' : 'What pulls most';
  const [x, y] = focus;
  if (Math.min(x, y, 1 - x, 1 - y) < 0) return [`${what} lies outside.`];
  return [`${what} stands ${percent(x)} across and ${percent(y)} down.`];
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
    `${pixels} pixels are left to paint from.`,
    ...(canvases.length > 0 ? [`It fills a canvas of ${canvases.join(' or ')}.`] : []),
  ];
}
