/** Every word about the states of one painting: the time line, before and after, what became of the cards. Pure. */
import { figure, percent } from '../figures.ts';

const NTH = ['First', 'Second', 'Third', 'Fourth', 'Fifth', 'Sixth', 'Seventh', 'Eighth', 'Ninth', 'Tenth'];

/** @param at 0 = the first. */
const nth = (at: number) => NTH[at] ?? `${at + 1}th`;

export const statesWords = {
  link: 'States side by side',
  title: (painter: string, caption: string | null) =>
    caption ? `“${caption}”, state by state` : `${painter}’s painting, state by state`,
  back: (board: string) => `To the board ${board}`,
  loading: 'Fetching the states …',
  one: 'So far there is one state of this painting. Post the next photograph of it on the board, as the next state, and both stand here side by side.',

  line: {
    title: 'In order of time',
    label: (at: number) => `${nth(at)} state`,
    open: (at: number) => `Hold the ${nth(at).toLowerCase()} state against the one before`,
    first: 'The first state: there is none before it.',
    grade: (grade: string | null) => (grade === null ? 'photo not judged yet' : `photo ${grade}`),
    ladder: (at: number) => `Ladder of the ${nth(at).toLowerCase()} state, far to near`,
    rung: (name: string, dark: string, mid: string, light: string) =>
      `${name}: darks L* ${dark}, middle ${mid}, lights ${light}`,
    ghost: 'Dashed: the middles of the state before.',
    since: 'Since the state before',
    same: 'No change beyond the doubt.',
    noFigures: 'The state before has no figures yet, so nothing is told of what changed.',
    laying: 'Laying the two photos on one another …',
  },

  stage: {
    title: (from: number, to: number) =>
      `${nth(from)} and ${nth(to).toLowerCase()} state, laid on one another`,
    ways: 'How they are shown',
    wipe: 'One over the other',
    turn: 'In turn',
    change: 'What changed',
    before: (at: number) => `${nth(at)} state`,
    after: (at: number) => `${nth(at)} state, laid on the one before`,
    changed: 'Where it became lighter or darker',
    shows: (at: number) => `Shown: ${nth(at).toLowerCase()} state`,
    hold: 'Hold to see the state before',
    holdKey: 'The letter B does the same while it is held.',
    still: 'Hold still',
    goOn: 'Change in turn',
    edge: 'Edge between the two states',
    against: 'Against',
    legend: (doubtL: number) =>
      `Grey is what did not change by more than the photos can tell (${figure(doubtL, 0)} L*). Lighter than grey became lighter, darker became darker.`,
    shares: (lighter: number, darker: number) =>
      `Lighter on ${percent(lighter)} of the surface, darker on ${percent(darker)}.`,
    nothing: 'Nothing changed by more than the photos can tell.',
    missing: 'The pictures could not be fetched. Load the page again.',
  },

  cards: {
    title: 'What became of the advice',
    last: 'Since the last state',
    none: 'No card stood on the last state.',
    notYet: 'Told once both states have their planes and lie on one another.',
    eye: 'No figure tells this one; look for yourself.',
    own: (words: string) => `“${words}”`,
    done: 'Done with it',
    carry: 'Take it along',
    reopen: 'Open it again',
    closed: 'Closed.',
    carried: 'Goes along to the next state.',
    taken: 'It was taken on.',
    label: (where: string) => `What to do with ${where}`,
    before: (what: string) => `Last state: ${what}`,
  },

  planes: {
    offer: 'Take over the planes of the last state',
    busy: 'Laying the planes on this photo …',
    how: 'They lie where they lay: the two photos are laid on one another first.',
    done: (count: number) =>
      count === 1 ? 'One plane was taken over.' : `${figure(count, 0)} planes were taken over.`,
  },
} as const;
