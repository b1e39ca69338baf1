/**
 * What the server answers about the states of one painting: how they lie on one another, what changed, how much of each
 * advised move was made, and a painter's path over boards. Types only; handlers and screens share them.
 */
import type { ActionMove, MoveVerdict, StateChange } from './moves.ts';
import type { SaidState } from './own-time.ts';
import type { PersonView } from './responses.ts';

type Row = readonly [number, number, number];
/** A homography, row by row; as `Matrix3` of core/geometry. */
type Homography = readonly [Row, Row, Row];

/** Two states of one painting, by their picture ids. */
export interface StatePair {
  readonly boardId: string;
  readonly earlierId: string;
  readonly laterId: string;
}

/** How a later state lies on an earlier one; see `StateAlignment`. */
export interface ComparedFacts {
  toLater: Homography;
  agreement: number;
  movedBy: number;
  /** Why they are not compared, in a whole sentence; null where they are. */
  trouble: string | null;
  /** What the pictures of the change show; null where they are not compared. */
  shown: { widthPx: number; heightPx: number; doubtL: number; lighter: number; darker: number } | null;
}

/** One plane in a small ladder: L* of its darks, middle and lights. */
export interface SmallRung {
  name: string;
  dark: number | null;
  mid: number | null;
  light: number | null;
}

export interface StateView {
  id: string;
  caption: string | null;
  width: number;
  height: number;
  /** How its photo is squared, for looking at: from fractions of the photo, and width over height; null without corners. */
  squared: { toSquared: Homography; ratio: number } | null;
  /** ISO 8601. */
  postedAt: string;
  grade: 'A' | 'B' | 'C' | null;
  /** Far to near; empty until it is measured. */
  ladder: SmallRung[];
  /** Whether planes are outlined on this state itself, and not on the reference alone. */
  outlined: boolean;
  /** Why there are no figures yet; null where there are. */
  pending: string | null;
}

/** What became of one card. */
export interface CardResult {
  /** State on which the card stands, and its key there. */
  pictureId: string;
  key: string;
  where: string;
  what: string;
  state: SaidState;
  /** The painter's own words to it; may be empty. */
  answer: string;
  /** What figures tell of it, the leading piece of advice first; empty where none can. */
  moves: ActionMove[];
}

/** From one state to the next. */
export interface StepView {
  from: string;
  to: string;
  /** True while the two are being laid on one another. */
  pending: boolean;
  facts: ComparedFacts | null;
  /** Planes far to near. */
  changes: StateChange[];
  cards: CardResult[];
}

export interface StatesView {
  board: { id: string; title: string };
  painter: PersonView;
  mine: boolean;
  /** Whether the caller may close cards and take them along. */
  mayAnswer: boolean;
  /** Oldest first. */
  states: StateView[];
  /** One between each two; none where there is one state. */
  steps: StepView[];
}

/** A painting on somebody's path. */
export interface PathPainting {
  board: { id: string; title: string };
  /** Its newest state. */
  pictureId: string;
  caption: string | null;
  width: number;
  height: number;
  /** Several states: there is a time line of it. */
  hasStates: boolean;
  /** ISO 8601, of the newest state. */
  postedAt: string;
}

/** A reading that came on more than one painting. */
export interface PathReading {
  id: string;
  /** What the trade calls it. */
  name: string;
  why: string;
  on: { painting: PathPainting; stands: boolean }[];
}

/** A card that was taken on, and what the next state shows of it. */
export interface PathTried {
  painting: PathPainting;
  where: string;
  what: string;
  state: SaidState;
  /** Null where figures tell nothing, or not yet. */
  went: MoveVerdict | null;
}

export interface PathView {
  person: PersonView;
  mine: boolean;
  /** Newest first. */
  paintings: PathPainting[];
  readings: PathReading[];
  tried: PathTried[];
  /** Who else may see this, board by board: names of owners and teachers. */
  seenBy: { board: { id: string; title: string }; names: string[] }[];
}

/** A painter whose path the caller may see, and through which boards. */
export interface PathPerson extends PersonView {
  boards: string[];
}
