/**
 * What is agreed about a board's wall, in the `setup` room: whether the names are shown, and the question of the day.
 *
 * Names themselves are never in a live document: whoever reads `named` here asks the server for them. In the flow: setup
 * document -> [wall] -> access/wall, the wall's page. Pure apart from the document given.
 */
import type * as Y from 'yjs';
import { z } from 'zod/mini';
import { putEntry } from './document.ts';

/** Longest question, characters: it is read from across the room. */
export const QUESTION_LIMIT = 200;

const LiveNamed = z.literal(true);
const LiveQuestion = z.string().check(z.minLength(1), z.maxLength(QUESTION_LIMIT));

export interface WallAgreed {
  /** Whether everybody is told who painted what. */
  named: boolean;
  /** Empty when nothing is asked. */
  question: string;
}

/** `setup.wall`: flat keys, so that who shows the names and who words the question lose nothing to each other. */
export function wallEntryFits(key: string, value: unknown): boolean {
  if (key === 'named') return LiveNamed.safeParse(value).success;
  return key === 'question' && LiveQuestion.safeParse(value).success;
}

export function readWall(doc: Y.Doc): WallAgreed {
  const map = doc.getMap('wall');
  return {
    named: map.get('named') === true,
    question: LiveQuestion.safeParse(map.get('question')).data ?? '',
  };
}

/** @param shown False hides them again. */
export function showNames(doc: Y.Doc, shown: boolean): void {
  putEntry(doc, 'wall', 'named', shown ? true : null);
}

/** @param question Cut at `QUESTION_LIMIT` characters; nothing but spaces takes it down. */
export function askOfTheDay(doc: Y.Doc, question: string): void {
  putEntry(doc, 'wall', 'question', question.trim().slice(0, QUESTION_LIMIT) || null);
}
