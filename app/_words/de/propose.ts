/** German. Pure. */
import type * as en from '../en/propose.ts';
import type { Worded } from '../worded.ts';

const NUMBERS = ['keine', 'eine', 'zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun'];
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
/** With the article after a verb, and after a word that asks for the dative. */
const SIDE = { reference: 'die Vorlage', painting: 'das Gemälde' } as const;
const IN_SIDE = { reference: 'in der Vorlage', painting: 'im Gemälde' } as const;

/** "eine Ebene", "fünf Ebenen", "12 Ebenen". */
export const planesInWords: typeof en.planesInWords = (count) =>
  `${NUMBERS[count] ?? count} ${count === 1 ? 'Ebene' : 'Ebenen'}`;

export const proposeWords: Worded<typeof en.proposeWords> = {
  find: 'Ebenen finden',
  again: 'Ebenen neu finden',
  offer:
    'Noch keine Ebenen. Sie lassen sich im Bild finden, und du wählst aus; oder du zeichnest sie von Hand.',
  title: { reference: 'Ebenen in der Vorlage', painting: 'Ebenen im Gemälde' },
  where: 'Suchen in',
  sides: { reference: 'Vorlage', painting: 'Gemälde' },
  lead: 'Sieh dir jede Aufteilung im Bild an, und nimm eine. Namen und Linien lassen sich später berichtigen.',
  leadMatch: (count) =>
    `Umrisse für die ${planesInWords(count)} der Tafel, von fern nach nah in ihrer Reihenfolge. Namen und Arten bleiben, wie sie sind.`,
  doing: {
    fetch: (side) => `${capital(SIDE[side])} wird zum genauen Hinsehen geholt …`,
    propose: 'Die Kämme werden nachgezogen, und was dazwischen liegt, wird zusammengefasst …',
  },
  away: 'Das Bild war nicht zu holen. Sieh nach, ob dieses Gerät noch im Netz ist, und versuch es noch einmal.',
  tooOld:
    'Dieser Browser konnte im Bild nicht nach Ebenen suchen. Von Hand lassen sie sich weiterhin zeichnen.',
  tryAgain: 'Noch einmal',
  groupings: 'Aufteilungen, von wenigen Ebenen zu vielen',
  keys: 'Pfeiltasten zeigen eine andere Aufteilung, Eingabe nimmt die gezeigte.',
  suggested: 'Vorschlag',
  caption: (count) => planesInWords(count),
  grouping: (names, suggested) =>
    `${capital(planesInWords(names.length))}: ${names.join(', ')}.${suggested ? ' Vorschlag.' : ''}`,
  why: (reason) => `Vorschlag. ${reason}`,
  take: (count) => (count === 1 ? 'Diese eine Ebene nehmen' : `Diese ${planesInWords(count)} nehmen`),
  takeMatch: (side) => `Diese Umrisse auf ${SIDE[side]} legen`,
  leave: 'Lassen, wie es ist',
  ownNames: 'Die Ebenen, die es schon gibt',
  keep: 'Behalten, mit neuen Umrissen',
  keepWhy: (side) =>
    `Namen, Arten und alles, was zu ihnen gesagt wurde, bleiben; nur ihre Linien ${IN_SIDE[side]} ändern sich.`,
  replace: 'Durch diese ersetzen',
  replaceWhy: (before) =>
    before === 1
      ? 'Die bisherige Ebene geht, mit ihren Umrissen in jedem Bild. „Rückgängig“ holt sie zurück.'
      : `Die bisherigen ${planesInWords(before)} gehen, mit ihren Umrissen in jedem Bild. „Rückgängig“ holt sie zurück.`,
  taken: (count, side) =>
    `${capital(planesInWords(count))} ${IN_SIDE[side]}, von fern nach nah. Wähle eine, um sie zu benennen oder ihre Linie zu berichtigen.`,
  laid: (side) =>
    `Neue Umrisse liegen auf ${side === 'reference' ? 'der Vorlage' : 'dem Gemälde'}. Wähle eine Ebene, um ihre Linie zu berichtigen.`,
  undo: 'Rückgängig',
  overtaken: 'Im selben Augenblick hat jemand andere Ebenen genommen; jetzt gelten diese.',
  choosing: (person) => `${person} wählt gerade Ebenen.`,
  byHand: 'Oder von Hand',
  none: 'Von Hand kannst du sie weiterhin zeichnen.',
  tooMany: (count) =>
    `Auf der Tafel ${count === 1 ? 'ist' : 'sind'} ${planesInWords(count)}; zwei bis sieben lassen sich in einem Bild finden. Übertrag ihre Umrisse von der Vorlage, oder zeichne sie von Hand.`,
  noMatch: 'Übertrag die Umrisse von der Vorlage, oder zeichne sie von Hand.',
  onlyLook:
    'Noch keine Ebenen. Sie wählt, wer die Tafel angelegt hat, hier unterrichtet oder den Server betreibt; dann erscheinen sie hier sofort.',
  notYours:
    'Dieses Gemälde darf nur umreißen, wer es gemalt hat, hier unterrichtet oder den Server betreibt.',
  keyList: { find: 'Ebenen finden', post: 'Bilder zum Einstellen wählen' },
};
