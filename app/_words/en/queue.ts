/**
 * Every word about looks that are asked for, what waits, phrases of one's own and what is new since one looked.
 *
 * Plain and kind: nobody is late, a day has passed. Days are said as people say them. Pure but for the reader's own
 * time zone.
 */

import type { MoveVerdict } from '#server/core/contract/moves.ts';
import type { NewsLine, PictureName, QueueRow, Repeated, SaidState } from '#server/core/contract/own-time.ts';
import type { PersonView } from '#server/core/contract/responses.ts';
import { dayOf, daysBetween } from '#server/core/own-time/days.ts';
import { VERDICTS } from './moves.ts';

const SMALL = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];
const NTH = [
  '',
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
];
const weekday = new Intl.DateTimeFormat('en-GB', { weekday: 'long' });
const date = new Intl.DateTimeFormat('en-GB', { weekday: 'long', day: 'numeric', month: 'long' });

const number = (count: number) => SMALL[count] ?? String(count);
const nth = (count: number) => NTH[count] ?? `${count}th`;
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function counted(count: number, one: string, many = `${one}s`): string {
  return `${number(count)} ${count === 1 ? one : many}`;
}

/** "a", "a and b", "a, b and c". */
function list(parts: readonly string[]): string {
  if (parts.length < 2) return parts[0] ?? '';
  return `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

/** A day that was promised, as one says it today. @param day, today 'YYYY-MM-DD'. */
export function dayWords(day: string, today: string): string {
  const away = daysBetween(today, day);
  const noon = new Date(`${day}T12:00:00`);
  if (away === 0) return 'today';
  if (away === 1) return 'tomorrow';
  if (away === -1) return 'yesterday';
  return away > 1 && away < 7 ? weekday.format(noon) : date.format(noon);
}

/** A moment gone by, as one says it today: "this morning", "Tuesday evening", "Monday 3 November". */
export function momentWords(iso: string, now: Date): string {
  const at = new Date(iso);
  const ago = daysBetween(dayOf(at), dayOf(now));
  const part =
    at.getHours() < 5
      ? 'night'
      : at.getHours() < 12
        ? 'morning'
        : at.getHours() < 18
          ? 'afternoon'
          : 'evening';
  if (ago <= 0) return part === 'night' ? 'last night' : `this ${part}`;
  if (ago === 1) return `yesterday ${part}`;
  return ago < 7 ? `${weekday.format(at)} ${part}` : date.format(at);
}

/** The day of a moment gone by, where it says since when something waits. */
export function sinceWords(iso: string, now: Date): string {
  return dayWords(dayOf(new Date(iso)), dayOf(now));
}

/** "“Low tide”", "your painting", "the second state of Hedda’s painting", "the reference". */
export function pictureWords({ caption, kind, painter, mine, state }: PictureName): string {
  if (caption) return state > 1 ? `“${caption}”, ${nth(state)} state` : `“${caption}”`;
  if (kind === 'reference') return 'the reference';
  const whose = mine ? 'your painting' : `${painter}’s painting`;
  return state > 1 ? `the ${nth(state)} state of ${whose}` : whose;
}

function postedWords({ kind, painter, state, caption }: PictureName): string {
  const called = caption ? ` “${caption}”` : '';
  if (kind === 'reference') return `a new reference${called}`;
  return state > 1 ? `a new state${called} by ${painter}` : `a new painting${called} by ${painter}`;
}

/** What came, picture by picture: "2 new remarks on “Low tide”, a new state by Hedda". */
export function newsWords(pictures: NewsLine['pictures']): string {
  const parts = pictures.flatMap(({ name, posted, remarks, answers, cards }) => {
    const on = [
      ...(remarks > 0 ? [counted(remarks, 'new remark')] : []),
      ...(cards > 0 ? [`${counted(cards, 'card')} written`] : []),
      ...(answers > 0 ? [`${number(answers)} answered`] : []),
    ];
    return [
      ...(posted ? [postedWords(name)] : []),
      ...(on.length > 0 ? [`${list(on)} on ${pictureWords(name)}`] : []),
    ];
  });
  return parts.join('; ');
}

/** What the reader calls somebody: themselves "you". */
export function calledBy(person: PersonView | null, meId: string): string | null {
  return person && (person.id === meId ? 'you' : person.name);
}

export const queueWords = {
  /** What somebody wrote, as they wrote it. */
  quoted: (text: string) => `“${text}”`,
  page: {
    title: 'Waiting for you',
    lead: 'Paintings you were asked to look at, the first promised first.',
    loading: 'Looking what waits …',
    none: 'Nothing waits for you.',
    noneHow:
      'When a painter asks for a look on a board where you teach, it stands here until you have given it.',
    notTeacher:
      'You give looks where you teach or run a board; so far there is no such board. What you asked for yourself stands on your boards.',
    back: 'To the boards',
    again: 'Look again',
    passed: 'The promised day has passed',
    today: 'Promised for today',
    promised: 'Promised',
    open: 'No day promised yet',
    others: 'Asked of somebody else',
  },

  row: {
    of: (painter: string, caption: string | null) =>
      caption ? `${painter}, “${caption}”` : `${painter}’s painting`,
    on: (board: string, states: number) => (states > 1 ? `${board}, ${nth(states)} state` : board),
    open: 'Open the painting',
    openThis: (painter: string) => `Open ${painter}’s painting`,
    picture: (painter: string) => `Painting by ${painter}`,
    reference: 'Reference',
    about: 'About',
    asked: 'Asked',
    last: (when: string, sameState: boolean) => (sameState ? `Said before, ${when}` : `Last time, ${when}`),
    nothingLast: 'Nothing was said of it before.',
    news: (when: string, news: string) => `Since you last looked (${when}): ${news}.`,
    noNews: (when: string) => `Nothing new since you last looked (${when}).`,
    never: 'You have not looked at this board yet.',
    nothing: 'Nothing was said of it before, and you have not looked at this board yet.',
    newsOf: ({ remarks, states, answers }: NonNullable<QueueRow['news']>) =>
      list([
        ...(states > 0 ? [counted(states, 'new state')] : []),
        ...(remarks > 0 ? [counted(remarks, 'new remark')] : []),
        ...(answers > 0 ? [`${counted(answers, 'card or remark', 'cards or remarks')} answered`] : []),
      ]),
    repeated: ({ name, paintings }: Repeated) =>
      `${capital(nth(paintings))} time: ${name.charAt(0).toLowerCase()}${name.slice(1)}`,
    went: (verdict: MoveVerdict) => `How far it went: ${VERDICTS[verdict]}.`,
    saidSince: 'You have said something since it was asked. Is it answered?',
  },

  states: {
    open: 'no word yet',
    accepted: 'will do it',
    adapted: 'does it another way',
    declined: 'left as it is',
    tried: 'tried',
    done: 'done',
    carried: 'goes along to the next state',
  } satisfies Record<SaidState, string>,

  promise: {
    waits: (since: string, of: string | null) =>
      of === null ? `Asked ${since} of any teacher.` : `Asked ${since} of ${of}.`,
    promised: (day: string, by: string | null) =>
      by ? `Promised for ${day} by ${by}.` : `Promised for ${day}.`,
    passed: (day: string, by: string | null) =>
      by
        ? `It was promised for ${day} by ${by}; that day has passed.`
        : `It was promised for ${day}; that day has passed.`,
    none: 'No day is promised yet.',
    give: 'Promise a day',
    other: 'Another day',
    day: 'Day of the look',
    usual: 'Two or three days is usual.',
    keep: 'Promise it',
    takeBack: 'Take the promise back',
    answered: 'Looked at',
    answering: 'Saying so …',
  },

  ask: {
    title: 'A look from a teacher',
    begin: 'Ask for a look',
    beginAgain: 'Ask for another look',
    of: 'Who is asked?',
    any: 'Any teacher',
    words: 'What would you like looked at? (if you like)',
    send: (of: string | null) => (of === null ? 'Ask any teacher for a look' : `Ask ${of} for a look`),
    sending: 'Asking …',
    mine: (since: string, of: string | null) =>
      of === null ? `You asked for a look ${since}.` : `You asked ${of} for a look ${since}.`,
    theirs: (who: string, since: string, of: string | null) =>
      of === null ? `${who} asked for a look ${since}.` : `${who} asked ${of} for a look ${since}.`,
    promised: (day: string, by: string | null) =>
      by ? `${by} promised it for ${day}.` : `It is promised for ${day}.`,
    passed: (day: string, by: string | null) =>
      by
        ? `${by} promised it for ${day}; that day has passed.`
        : `It was promised for ${day}; that day has passed.`,
    waiting: 'It waits; no day is promised yet.',
    goesOn: 'When you post the next state, the asking goes along to it.',
    answered: (by: string, when: string, earlier: boolean) =>
      earlier ? `${by} looked at an earlier state ${when}.` : `${by} has looked at it, ${when}.`,
    change: 'Change what you asked',
    keep: 'Keep',
    withdraw: 'Withdraw it',
    withdrawn: 'Withdrawn.',
  },

  home: {
    label: 'Looks that were asked for',
    waits: (count: number) =>
      count === 1 ? 'One painting waits for you' : `${capital(number(count))} paintings wait for you`,
    first: (day: string) => `the first promised for ${day}`,
    firstOne: (day: string) => `promised for ${day}`,
    passed: (day: string) => `the first was promised for ${day}`,
    passedOne: (day: string) => `it was promised for ${day}`,
    noDay: 'no day promised yet',
    open: 'See what waits',
    own: {
      promised: (board: string, day: string) => `Your painting on ${board}: a look is promised for ${day}.`,
      waiting: (board: string, since: string) => `Your painting on ${board} waits for a look since ${since}.`,
      answered: (board: string, by: string, when: string) =>
        `${by} looked at your painting on ${board} ${when}.`,
    },
  },

  since: {
    label: 'Since you last looked',
    line: (when: string, news: string) => `Since you last looked (${when}): ${news}.`,
    head: (when: string) => `Since you last looked (${when})`,
    nothing: (when: string) => `Nothing new since you last looked (${when}).`,
    fresh: 'New',
    freshAnswer: 'New answer',
  },

  phrases: {
    open: 'Phrases',
    label: 'Your own phrases',
    private: 'Only you can read these.',
    search: 'Find a phrase',
    none: 'You keep no phrases yet. Write what you often say and keep it here.',
    noMatch: 'No phrase has these words.',
    keepWritten: 'Keep what I wrote as a phrase',
    keepSaid: (words: string) => `Keep what I just said: “${words}”`,
    kept: 'Kept.',
    slots: 'Gaps are filled where it is known: {plane}, {part}, {amount}.',
    edit: 'Put phrases in order',
    title: 'Phrases of your own',
    add: 'A new phrase',
    addIt: 'Keep it',
    change: 'Change the words',
    field: 'Words of the phrase',
    save: 'Keep',
    remove: 'Delete',
    up: 'Move up',
    down: 'Move down',
    moveLabel: (what: string, phrase: string) => `${what}: ${phrase}`,
    full: (most: number) => `You keep ${most} phrases, which is as many as there may be.`,
  },
  cancel: 'Cancel',
};
