/**
 * A measured pair as a table to read in a terminal. Pure.
 *
 * One line a plane and picture, far to near: value, colour, air, then the gap.
 */
import type { MeasureDocument, PlaneGap, PlaneMeasures } from '../core/contract/measures.ts';
import { gapWords } from '../core/gaps/gap-words.ts';
import { swappedWords } from '../core/gaps/order-words.ts';
import { aligned } from './aligned.ts';

type Key =
  | 'share'
  | 'dark'
  | 'mid'
  | 'light'
  | 'chroma'
  | 'strong'
  | 'hue'
  | 'warmCool'
  | 'airDistance'
  | 'airShare';

interface Column {
  readonly title: string;
  readonly key: Key;
  readonly digits: number;
  readonly factor: number;
}

const COLUMNS: readonly Column[] = [
  { title: 'share %', key: 'share', digits: 1, factor: 100 },
  { title: 'dark L*', key: 'dark', digits: 1, factor: 1 },
  { title: 'mid L*', key: 'mid', digits: 1, factor: 1 },
  { title: 'light L*', key: 'light', digits: 1, factor: 1 },
  { title: 'chroma', key: 'chroma', digits: 1, factor: 1 },
  { title: 'strong', key: 'strong', digits: 1, factor: 1 },
  { title: 'hue °', key: 'hue', digits: 0, factor: 1 },
  { title: 'warm-cool', key: 'warmCool', digits: 1, factor: 1 },
  { title: 'to air', key: 'airDistance', digits: 1, factor: 1 },
  { title: 'air', key: 'airShare', digits: 2, factor: 1 },
];

type Figures = Pick<PlaneMeasures, Key> | Pick<PlaneGap, Key>;

function cell(figures: Figures, { key, digits, factor }: Column, signed: boolean): string {
  const figure = figures[key];
  if (figure === null) return '–';
  const text = (figure * factor).toFixed(digits);
  return signed && !text.startsWith('-') ? `+${text}` : text;
}

function line(name: string, picture: string, figures: Figures, signed: boolean): string[] {
  return [name, picture, ...COLUMNS.map((column) => cell(figures, column, signed))];
}

function notesOf(document: MeasureDocument): string[] {
  return document.planes.flatMap(({ name, reference, painting }) => [
    ...(reference?.notes ?? []).map((note) => `${name}, reference: ${note}`),
    ...painting.notes.map((note) => `${name}, painting: ${note}`),
  ]);
}

function wordsOf(document: MeasureDocument): string[] {
  const planes = document.planes.flatMap((plane) => {
    const words = gapWords(plane, document.target, document.capture.grade);
    return words.length > 0 ? [`${plane.name}: ${words.join(', ')}`] : [];
  });
  return [
    ...planes,
    ...document.steps.map((step) => swappedWords(step, document.target)).filter((words) => words !== null),
  ];
}

/** The document as lines of text. */
export function measureTable(document: MeasureDocument): string {
  const rows = document.planes.flatMap(({ name, reference, painting, planned, gap }) => [
    ...(reference ? [line(name, 'reference', reference, false)] : []),
    ...(planned ? [line('', 'plan', planned, false)] : []),
    line(reference ? '' : name, 'painting', painting, false),
    ...(gap ? [line('', 'gap', gap, true)] : []),
  ]);
  const { key, span } = document.fit;
  const fit = key === null || span === null ? [] : [`key ${key.toFixed(1)} L*, span ${span.toFixed(2)}`];
  const sections = [
    [aligned([['plane', 'picture', ...COLUMNS.map(({ title }) => title)], ...rows], 2)],
    fit,
    wordsOf(document),
    notesOf(document),
  ];
  return sections
    .filter((section) => section.length > 0)
    .map((section) => section.join('\n'))
    .join('\n\n');
}
