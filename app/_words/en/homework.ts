/**
 * Every word about homework and the sheet to take along. Plain and kind: nobody is late, a day has passed. Pure.
 */
import type { AnswerAs } from '#server/core/contract/homework.ts';
import type { Paper, SheetKind } from '#server/core/sheet/content.ts';

export const homeworkWords = {
  title: 'Homework',
  set: 'Set homework',
  setMine: 'Set yourself homework',
  from: 'What is there to try?',
  own: 'An exercise in your own words',
  words: 'In words',
  wordsHint: 'For example: three values with a large brush, ten minutes.',
  check: 'To check (if you like)',
  day: 'For which day?',
  answerAs: 'What is posted for it?',
  answers: {
    state: 'the painting again, as its next state',
    exercise: 'a picture of its own, beside the painting',
  } satisfies Record<AnswerAs, string>,
  keep: 'Set it',
  keeping: 'Setting it …',
  cancel: 'Not now',

  forDay: (day: string) => `for ${day}`,
  passed: (day: string) => `It was meant for ${day}. Take the time it needs.`,
  by: (name: string) => `from ${name}`,
  mine: 'from you',
  checkLabel: 'To check',
  isIn: (when: string) => `It is in, since ${when}.`,
  see: 'See it',
  notIn: 'Not in yet.',
  closed: 'Closed.',
  closedOnes: (count: number) => (count === 1 ? 'Homework that is closed' : 'Homework that was closed'),

  post: { state: 'Post the next state', exercise: 'Post the picture' } satisfies Record<AnswerAs, string>,
  again: 'Post another one',
  sending: (share: string) => `Sending it … ${share}`,
  working: 'It has arrived and is being looked through …',

  move: 'Another day',
  keepDay: 'Keep the day',
  close: 'Close it',
  open: 'Open it again',
  takeBack: 'Take it back',

  home: {
    label: 'Homework',
    toTry: (board: string, words: string, day: string) => `Homework on “${board}”, ${day}: ${words}`,
    inAlready: (board: string, words: string) => `Homework on “${board}” is posted: ${words}`,
    isIn: (painter: string, board: string, words: string) =>
      `${painter} has posted homework on “${board}”: ${words}`,
  },
} as const;

export const takeAlongWords = {
  title: 'To take along',
  about:
    'One page to stand beside the easel: the painting with its numbers, what works, what to try, the ladder.',
  aboutPlan: 'One page for painting from: frames, values, the planned ladder.',
  paper: 'Paper',
  papers: { a4: 'A4', letter: 'Letter' } satisfies Record<Paper, string>,
  kinds: { pdf: 'Page to print (PDF)', png: 'Page as a picture (PNG)' } satisfies Record<SheetKind, string>,
  drawing: 'Drawing the page …',
  done: (name: string) => `The page is in your downloads, as ${name}.`,
} as const;
