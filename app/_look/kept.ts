/**
 * What the looking tools keep in this browser, for this person alone: guesses, and what the screen check found.
 *
 * Nothing of it is ever sent. A browser that keeps nothing gives nothing back. IO: the browser's storage.
 */
import type { Guess } from '#server/core/look/tendency.ts';

const GUESSES = 'veilstep-guesses';
const SCREEN = 'veilstep-screen';
/** Guesses kept: more than count for the tendency. */
const MOST_GUESSES = 200;

function read(key: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(key) ?? 'null');
  } catch {
    return null;
  }
}

function write(key: string, value: unknown): void {
  try {
    if (value === null) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(value));
  } catch {
    // Storage may be full or switched off; what was found then lasts as long as the page.
  }
}

const isStep = (value: unknown): value is number => typeof value === 'number' && value >= 0 && value <= 10;

function isGuess(value: unknown): value is Guess {
  if (typeof value !== 'object' || value === null) return false;
  const { at, guessed, shown } = value as Record<string, unknown>; // looked through below
  return typeof at === 'number' && isStep(guessed) && isStep(shown);
}

/** Oldest first; what is not a guess is left out. */
export function keptGuesses(): Guess[] {
  const kept = read(GUESSES);
  return Array.isArray(kept) ? kept.filter(isGuess) : [];
}

/** @returns All that are kept now. */
export function keepGuess(guess: Guess): Guess[] {
  const all = [...keptGuesses(), guess].slice(-MOST_GUESSES);
  write(GUESSES, all);
  return all;
}

export function forgetGuesses(): void {
  write(GUESSES, null);
}

/** What the screen check found: whether each end was told apart. */
export interface ScreenFound {
  /** ISO 8601. */
  at: string;
  dark: boolean;
  light: boolean;
}

export function keptScreen(): ScreenFound | null {
  const kept = read(SCREEN);
  if (typeof kept !== 'object' || kept === null) return null;
  const { at, dark, light } = kept as Record<string, unknown>; // looked through below
  return typeof at === 'string' && typeof dark === 'boolean' && typeof light === 'boolean'
    ? { at, dark, light }
    : null;
}

export function keepScreen(found: ScreenFound): void {
  write(SCREEN, found);
}
