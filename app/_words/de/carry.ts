/** German. Words of carrying planes from one picture to another. Pure. */
import type { Third } from '#app/_carry/unsure-places.ts';
import type * as en from '../en/carry.ts';
import type { Worded } from '../worded.ts';

function listed(parts: readonly string[]): string {
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} und ${parts.at(-1)}`;
}

const THIRD: Record<Third, string> = { left: 'links', middle: 'in der Mitte', right: 'rechts' };

export const carryWords: Worded<typeof en.carryWords> = {
  offer: 'Ebenen übertragen',
  offerRest: (count) => (count === 1 ? 'Die fehlende Ebene übertragen' : `Die ${count} fehlenden übertragen`),
  offerAgain: 'Ebenen neu übertragen',
  onEasel: 'Die Ebenen werden auf das Gemälde gelegt.',
  looking: 'Es wird gesucht, wo die Ebenen im Gemälde liegen …',
  fitting: 'Die Kämme werden angepasst …',
  ready: 'Die Ebenen liegen auf dem Gemälde. Zieh sie zurecht oder zieh an einer Ecke, bis sie passen.',
  readyPlane: (name) =>
    `„${name}“: Zieh die Ebene zurecht oder zieh an einer ihrer Ecken. Die anderen Ebenen bleiben.`,
  unsure: (doubts) =>
    `Nicht sicher, mit „?“ bezeichnet: ${doubts
      .map(({ name, where }) =>
        where === 'all' ? `„${name}“ ganz` : `„${name}“ ${listed(where.map((third) => THIRD[third]))}`,
      )
      .join('; ')}.`,
  allSure: 'Jeder Kamm hat seine Kante gefunden.',
  asLaid: 'Die Kämme liegen wie im Bild, aus dem sie kommen; sie sind nicht an die gemalten Kanten gezogen.',
  take: 'Übernehmen',
  leave: 'Nicht übertragen',
  ridges: 'Kämme',
  fitted: 'An die gemalten Kanten gezogen',
  notFitted: 'Wie in der Vorlage',
  again: 'Platz neu suchen',
  from: 'Woher',
  which: 'Welche Ebenen',
  missing: (count) => (count === 1 ? 'Die fehlende' : `Die ${count} fehlenden`),
  all: (count) => `Alle ${count}`,
  move: 'Verschieben',
  everything: 'Alle',
  plane: (number, name) => `${number}, „${name}“`,
  reference: (at, count, caption) => caption ?? (count > 1 ? `Vorlage ${at}` : 'Vorlage'),
  painting: (painter, caption, state) =>
    caption
      ? `${caption}, ${painter}`
      : state > 1
        ? `Gemälde von ${painter}, Stand ${state}`
        : `Gemälde von ${painter}`,
  nothingThere: 'Auf diesem Bild sind keine Ebenen, die sich übertragen ließen.',
  allThere: 'Alle Ebenen von dort sind schon auf dem Gemälde. Wähle „Alle“, um sie neu zu übertragen.',
  away: 'Die Bilder ließen sich nicht holen. Sieh nach, ob die Verbindung steht, und versuch es noch einmal.',
  tryAgain: 'Noch einmal',
  heldBy: (person) => `${person} legt gerade Ebenen auf dieses Gemälde.`,
  taken: (count) => (count === 1 ? 'Eine Ebene wurde übertragen.' : `${count} Ebenen wurden übertragen.`),
  lookAgain: (names) => `Sieh noch einmal nach: ${listed(names.map((name) => `„${name}“`))}.`,
  undo: 'Rückgängig',
  correct: 'Umrisse berichtigen',
  keys: 'Pfeiltasten verschieben die Ebenen, mit Umschalt weiter; eckige Klammern machen sie kleiner oder größer. Eingabe übernimmt sie, Esc lässt es.',
  handle: (corner) =>
    ['Ecke oben links', 'Ecke oben rechts', 'Ecke unten rechts', 'Ecke unten links'][corner] ?? 'Ecke',
};
