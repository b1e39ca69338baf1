/** Words of the frames: proposed ones, the one under the hand, those that were kept. Pure. */
import type { FramePart } from '#server/core/plan/crops/edit-frame.ts';
import type { HeavierSide } from '#server/core/plan/weight/balance.ts';
import { figure, percent } from '../figures.ts';

const number = new Intl.NumberFormat('en');
/** `14 x 11 in` as it is printed. */
const times = (text: string) => text.replaceAll(' x ', ' × ');

const PARTS: Record<FramePart, string> = {
  nw: 'Top left corner',
  n: 'Top side',
  ne: 'Top right corner',
  e: 'Right side',
  se: 'Bottom right corner',
  s: 'Bottom side',
  sw: 'Bottom left corner',
  w: 'Left side',
};

export const frameWords = {
  kept: {
    title: 'Kept',
    none: 'Nothing is kept yet. Take a frame from the sheet below, or draw your own; then keep it under a name.',
    whole: 'The whole photograph',
    name: 'Name of this frame',
    nth: (at: number) => `Frame ${at}`,
    remove: 'Leave it out',
    removeOf: (name: string) => `Leave “${name}” out`,
    beside: 'Side by side',
    besideEnd: 'Back to the photograph',
    besideLabel: 'The kept frames side by side',
    full: (most: number) => `This board keeps ${most} frames, and that many are here. Leave one out first.`,
  },
  hand: {
    title: 'This frame',
    own: 'Draw my own',
    keep: 'Keep this frame',
    away: 'Put it away',
    format: 'Format',
    free: 'free',
    plain: 'Formats',
    canvases: 'Canvases as they are sold',
    holds: 'Hold the format while pulling',
    body: 'The frame: arrow keys move it, with Shift farther',
    part: (part: FramePart) => `${PARTS[part]}: arrow keys pull it`,
    how: 'Pull a corner, a side or the whole frame; or go to one with Tab and use the arrow keys.',
    why: 'Why it is proposed',
  },
  figures: {
    sky: 'Sky',
    nearest: 'Nearest plane',
    horizon: 'Horizon',
    weight: 'Weight',
    cut: 'Cut by the frame',
    pixels: 'Pixels left',
    canvas: 'Fills a canvas of',
    share: (share: number) => percent(share),
    down: (share: number | null) => (share === null ? 'not in the frame' : `${percent(share)} down`),
    side: (side: HeavierSide, lever: number) =>
      side === 'even' ? `even (lever ${figure(lever, 2)})` : `to the ${side} (lever ${figure(lever, 2)})`,
    cutThings: (count: number) =>
      count === 0
        ? 'nothing that stands out'
        : count === 1
          ? 'one thing, marked on its edge'
          : `${count} things, marked on its edge`,
    size: (wide: number, high: number) => `${number.format(wide)} × ${number.format(high)}`,
    noCanvas: 'none of the usual ones',
    canvases: (names: readonly string[]) => names.map(times).join(', '),
    waiting: 'Looking at what lies where …',
    failed:
      'The small copy of this photograph could not be fetched, so there are no figures. Try again in a moment.',
  },
  sheet: {
    title: 'Proposed',
    label: 'Which frames are shown',
    ways: { all: 'All', lying: 'Lying', square: 'Square', standing: 'Upright' },
    more: (count: number) => `Show ${count} more`,
    one: (format: string, at: number) => `Proposed frame ${at}: ${times(format)}`,
    format: times,
    shares: (sky: number, nearest: number) => `sky ${percent(sky)}, near ${percent(nearest)}`,
    none: 'No frame of this kind is proposed.',
  },
  belongs: {
    title: 'Paintings and their frames',
    lead: 'A painting made after a frame is held against that frame alone.',
    of: (painting: string) => `${painting} is after`,
    held: 'Held against',
    heldIn: (name: string) => `Held against the frame ‘${name}’.`,
    theFrame: (name: string) => `the frame ‘${name}’`,
    waiting: 'Opening the painting …',
  },
} as const;
