/** Words of carrying planes from one picture to another. In the flow: [en-carry] -> app/_carry. */
import type { Third } from '#app/_carry/unsure-places.ts';

function listed(parts: readonly string[]): string {
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

const THIRD: Record<Third, string> = { left: 'on the left', middle: 'in the middle', right: 'on the right' };

export const carryWords = {
  offer: 'Carry the planes over',
  offerRest: (count: number) =>
    count === 1 ? 'Carry over the one that is missing' : `Carry over the ${count} that are missing`,
  offerAgain: 'Carry the planes over anew',
  onEasel: 'The planes are being placed on the painting.',
  looking: 'Looking for where the planes lie in the painting …',
  fitting: 'Fitting the ridges …',
  ready: 'The planes lie on the painting. Drag them, or pull a corner, until they fit.',
  readyPlane: (name: string) => `Drag ‘${name}’, or pull a corner of it. The other planes stay.`,
  unsure: (doubts: readonly { name: string; where: 'all' | readonly Third[] }[]) =>
    `Not sure, marked “?”: ${listed(
      doubts.map(({ name, where }) =>
        where === 'all' ? `all of ‘${name}’` : `‘${name}’ ${listed(where.map((third) => THIRD[third]))}`,
      ),
    )}.`,
  allSure: 'Every ridge found its edge.',
  asLaid: 'The ridges lie as in the picture they come from; they are not drawn to the painted edges.',
  take: 'Take them',
  leave: 'Do not carry them',
  ridges: 'Ridges',
  fitted: 'Drawn to the painted edges',
  notFitted: 'As in the reference',
  again: 'Find the place again',
  from: 'From',
  which: 'Which planes',
  missing: (count: number) => (count === 1 ? 'The one missing' : `The ${count} missing`),
  all: (count: number) => `All ${count}`,
  move: 'Move',
  everything: 'All',
  plane: (number: number, name: string) => `${number}, ${name}`,
  reference: (at: number, count: number, caption: string | null) =>
    caption ?? (count > 1 ? `reference ${at}` : 'the reference'),
  painting: (painter: string, caption: string | null, state: number) =>
    caption
      ? `${caption}, ${painter}`
      : state > 1
        ? `${painter}’s painting, state ${state}`
        : `${painter}’s painting`,
  nothingThere: 'That picture has no planes to carry.',
  allThere: 'All of its planes are on the painting already. Choose ‘All’ to carry them anew.',
  away: 'The pictures could not be fetched. Look at the connection and try again.',
  tryAgain: 'Try again',
  heldBy: (person: string) => `${person} is placing planes on this painting just now.`,
  taken: (count: number) =>
    count === 1 ? 'One plane was carried over.' : `${count} planes were carried over.`,
  lookAgain: (names: readonly string[]) => `Look again at ${listed(names.map((name) => `‘${name}’`))}.`,
  undo: 'Undo',
  correct: 'Correct the outlines',
  keys: 'Arrow keys move the planes, with Shift farther; square brackets make them smaller or larger. Enter takes them, Escape leaves it.',
  handle: (corner: number) =>
    ['Top left corner', 'Top right corner', 'Bottom right corner', 'Bottom left corner'][corner] ?? 'Corner',
};
