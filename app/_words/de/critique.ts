/**
 * German. Every word of the adjustment cards, the readings, what works and the focus.
 *
 * Plain, kind, exact: nothing that ranks. The sentences of the readings come from the server's own rules. Pure.
 */
import { sayValue } from '#server/core/say/say.ts';
import type * as en from '../en/critique.ts';
import type { Worded } from '../worded.ts';

/** What the rules write where painters do and teach something without a book that is cited for it. */
const NO_BOOK = 'common practice, no source';
const isWithoutBook = (source: string) => source === NO_BOOK || source === sayValue(NO_BOOK);

export const critiqueWords: Worded<typeof en.critiqueWords> = {
  cards: {
    title: 'Vorschläge',
    first: 'Zuerst',
    next: 'Dann',
    aside: (count) => (count === 1 ? 'Eine weitere Karte' : `${count} weitere Karten`),
    empty: 'Nichts weicht so weit von der Vorlage ab, dass dieses Foto es sicher zeigt. Schau, was gelingt.',
    emptyLife: 'Nach der Natur gemalt: Es gibt nichts zum Vergleichen, darum stehen hier nur Prüfungen.',
    noPlanes: 'Sobald die Ebenen umrissen und gemessen sind, steht hier, was du zuerst versuchen kannst.',
    noPlanesLook: 'Sobald die Ebenen umrissen sind, steht hier, was sich zuerst versuchen lässt.',
    coming: 'Die Ebenen werden gemessen …',
    again: 'wird neu gemessen',
    checkLabel: 'Prüfe:',
    why: 'Warum',
    source: (source) =>
      isWithoutBook(source)
        ? 'So machen es Malende üblicherweise; kein Buch wird dafür angeführt.'
        : `Quelle: ${source}.`,
    changed: 'In den Worten der Lehrperson',
    own: 'Von der Lehrperson',
    unmeasured: 'Die Zahlen sagen das nicht mehr; die Worte der Lehrperson bleiben.',
    dropped: 'Von der Lehrperson weggelassen',
    headline: (where, what) => `${where}: ${what}`,
    place: (where, what) => `${where}, ${what}`,
  },

  answer: {
    label: (where) => `Antwort auf die Karte „${where}“`,
    accept: 'Das mache ich',
    adapt: 'Anders',
    decline: 'So lassen',
    meant: 'So gewollt',
    takeBack: 'Zurücknehmen',
    change: 'Worte ändern',
    takeUp: 'Wieder aufnehmen',
    keep: 'Festhalten',
    askAdapt: 'Wie machst du es?',
    askDecline: 'Warum lässt du es so? (wenn du magst)',
    askMeant: 'Was wolltest du damit? (wenn du magst)',
    forPainter: (name) => `Die Antwort ist Sache von ${name}; du kannst sie stellvertretend geben.`,
    mine: {
      accepted: 'Das machst du.',
      adapted: 'Du machst es anders.',
      declined: 'Du lässt es so.',
      tried: 'Du hast es versucht.',
      done: 'Du hast es gemacht.',
      carried: 'Du nimmst es in den nächsten Stand mit.',
    },
    theirs: {
      accepted: (name) => `${name} macht das.`,
      adapted: (name) => `${name} macht es anders.`,
      declined: (name) => `${name} lässt es so.`,
      tried: (name) => `${name} hat es versucht.`,
      done: (name) => `${name} hat es gemacht.`,
      carried: (name) => `${name} nimmt es in den nächsten Stand mit.`,
    },
    lapsed: 'Schon einmal beantwortet; jetzt steht etwas anderes darauf.',
    quote: (words) => `„${words}“`,
  },

  teacher: {
    label: (where) => `Karte „${where}“ ändern`,
    rewrite: 'Umschreiben',
    up: 'Nach oben',
    down: 'Nach unten',
    drop: 'Karte weglassen',
    bringBack: 'Zurückholen',
    asMeasured: 'Wieder wie gemessen',
    remove: 'Löschen',
    add: 'Karte schreiben',
    keep: 'Festhalten',
    place: 'Wo',
    whole: 'Das ganze Bild',
    parts: { what: 'Was zu tun ist', how: 'Wie', why: 'Warum', check: 'Wie es sich prüfen lässt' },
    back: 'Ein leeres Feld zeigt wieder, was gemessen wurde.',
    whatHint: 'Zum Beispiel „Lichter: ein wenig dunkler“',
  },

  readings: {
    title: (count) => (count === 1 ? 'Der eine Befund' : `Alle ${count} Befunde`),
    none: 'Zu diesem Bild meldet sich kein Befund.',
    forms: { finding: 'Weicht ab', question: 'Eine Frage', check: 'Zu prüfen' },
    photo: 'Das Foto des Gemäldes',
    quiet: 'Still',
    meant: 'Gewollt',
    meantWhy: (reason) => `Gewollt: „${reason}“`,
    notMeant: 'Doch nicht gewollt',
    withheld:
      'Kein Grau oder Weiß verrät das Licht dieses Fotos; darum werden keine Beträge genannt, und zur Farbe wird nichts gesagt. Eine Graukarte oder weiße Karte, im Foto markiert, würde das ändern.',
    squareUp: 'Foto entzerren',
  },

  works: {
    title: 'Was gelingt',
    nothing: {
      reference: 'Noch ließ sich keine Ebene vergleichen.',
      plan: 'Noch ließ sich keine Ebene vergleichen.',
      none: 'Noch ließ sich keine Ebene messen.',
    },
    also: 'Auch zu sehen',
  },

  focus: {
    mark: 'Blickpunkt auf dem Gemälde setzen',
    none: 'Kein Blickpunkt ist gesetzt.',
    at: (place) => `Blickpunkt im Gemälde: ${place}.`,
    move: 'Verschieben',
    remove: 'Wegnehmen',
    how: 'Zeig auf die Stelle im Gemälde, an der das Auge zur Ruhe kommen soll.',
    keys: 'Pfeiltasten bewegen das Kreuz, Leertaste oder Eingabe setzt den Blickpunkt dort.',
    onlyPainting: 'Der Blickpunkt wird auf dem Gemälde gesetzt, nicht auf der Vorlage.',
    onlyLook: 'Den Blickpunkt setzt, wer dieses Bild gemalt hat, hier unterrichtet oder den Server betreibt.',
    notNow: 'Jetzt nicht',
  },

  said: {
    accepted: (where) => `${where}: angenommen.`,
    adapted: (where, words) => `${where}: wird anders gemacht. ${words}`,
    declined: (where, words) => `${where}: bleibt so. ${words}`,
    tried: (where) => `${where}: versucht.`,
    done: (where) => `${where}: erledigt.`,
    carried: (where) => `${where}: kommt in den nächsten Stand mit.`,
    takenBack: (where) => `${where}: Die Antwort wurde zurückgenommen.`,
    changed: (where, what) => `Die Karte „${where}“ wurde geändert: ${what}`,
    left: (where) => `Die Karte „${where}“ wurde weggelassen.`,
    gone: 'Eine Karte wurde entfernt.',
    meant: 'Ein Befund gilt jetzt als gewollt.',
    notMeant: 'Ein Befund meldet sich wieder.',
  },
};
