/**
 * Whether two pieces of advice would undo each other.
 *
 * In the flow: findings -> [undo] -> cards, priorities. Two ways: opposite directions on overlapping parts of one
 * plane; or one plane moved away from another while the other is sent after it. Pure.
 */
import type { CardDirection, CardPart } from '../contract/critique.ts';
import type { Lever } from './rule.ts';

const OPPOSITE: [CardDirection, CardDirection][] = [
  ['lift', 'deepen'],
  ['narrow', 'widen'],
  ['grey', 'strengthen'],
  ['cool', 'warm'],
  ['cool', 'back-from-air'],
  ['toward-air', 'back-from-air'],
  ['toward-air', 'warm'],
  ['soften', 'sharpen'],
];

const OVERLAPS: [CardPart, CardPart][] = [
  ['whole', 'darks'],
  ['whole', 'lights'],
  ['whole', 'shadows'],
  ['darks', 'shadows'],
  ['colour', 'shadows'],
  ['detail', 'edge'],
];

function listed<T>(pairs: [T, T][], one: T, two: T): boolean {
  return pairs.some(([p, q]) => (p === one && q === two) || (p === two && q === one));
}

/** A lever with the planes its finding compares. */
export interface Move {
  lever: Lever;
  /** Planes the advice is measured against, its own among them. */
  compares: readonly string[];
}

function opposed({ lever: one }: Move, { lever: two }: Move): boolean {
  if (one.plane !== two.plane) return false;
  const overlap = one.part === two.part || listed(OVERLAPS, one.part, two.part);
  return overlap && listed(OPPOSITE, one.direction, two.direction);
}

function sentAfter(one: Move, two: Move): boolean {
  const { lever } = one;
  const other = two.lever;
  if (other.plane === null || lever.plane === null || lever.plane === other.plane) return false;
  return (
    lever.part === other.part && lever.direction === other.direction && one.compares.includes(other.plane)
  );
}

export function undoesEachOther(one: Move, two: Move): boolean {
  return opposed(one, two) || sentAfter(one, two) || sentAfter(two, one);
}

/** The same for everything that two cards say. */
export function cardsUndoEachOther(one: readonly Move[], two: readonly Move[]): boolean {
  return one.some((move) => two.some((other) => undoesEachOther(move, other)));
}
