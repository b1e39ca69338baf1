/** German. Every word of a painter's path over boards: what comes back, what was tried, what helped. Nobody counted. Pure. */
import type * as en from '../en/path.ts';
import type { Worded } from '../worded.ts';

/** "a", "a und b", "a, b und c". */
function list(parts: readonly string[]): string {
  if (parts.length < 2) return parts[0] ?? '';
  return `${parts.slice(0, -1).join(', ')} und ${parts.at(-1)}`;
}

const quoted = (title: string) => `„${title}“`;

export const pathWords: Worded<typeof en.pathWords> = {
  link: 'Dein Werdegang',
  linkOf: (name) => `Werdegang von ${name}`,
  title: 'Dein Werdegang',
  titleOf: (name) => `Werdegang von ${name}`,
  lead: 'Was in deinen Gemälden wiederkehrt, was du versucht hast und was geholfen hat, über alle deine Tafeln hinweg.',
  leadOf: (name) =>
    `Was in den Gemälden von ${name} wiederkehrt, was versucht wurde und was geholfen hat, auf den Tafeln, auf denen du unterrichtest. ${name} liest dasselbe.`,
  nothing:
    'Noch nichts. Sobald ein Gemälde von dir gemessen ist, sammelt sich hier, was wiederkehrt und was geholfen hat.',
  nothingOf: 'Noch nichts: Auf diesen Tafeln ist noch kein Gemälde dieser Person gemessen.',

  seen: {
    title: 'Wer das noch lesen darf',
    on: (board, names) =>
      names.length === 0
        ? `Was auf ${quoted(board)} steht: sonst nur, wer diesen Server betreibt.`
        : `Was auf ${quoted(board)} steht: ${list(names)}; außerdem, wer diesen Server betreibt.`,
  },

  readings: {
    title: 'Kehrt wieder',
    none: 'Kein Befund kam bei mehr als einem Gemälde vor.',
    stands: 'im neuesten Stand noch da',
    gone: 'im neuesten Stand verschwunden',
    single: 'zu sehen',
    on: (board, how) => ` auf ${quoted(board)}: ${how}`,
  },

  tried: {
    helped: 'Hat geholfen',
    helpedNone: 'Noch keine angenommene Karte zeigt sich in einem nächsten Stand.',
    trying: 'Versucht oder gerade in Arbeit',
    where: (where, what) => `${where}, ${what}`,
    not: 'aus Zahlen noch nicht abzulesen',
  },

  paintings: { title: 'Gemälde', states: 'Seine Stände nebeneinander', board: 'Auf der Tafel' },
  painting: (caption, at) => (caption ? quoted(caption) : `das Gemälde vom ${at}`),

  people: {
    title: 'Werdegang derer, die du unterrichtest',
    on: (boards) => `auf ${list(boards.map(quoted))}`,
  },

  states: {
    open: '',
    accepted: 'angenommen',
    adapted: 'anders gemacht',
    declined: 'bleibt so',
    tried: 'versucht',
    done: 'erledigt',
    carried: 'in den nächsten Stand mitgenommen',
  },
};
