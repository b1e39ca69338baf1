/**
 * Homework as it travels: something to try by a day, and the picture that answers it.
 *
 * In the flow: browser <-> [homework] <-> handlers, home page. Requests are parsed at the border. Pure.
 */
import type { PersonView } from './responses.ts';

export const HOMEWORK_LIMIT = 400;
export const HOMEWORK_CHECK_LIMIT = 1000;
/** A day lies at most this far ahead. */
export const MOST_HOMEWORK_DAYS = 366;

/** state = the next state of the painting; exercise = a picture of its own beside it. */
export const ANSWERS_AS = ['state', 'exercise'] as const;
export type AnswerAs = (typeof ANSWERS_AS)[number];

export interface HomeworkView {
  id: string;
  /** The newest state of the painting it is for that the caller may see. */
  pictureId: string;
  painter: PersonView;
  setBy: PersonView;
  /** ISO 8601. */
  setAt: string;
  /** Key of the card it came from; null = an exercise in free words. */
  cardKey: string | null;
  words: string;
  /** How one sees that it worked; may be empty. */
  check: string;
  /** 'YYYY-MM-DD'. */
  dueOn: string;
  answerAs: AnswerAs;
  /** The picture that answers it; null while none is in. */
  answer: { pictureId: string; at: string } | null;
  /** ISO 8601; null while it is open. */
  closedAt: string | null;
}

/** Homework with the board it is on, for the page of boards. */
export interface HomeworkAtHome {
  homework: HomeworkView;
  board: { id: string; title: string };
}

export interface HomeView {
  /** What the caller has to try, open, by day. */
  toTry: HomeworkAtHome[];
  /** Open homework that the caller set for others and that is in. */
  isIn: HomeworkAtHome[];
}
