/**
 * What hangs on this screen: which paintings, each in which state, and how its copies are asked for.
 *
 * In the flow: wall view + choice + data -> [hung] -> rows, chart, far, two large. Pure.
 */
import { copyAddress, losslessAddress } from '#app/_easel/picture-copies.tsx';
import { squaredFrameOf } from '#app/_easel/squared-frame.ts';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import type { PictureSize } from '#server/core/contract/picture-choices.ts';
import { MOST_HUNG, type WallPainting, type WallState } from '#server/core/contract/wall.ts';
import type { HungData } from './use-hung-data.ts';
import type { WallSource } from './wall-line.ts';

export interface Hung extends Pick<WallPainting, 'letter' | 'mine' | 'painter'> {
  state: WallState;
  data: HungData | null;
}

/** One of them whose figures are there. */
export interface MeasuredPainting {
  letter: string;
  /** Place on the wall, from 0. */
  index: number;
  document: MeasureDocument;
}

/** Those that have figures, in the order in which they hang. */
export function measuredOf(hung: readonly Hung[]): MeasuredPainting[] {
  return hung.flatMap(({ letter, data }, index) =>
    data?.document ? [{ letter, index, document: data.document }] : [],
  );
}

/** What somebody chose on their own screen. */
export interface Choice {
  /** Letters that hang; null = the first ones. */
  letters: readonly string[] | null;
  /** Letter → id of the state that is shown; a missing one shows the newest. */
  states: ReadonlyMap<string, string>;
}

export const USUAL_CHOICE: Choice = { letters: null, states: new Map() };

/** Letters that hang now, in the order of the wall; what left the board is left out. */
export function chosenLetters(paintings: readonly WallPainting[], { letters }: Choice): string[] {
  const all = paintings.map(({ letter }) => letter);
  return (letters === null ? all : all.filter((letter) => letters.includes(letter))).slice(0, MOST_HUNG);
}

/** The state of a painting that is shown: the chosen one while it is there, else the newest. */
export function shownState({ letter, states }: WallPainting, choice: Choice): WallState | undefined {
  return states.find(({ id }) => id === choice.states.get(letter)) ?? states.at(-1);
}

/** Width over height of the painting once it is squared. */
export function ratioOf({ state, data }: Hung): number {
  const frame = data?.work && squaredFrameOf(data.work.photo, state);
  const { width, height } = frame ? frame.size : state;
  return width / height;
}

/** The side ratio that all frames on the wall share: the middle one of those that hang. */
export function commonRatio(hung: readonly Hung[]): number {
  const ratios = hung.map(ratioOf).sort((one, other) => one - other);
  return ratios[Math.floor(ratios.length / 2)] ?? 1.5;
}

/** The small copy, put right as its painter set it; null until that is known. */
export function smallSource(boardId: string, { state, data }: Hung): WallSource | null {
  return data?.work ? { address: losslessAddress(boardId, state.id), photo: data.work.photo } : null;
}

/** A larger copy, put right alike. */
export function largeSource(boardId: string, { state, data }: Hung, size: PictureSize): WallSource | null {
  return data?.work ? { address: copyAddress(boardId, state.id, size), photo: data.work.photo } : null;
}
