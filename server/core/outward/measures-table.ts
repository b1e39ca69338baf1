/**
 * Figures of a board as a table: a row for each plane of each painting and each side of it (reference, painting, and
 * painting minus target), every figure with its unit in the header and its 90 % interval beside it.
 *
 * In the flow: measure documents -> [measures-table] -> csv. Pure.
 */
import { GAP_KEYS, type GapKey, type MeasureDocument, type PlaneResult } from '../contract/measures.ts';
import type { Cell } from './csv.ts';

/** A picture with its figures, or the sentence that says why there are none. */
export interface MeasuredPicture {
  id: string;
  kind: 'reference' | 'painting';
  painter: string;
  caption: string | null;
  /** ISO 8601. */
  postedAt: string;
  measures: MeasureDocument | null;
  pending: string | null;
}

/** Unit of each figure, in the words of `contract/measures`. */
const UNITS: Record<GapKey, string> = {
  share: 'share of the picture 0..1',
  dark: 'CIE L* 5th percentile',
  mid: 'CIE L* median',
  light: 'CIE L* 95th percentile',
  spread: 'CIE L* light minus dark',
  munsellValue: 'Munsell value 0..10',
  chroma: 'C*ab median',
  strong: 'C*ab 90th percentile',
  hue: 'degrees',
  a: 'CIE a* median',
  b: 'CIE b* median',
  warmCool: 'warm + cool -',
  detail: 'RMS of fine L* per spread',
  edge: 'L* per % of picture width',
  airDistance: 'dE*ab 1976',
  airShare: 'share of air 0..1',
};

const NAMES: Record<GapKey, string> = {
  share: 'Area',
  dark: 'Dark',
  mid: 'Mid',
  light: 'Light',
  spread: 'Spread',
  munsellValue: 'Value',
  chroma: 'Chroma',
  strong: 'Strong chroma',
  hue: 'Hue',
  a: 'a*',
  b: 'b*',
  warmCool: 'Warm-cool',
  detail: 'Detail',
  edge: 'Edge',
  airDistance: 'Distance to the air',
  airShare: 'Air',
};

const HEAD: readonly string[] = [
  'Picture',
  'Kind',
  'Painter',
  'Caption',
  'Posted (UTC)',
  'Photo grade',
  'Target',
  'Plane',
  'Place (1 = farthest)',
  'Side',
  ...GAP_KEYS.flatMap((key) => {
    const unit = `${NAMES[key]} [${UNITS[key]}]`;
    return [unit, `${unit} 90 % from`, `${unit} 90 % to`];
  }),
  'Notes',
];

/** The header, then all rows; a picture without figures has one row that says what it waits for. */
export function measuresTable(pictures: readonly MeasuredPicture[]): Cell[][] {
  return [[...HEAD], ...pictures.flatMap(rowsOf)];
}

function rowsOf(picture: MeasuredPicture): Cell[][] {
  const { id, kind, painter, caption, postedAt, measures, pending } = picture;
  const head = [id, kind, painter, caption, postedAt];
  if (!measures) return [[...head, ...Array<null>(HEAD.length - head.length - 1).fill(null), pending ?? '']];
  const { grade } = measures.capture;
  return measures.planes.flatMap((plane, at) =>
    sidesOf(plane, kind).map(({ side, figures, doubt, notes }) => [
      ...[...head, grade, measures.target, plane.name, at + 1, side],
      ...GAP_KEYS.flatMap((key) => {
        const [from, to] = doubt[key] ?? [null, null];
        return [figures[key], from, to];
      }),
      notes.join(' '),
    ]),
  );
}

interface Side {
  side: string;
  figures: Readonly<Record<GapKey, number | null>>;
  doubt: Readonly<Record<string, readonly [number, number]>>;
  notes: readonly string[];
}

function sidesOf({ reference, painting, gap, doubt }: PlaneResult, kind: MeasuredPicture['kind']): Side[] {
  const sides: Side[] = [];
  if (reference)
    sides.push({ side: 'reference', figures: reference, doubt: reference.doubt, notes: reference.notes });
  sides.push({ side: kind, figures: painting, doubt: painting.doubt, notes: painting.notes });
  if (gap) sides.push({ side: 'painting minus target', figures: gap, doubt: doubt?.gap ?? {}, notes: [] });
  return sides;
}
