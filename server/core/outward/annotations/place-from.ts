/**
 * Where on which picture a Web Annotation points, as the points of a mark.
 *
 * In the flow: from-annotations -> [place-from]. A selector of text, time or a page is no place on a picture. Pure.
 */
import type { MarkKind } from '../../live/layout.ts';
import { say } from '../../say/say.ts';
import { readRegion } from './media-fragment.ts';
import type { OntoBoard } from './onto-board.ts';
import { type ReadAnnotation, shown, typesOf } from './read-annotation.ts';
import { readSvg, type Size, type SvgShape } from './svg-shape.ts';

export interface Place {
  pictureId: string;
  kind: MarkKind;
  /** Shares 0..1 of the picture. */
  points: [number, number][];
  /** What was changed on the way, as the end of a sentence; null = nothing. */
  note: string | null;
}

/** A round shape or box of at most this share of the picture's width is a point. */
const POINT_SHARE = 0.005;
const ROUND_STEPS = 32;
/** Kinds that stand at one point. */
const AT_A_POINT: ReadonlySet<MarkKind | null> = new Set<MarkKind | null>(['pin', 'text', 'patch']);
/** Kinds along a line. */
const ALONG: ReadonlySet<MarkKind | null> = new Set<MarkKind | null>(['stroke', 'arrow', 'sketch']);

/** @param said The kind that our own term names, or null. @returns The place, or the end of a sentence. */
export function placeFrom(
  target: ReadAnnotation['target'],
  said: MarkKind | null,
  board: OntoBoard,
): Place | string {
  const picture = pictureOf(target.address, board);
  if (typeof picture === 'string') return picture;
  const { pictureId, size } = picture;
  if (target.selectors.length === 0) {
    return {
      pictureId,
      kind: 'pin',
      points: [[0.5, 0.5]],
      note: say`it speaks of the whole picture and stands in its middle`,
    };
  }
  const tried = [...target.selectors].sort((one, other) => rank(one) - rank(other));
  const reasons: string[] = [];
  for (const selector of tried) {
    const shape = shapeFrom(selector, size);
    if (typeof shape === 'string') reasons.push(shape);
    else return fitted(pictureId, said, shape);
  }
  return reasons[0] ?? say`it does not say where it points`;
}

/** A shape is more exact than the box around it. */
function rank(selector: Record<string, unknown>): number {
  return typesOf(selector).includes('SvgSelector') ? 0 : 1;
}

function pictureOf(
  address: string,
  { boardId, pictures, onto }: OntoBoard,
): { pictureId: string; size: Size } | string {
  const [, itsBoard, id = ''] =
    /\/boards\/([^/]+)\/pictures\/([0-9A-Za-z-]{1,64})(?:\/|$)/.exec(address) ?? [];
  const ours = itsBoard === boardId ? pictures.get(id) : undefined;
  if (ours) return { pictureId: id, size: ours };
  const chosen = onto === null ? undefined : pictures.get(onto);
  if (onto !== null && chosen) return { pictureId: onto, size: chosen };
  return say`it stands on a picture that is not on this board (${shown(address)})`;
}

/** Points as shares of the picture. */
interface Shape {
  form: SvgShape['form'] | 'box';
  points: [number, number][];
  /** Of round ones and boxes: their extent as shares. */
  extent: [number, number];
}

function shapeFrom(selector: Record<string, unknown>, size: Size): Shape | string {
  if (selector.refinedBy !== undefined) return say`it narrows its place in a way that is not known here`;
  const [type = 'selector'] = typesOf(selector);
  const value = selector.value ?? selector['rdf:value'];
  if (type === 'SvgSelector')
    return typeof value === 'string'
      ? svgFrom(value, size)
      : say`its shape lies elsewhere, and nothing is fetched`;
  if (type === 'FragmentSelector')
    return typeof value === 'string' ? regionFrom(value, size) : say`its place cannot be read`;
  return say`it points by “${shown(type)}”, which is no place on a picture`;
}

function regionFrom(value: string, size: Size): Shape | string {
  const region = readRegion(value);
  if (!region) return say`its place (${shown(value)}) is no region of a picture`;
  const [wide, high] = region.unit === 'percent' ? [100, 100] : [size.width, size.height];
  const [left, top] = [region.x / wide, region.y / high];
  const extent: [number, number] = [region.width / wide, region.height / high];
  const [right, bottom] = [Math.min(1, left + extent[0]), Math.min(1, top + extent[1])];
  return {
    form: 'box',
    points: [
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
    ],
    extent,
  };
}

function svgFrom(text: string, size: Size): Shape | string {
  const shape = readSvg(text);
  if (typeof shape === 'string') return shape;
  const frame = shape.frame ?? { x: 0, y: 0, ...size };
  const points = shape.points.map(([x, y]): [number, number] => [
    (x - frame.x) / frame.width,
    (y - frame.y) / frame.height,
  ]);
  const [rx, ry] = shape.radii ?? [0, 0];
  return { form: shape.form, points, extent: [(2 * rx) / frame.width, (2 * ry) / frame.height] };
}

function fitted(pictureId: string, said: MarkKind | null, shape: Shape): Place | string {
  const { kind, points } = drawn(said, shape);
  const inside = points.every(([x, y]) => x >= 0 && x <= 1 && y >= 0 && y <= 1);
  if (!inside && said === null) return say`it points beside the picture`;
  return { pictureId, kind, points, note: null };
}

function drawn(said: MarkKind | null, { form, points, extent }: Shape): Pick<Place, 'kind' | 'points'> {
  if (form === 'line') {
    const kind = points.length > 1 ? 'stroke' : 'pin';
    return { kind: said !== null && ALONG.has(said) ? said : kind, points };
  }
  if (form === 'closed') return { kind: 'outline', points };
  const middle = middleOf(points);
  if (said !== null && AT_A_POINT.has(said)) return { kind: said, points: [middle] };
  if (Math.max(...extent) <= POINT_SHARE) return { kind: 'pin', points: [middle] };
  return { kind: 'outline', points: form === 'box' ? points : around(middle, extent) };
}

function middleOf(points: readonly [number, number][]): [number, number] {
  const [first = [0.5, 0.5] as const] = points;
  const last = points[2] ?? first;
  return [(first[0] + last[0]) / 2, (first[1] + last[1]) / 2];
}

function around([x, y]: [number, number], [wide, high]: [number, number]): [number, number][] {
  return Array.from({ length: ROUND_STEPS }, (_, at) => {
    const angle = (2 * Math.PI * at) / ROUND_STEPS;
    const inside = (value: number) => Math.min(1, Math.max(0, value));
    return [inside(x + (wide / 2) * Math.cos(angle)), inside(y + (high / 2) * Math.sin(angle))];
  });
}
