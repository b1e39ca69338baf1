/** Every word of a painter's path over boards: what comes back, what was tried, what helped. No scores, nobody counted. Pure. */
import type { SaidState } from '#server/core/contract/own-time.ts';

/** "a", "a and b", "a, b and c". */
function list(parts: readonly string[]): string {
  if (parts.length < 2) return parts[0] ?? '';
  return `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

export const pathWords = {
  link: 'Your path',
  linkOf: (name: string) => `${name}’s path`,
  title: 'Your path',
  titleOf: (name: string) => `${name}’s path`,
  lead: 'What comes back in your paintings, what you tried, and what helped, over all your boards.',
  leadOf: (name: string) =>
    `What comes back in ${name}’s paintings, what was tried, and what helped, on the boards where you teach. ${name} reads the same.`,
  nothing: 'Nothing yet. Once a painting of yours is measured, what comes back and what helped gathers here.',
  nothingOf: 'Nothing yet: no painting of theirs on these boards has been measured.',

  seen: {
    title: 'Who else may read this',
    on: (board: string, names: readonly string[]) =>
      names.length === 0
        ? `What is on ${board}: nobody else but the host of this server.`
        : `What is on ${board}: ${list(names)}, and the host of this server.`,
  },

  readings: {
    title: 'Comes back',
    none: 'No reading has come on more than one painting.',
    stands: 'still there in the newest state',
    gone: 'gone in the newest state',
    single: 'there',
    on: (board: string, how: string) => ` on ${board}: ${how}`,
  },

  tried: {
    helped: 'Helped',
    helpedNone: 'No card that was taken on shows in a next state yet.',
    trying: 'Tried, or being tried',
    where: (where: string, what: string) => `${where}, ${what}`,
    not: 'not told by figures yet',
  },

  paintings: { title: 'Paintings', states: 'Its states side by side', board: 'On the board' },
  painting: (caption: string | null, at: string) => (caption ? `“${caption}”` : `the painting of ${at}`),

  people: {
    title: 'Paths of those you teach',
    on: (boards: readonly string[]) => `on ${list(boards)}`,
  },

  states: {
    open: '',
    accepted: 'taken on',
    adapted: 'done another way',
    declined: 'left',
    tried: 'tried',
    done: 'done',
    carried: 'taken along',
  } satisfies Record<SaidState, string>,
};
