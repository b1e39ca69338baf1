/**
 * One shape as SVG, written for a selector and read from one that anybody may have written.
 *
 * Read is a single shape of straight lines (path with M L H V Z, polyline, polygon, line, rect) or a circle or ellipse;
 * curves, transforms and several shapes are refused with a reason rather than bent. Nothing of the markup is kept.
 * Source: SVG 2 (W3C CR 2018), chapters 8 (viewBox), 9 (paths), 10 (basic shapes). Pure.
 */
import { say } from '../../say/say.ts';

type Point = [number, number];

/** A shape in the units of its picture. */
export interface SvgShape {
  form: 'line' | 'closed' | 'round';
  /** Of a round one: its centre alone. */
  points: Point[];
  /** Of a round one. */
  radii?: Point;
  /** What the markup says of the picture's size, or null. */
  frame: { x: number; y: number; width: number; height: number } | null;
}

export interface Size {
  width: number;
  height: number;
}

/** Points in pixels as a path; closed by itself when it is an outline. */
export function pathSvg(points: readonly (readonly number[])[], size: Size, closed: boolean): string {
  const steps = points.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${x} ${y}`).join(' ');
  return svgAround(`<path d="${steps}${closed ? ' Z' : ''}"/>`, size);
}

/** A point in pixels as a small circle about it. */
export function pointSvg([x, y]: readonly number[], size: Size): string {
  return svgAround(`<circle cx="${x}" cy="${y}" r="1"/>`, size);
}

function svgAround(shape: string, { width, height }: Size): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}">${shape}</svg>`;
}

const LONGEST = 2_000_000;
const SHAPES = new Set(['path', 'polyline', 'polygon', 'line', 'rect', 'circle', 'ellipse']);
const HARMLESS = new Set(['svg', 'g', 'title', 'desc', 'metadata', 'defs']);

/** @returns The shape, or the end of a sentence that says why it cannot be taken. */
export function readSvg(text: string): SvgShape | string {
  if (text.length > LONGEST) return say`its shape is too long`;
  if (/<!DOCTYPE|<!ENTITY|<script/i.test(text)) return say`its shape is more than a shape`;
  const tags = [...text.matchAll(/<\s*(?:[\w-]+:)?([A-Za-z]+)((?:[^>"']|"[^"]*"|'[^']*')*)>/g)];
  const named = tags.map(([, name, rest]) => ({
    name: (name ?? '').toLowerCase(),
    has: attributesIn(rest ?? ''),
  }));
  const strange = named.find(({ name }) => !SHAPES.has(name) && !HARMLESS.has(name));
  if (strange) return say`its shape holds what is no outline (${strange.name.slice(0, 20)})`;
  if (named.some(({ has }) => has.has('transform'))) return say`its shape is moved or turned by a transform`;
  const shapes = named.filter(({ name }) => SHAPES.has(name));
  const [shape] = shapes;
  if (!shape) return say`its shape is empty`;
  if (shapes.length > 1) return say`it has ${shapes.length} shapes and a mark has one`;
  const read = readShape(shape.name, shape.has);
  return typeof read === 'string'
    ? read
    : { ...read, frame: frameOf(named.find(({ name }) => name === 'svg')?.has) };
}

type Attributes = ReadonlyMap<string, string>;

function attributesIn(text: string): Attributes {
  const found = [...text.matchAll(/([\w:-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g)];
  return new Map(
    found.map(([, name, double, single]) => [(name ?? '').toLowerCase(), double ?? single ?? '']),
  );
}

function frameOf(has: Attributes | undefined): SvgShape['frame'] {
  const [x, y, width, height] = numbersIn(has?.get('viewbox') ?? '');
  if (x !== undefined && y !== undefined && width && height && width > 0 && height > 0)
    return { x, y, width, height };
  const [wide, high] = [length(has?.get('width')), length(has?.get('height'))];
  return wide && high ? { x: 0, y: 0, width: wide, height: high } : null;
}

function length(text: string | undefined): number | null {
  const found = /^\s*(\d+(?:\.\d+)?)(?:px)?\s*$/.exec(text ?? '');
  return found ? Number(found[1]) : null;
}

type Read = Omit<SvgShape, 'frame'> | string;

function readShape(name: string, has: Attributes): Read {
  const number = (key: string) => Number(has.get(key)?.replace(/px$/, '') ?? 0);
  if (name === 'path') return readPath(has.get('d') ?? '');
  if (name === 'polyline' || name === 'polygon') {
    const numbers = numbersIn(has.get('points') ?? '');
    return finished(pairs(numbers), name === 'polygon' ? 'closed' : 'line');
  }
  if (name === 'line')
    return finished(
      [
        [number('x1'), number('y1')],
        [number('x2'), number('y2')],
      ],
      'line',
    );
  if (name === 'rect') {
    const [x, y, right, bottom] = [
      number('x'),
      number('y'),
      number('x') + number('width'),
      number('y') + number('height'),
    ];
    return finished(
      [
        [x, y],
        [right, y],
        [right, bottom],
        [x, bottom],
      ],
      'closed',
    );
  }
  const radii: Point = name === 'circle' ? [number('r'), number('r')] : [number('rx'), number('ry')];
  const read = finished([[number('cx'), number('cy')]], 'round');
  return typeof read === 'string' || !radii.every(Number.isFinite)
    ? say`its shape cannot be read`
    : { ...read, radii };
}

function finished(points: Point[], form: SvgShape['form']): Read {
  const whole = points.length > 0 && points.flat().every(Number.isFinite);
  return whole ? { form, points } : say`its shape cannot be read`;
}

function numbersIn(text: string): number[] {
  return (text.match(/[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?/g) ?? []).map(Number);
}

function pairs(numbers: readonly number[]): Point[] {
  return Array.from({ length: Math.floor(numbers.length / 2) }, (_, at) => [
    numbers[2 * at] ?? Number.NaN,
    numbers[2 * at + 1] ?? Number.NaN,
  ]);
}

/** Straight steps alone, absolute or relative; one line, closed by Z or open. */
function readPath(text: string): Read {
  const steps = [...text.matchAll(/([A-Za-z])([^A-Za-z]*(?:[eE][-+]?\d[^A-Za-z]*)*)/g)];
  const points: Point[] = [];
  let form: SvgShape['form'] = 'line';
  for (const [, letter = '', rest = ''] of steps) {
    const wanted = letter.toUpperCase();
    if (form === 'closed' || (wanted === 'M' && points.length > 0))
      return say`its shape has several parts and a mark has one`;
    if (wanted === 'Z') form = 'closed';
    else if ('MLHV'.includes(wanted))
      points.push(...straight(points.at(-1) ?? [0, 0], wanted, letter !== wanted, numbersIn(rest)));
    else return say`its shape has curves, and a mark is made of straight lines`;
  }
  return finished(points, form);
}

function straight(from: Point, wanted: string, relative: boolean, numbers: readonly number[]): Point[] {
  const steps: Point[] = [];
  let at = from;
  const go = (x: number | null, y: number | null) => {
    const [fromX, fromY] = relative ? at : [0, 0];
    at = [x === null ? at[0] : fromX + x, y === null ? at[1] : fromY + y];
    steps.push(at);
  };
  if (wanted === 'H') for (const x of numbers) go(x, null);
  else if (wanted === 'V') for (const y of numbers) go(null, y);
  else for (const [x, y] of pairs(numbers)) go(x, y);
  return steps;
}
