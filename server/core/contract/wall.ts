/**
 * The wall of a board as it travels: paintings under letters, and how each lies in its photograph.
 *
 * In the flow: access/wall -> [wall] -> handlers, the wall's page. Types and limits only.
 */
import type { PersonView } from './responses.ts';
import type { BoardRole } from './roles.ts';
import type { FractionPoint, Outline, PhotoCorrection, PlaneKind } from './setup.ts';

/** As many paintings as hang beside one another, and as few as there is something to compare in. */
export const MOST_HUNG = 12;
export const LEAST_HUNG = 2;

/** Longest note of one thing to try, in characters. */
export const ONE_THING_LIMIT = 1000;

export interface WallState {
  /** Id of the picture. */
  id: string;
  /** Upright pixels of the original. */
  width: number;
  height: number;
}

export interface WallPainting {
  /** The same for everybody on the board. */
  letter: string;
  /** Whether the caller painted it. */
  mine: boolean;
  /** Null while the names are hidden and it is not the caller's own. */
  painter: PersonView | null;
  /** Oldest first, at least one. */
  states: WallState[];
}

/** A wall as one person sees it. No name of anybody else is in it before the names are shown. */
export interface WallView {
  boardId: string;
  title: string;
  meId: string;
  /** What the caller is on the board. */
  role: BoardRole;
  named: boolean;
  question: string;
  /** A class keeps figures and references back just now. */
  veiled: boolean;
  /** Paintings that the caller sees on the board do not hang here, for want of leave to show them to the class. */
  withheld: boolean;
  /** In the order in which they hang, which is the same for everybody. */
  paintings: WallPainting[];
}

/** How a painting lies in its photograph, and where its planes are. */
export interface WallWork {
  photo: PhotoCorrection;
  /** Far to near; outlines in 0..1 of the squared painting. Empty while figures are kept back. */
  planes: { name: string; kind: PlaneKind; outline: Outline }[];
}

/** One thing to try from a painting: a remark at a place of its upright original. */
export interface OneThing {
  text: string;
  at: FractionPoint;
}
