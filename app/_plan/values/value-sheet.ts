/**
 * The thumbnails of one frame in two to five values on one sheet, as a PNG to print or keep.
 *
 * In the flow: value plans -> [value-sheet] -> file. Drawn in this browser; nothing is sent. IO: a canvas.
 */
import { OVER_DARK, OVER_LIGHT } from '#app/_ui/greys.ts';
import { percent } from '#app/_words/figures.ts';
import { greyOf } from '#server/core/look/nine-steps.ts';
import type { ValueNumber } from '#server/core/look/value-numbers.ts';
import { drawnValues, type PlannedValues, type ValuePicture } from '#server/core/look/value-plan.ts';
import { lookWords } from '#words/look.ts';
import { valueWords as words } from '#words/plan-values.ts';

export interface SheetOrder {
  /** The board and the frame, as they stand over the thumbnails. */
  title: string;
  picture: ValuePicture;
  plans: ReadonlyMap<ValueNumber, PlannedValues>;
  settled: ValueNumber | null;
}

/** A4 lying at 150 dots an inch. */
const SHEET = { width: 1754, height: 1240 } as const;
const EDGE = 80;
const GAP = 60;
const HEAD = 110;
/** Under each thumbnail: its name, a bar of shares, the shares in words. */
const FOOT = 120;
const FACE = '"Source Sans 3 Variable", "Source Sans 3", Arial, sans-serif';

interface Cell {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** Where each of four thumbnails stands, in two rows of two, or in one row for upright frames. */
function cellsFor({ widthPx, heightPx }: ValuePicture): Cell[] {
  const columns = widthPx >= heightPx ? 2 : 4;
  const rows = 4 / columns;
  const width = (SHEET.width - 2 * EDGE - (columns - 1) * GAP) / columns;
  const height = (SHEET.height - 2 * EDGE - HEAD - (rows - 1) * GAP) / rows;
  return Array.from({ length: 4 }, (_, at) => ({
    x: EDGE + (at % columns) * (width + GAP),
    y: EDGE + HEAD + Math.floor(at / columns) * (height + GAP),
    width,
    height,
  }));
}

function thumbnail(picture: ValuePicture, plan: PlannedValues): OffscreenCanvas {
  const { widthPx, heightPx } = picture;
  const canvas = new OffscreenCanvas(widthPx, heightPx);
  contextOf(canvas).putImageData(new ImageData(drawnValues(picture, plan), widthPx, heightPx), 0, 0);
  return canvas;
}

function contextOf(canvas: OffscreenCanvas): OffscreenCanvasRenderingContext2D {
  const context = canvas.getContext('2d');
  if (!context) throw new Error('This browser gives no canvas to draw on.');
  return context;
}

function drawOne(
  context: OffscreenCanvasRenderingContext2D,
  cell: Cell,
  { picture, plans, settled }: SheetOrder,
  count: ValueNumber,
): void {
  const plan = plans.get(count);
  if (!plan) return;
  const room = cell.height - FOOT;
  const scale = Math.min(cell.width / picture.widthPx, room / picture.heightPx);
  const [width, height] = [picture.widthPx * scale, picture.heightPx * scale];
  const top = cell.y;
  context.drawImage(thumbnail(picture, plan), cell.x, top, width, height);
  context.strokeStyle = OVER_DARK;
  context.lineWidth = count === settled ? 6 : 1;
  const out = context.lineWidth / 2;
  context.strokeRect(cell.x - out, top - out, width + 2 * out, height + 2 * out);
  const name = count === settled ? `${words.names[count]}, ${words.sheet.settled}` : words.names[count];
  context.fillStyle = OVER_DARK;
  context.font = `600 26px ${FACE}`;
  context.fillText(name, cell.x, top + height + 40, cell.width);
  drawShares(context, { ...cell, width, y: top + height + 54 }, plan, count);
}

function drawShares(
  context: OffscreenCanvasRenderingContext2D,
  { x, y, width }: Cell,
  { groups }: PlannedValues,
  count: ValueNumber,
): void {
  const names = lookWords.values.names[count];
  let from = x;
  for (const { share, lightness } of groups) {
    context.fillStyle = greyOf(lightness);
    context.fillRect(from, y, share * width, 22);
    from += share * width;
  }
  context.strokeStyle = OVER_DARK;
  context.lineWidth = 1;
  context.strokeRect(x, y, width, 22);
  context.fillStyle = OVER_DARK;
  context.font = `20px ${FACE}`;
  const said = groups.map(({ share }, at) => `${names[at]} ${percent(share)}`).join('   ');
  context.fillText(said, x, y + 50, Math.max(width, 300));
}

/** @throws Error when the browser gives no canvas, or too little memory for it. */
export async function drawValueSheet(order: SheetOrder): Promise<Blob> {
  await document.fonts.ready;
  const canvas = new OffscreenCanvas(SHEET.width, SHEET.height);
  const context = contextOf(canvas);
  context.fillStyle = OVER_LIGHT;
  context.fillRect(0, 0, SHEET.width, SHEET.height);
  context.fillStyle = OVER_DARK;
  context.font = `600 40px ${FACE}`;
  context.fillText(order.title, EDGE, EDGE + 40, SHEET.width - 2 * EDGE);
  context.imageSmoothingQuality = 'high';
  const cells = cellsFor(order.picture);
  for (const [at, count] of ([2, 3, 4, 5] as const).entries()) {
    const cell = cells[at];
    if (cell) drawOne(context, cell, order, count);
  }
  return canvas.convertToBlob({ type: 'image/png' });
}
