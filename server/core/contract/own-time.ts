/**
 * What the server answers about looks that were asked for, a person's own phrases, and what is new since they looked.
 * Types only; handlers and screens share them.
 */
import type { MoveVerdict } from './moves.ts';
import type { PersonView } from './responses.ts';

/** A painter asked for a look at one painting. */
export interface AskView {
  id: string;
  /** The state that stood there when it was asked. */
  askedAbout: string;
  /** The newest state of the same painting that the caller may see: where the asking stands now. */
  pictureId: string;
  askedBy: PersonView;
  /** Null = any teacher. */
  askedOf: PersonView | null;
  /** The painter's line; may be empty. */
  words: string;
  /** ISO 8601. */
  askedAt: string;
  /** A day, 'YYYY-MM-DD', or null while none was promised. */
  promisedFor: string | null;
  promisedBy: PersonView | null;
  /** ISO 8601; null = it waits. */
  answeredAt: string | null;
  answeredBy: PersonView | null;
}

/** What became of a remark or a card, as its painter said. */
export type SaidState = 'open' | 'accepted' | 'adapted' | 'declined' | 'tried' | 'done' | 'carried';

/** What somebody said on an earlier occasion, and what became of it. */
export interface SaidThen {
  /** Id of a mark, or key of a card. */
  key: string;
  /** Plane or part in words; empty = the picture as a whole. */
  where: string;
  words: string;
  state: SaidState;
  /** The painter's own words to it; may be empty. */
  answer: string;
  /** Of a card of an earlier state: how much of it the newest state shows; null where figures tell nothing. */
  went: MoveVerdict | null;
}

/** The last occasion on which something was said of a painting. */
export interface LastTime {
  pictureId: string;
  /** Whether it was about the very state that stands now. */
  sameState: boolean;
  /** ISO 8601: when the last of it was said, or, where only cards stand there, when the state was posted. */
  at: string;
  cards: SaidThen[];
  remarks: SaidThen[];
}

/** The same reading on several paintings of one person. */
export interface Repeated {
  /** Id of the reading, such as `V4`. */
  id: string;
  /** What the trade calls it. */
  name: string;
  /** On how many of the person's paintings it stands, three or more. */
  paintings: number;
}

/** One painting that waits for a look. */
export interface QueueRow {
  ask: AskView;
  board: { id: string; title: string };
  painting: { id: string; caption: string | null; states: number };
  referenceId: string | null;
  /** First line of what the painting is about; may be empty. */
  intention: string;
  last: LastTime | null;
  repeated: Repeated[];
  /** What came since the caller last looked at the board; null when they never did. */
  news: { lookedAt: string; remarks: number; states: number; answers: number } | null;
  /** Whether the caller has said something of this painting since it was asked. */
  saidSince: boolean;
  /** False when another teacher was asked by name. */
  forMe: boolean;
}

/** What one person asked for and waits for. */
export interface OwnAsk {
  ask: AskView;
  board: { id: string; title: string };
}

export interface QueueView {
  /** Person id of the caller. */
  meId: string;
  /** Whether there is any board on which the caller gives looks. */
  teaches: boolean;
  /** By promised day, then by how long they wait; those without a day after those with one. */
  rows: QueueRow[];
}

/** What waits, in short, for the page of boards. */
export interface WaitingView {
  teaches: boolean;
  /** How many paintings wait for the caller; those that somebody else was asked about by name are left out. */
  count: number;
  /** The earliest promised day among them, 'YYYY-MM-DD'; null while none was promised. */
  firstDay: string | null;
  /** What the caller asked for: what waits, and what was answered within the last fortnight; newest first. */
  own: OwnAsk[];
}

export interface PhraseView {
  id: string;
  words: string;
}

/** What came onto a board since somebody last looked at it; lists hold at most 300 entries. */
export interface BoardNews {
  /** ISO 8601. */
  lookedAt: string;
  /** Marks and replies of others that have not been in view. */
  remarks: { id: string; pictureId: string }[];
  /** Pictures that others posted. */
  pictures: string[];
  /** Cards and remarks that were answered, by key. */
  answers: { pictureId: string; key: string }[];
  /** Cards that were written or changed, by key. */
  cards: { pictureId: string; key: string }[];
}

/** One line of the list of boards: how much came, picture by picture. */
export interface NewsLine {
  lookedAt: string;
  pictures: {
    id: string;
    name: PictureName;
    posted: boolean;
    remarks: number;
    answers: number;
    cards: number;
  }[];
}

/** Enough of a picture to call it by. */
export interface PictureName {
  caption: string | null;
  kind: 'reference' | 'painting';
  painter: string;
  mine: boolean;
  /** 1 = the first state of a painting. */
  state: number;
}
