/** German. Pure. */
import type * as en from '../en/photo.ts';
import type { Worded } from '../worded.ts';
import { photoShownWords } from './photo-shown.ts';

/** "weniger als 1 %", "3 %". @param share 0..1. */
export const percentWords: typeof en.percentWords = (share) =>
  share < 0.01 ? 'weniger als 1 %' : `${Math.round(share * 100)} %`;

const CORNER_KEYS = 'Ecke des Gemäldes. Pfeiltasten bewegen sie, mit Umschalt weiter.';

export const words: Worded<typeof en.words> = {
  ...photoShownWords,
  leaf: 'Foto',
  none: 'Zeig ein Gemälde: Nur Fotos von Gemälden werden entzerrt.',
  onlyLook:
    'Dieses Foto darf entzerren, wer das Bild gemalt hat, hier unterrichtet oder den Server betreibt.',
  heldBy: (person) => `${person} entzerrt dieses Foto gerade. Warte, bis es wieder frei ist.`,
  begin: 'Foto entzerren',
  noted: 'Womit es gemalt ist, und sein Licht',
  notNoted: 'Noch nicht gesagt.',

  how: {
    begin:
      'Zuerst die Ecken des Gemäldes: Lass sie finden, setz sie von Hand, oder sag, dass es das Foto ausfüllt.',
    found: 'Die Ecken sind gefunden. Sieh jede genau an, und zieh sie zurecht, wo sie danebenliegt.',
    corners: 'Zieh jeden Griff auf seine Ecke des Gemäldes. Was dazwischen liegt, wird entzerrt.',
    whole: 'Das ganze Foto gilt als das Gemälde. Wo das nicht stimmt, zieh eine Ecke herein.',
    noCard: 'Ist eine Graukarte oder weißes Papier im Foto? Markiere sie, dann stimmt auch die Farbe.',
    adding: 'Drück auf die Karte im Foto, oder zieh einen Kasten in ihr auf.',
    cards: 'Jeder Kasten liegt in seiner Karte; nur seine Mitte zählt. Sag in der Liste, was jede Karte ist.',
  },
  notSure:
    'Die Ecken waren nicht sicher von der Wand zu unterscheiden, darum ist nichts gesetzt. Setz sie von Hand, oder sag, dass das Gemälde das Foto ausfüllt.',
  notSureKept:
    'Die Ecken waren nicht sicher von der Wand zu unterscheiden, darum bleiben deine, wie sie sind.',
  find: 'Ecken finden',
  finding: 'Sie werden gesucht …',
  byHand: 'Von Hand setzen',
  fills: 'Das Gemälde füllt das Foto',
  clear: 'Ecken wegnehmen',

  corner: [
    `Obere linke ${CORNER_KEYS}`,
    `Obere rechte ${CORNER_KEYS}`,
    `Untere rechte ${CORNER_KEYS}`,
    `Untere linke ${CORNER_KEYS}`,
  ],
  cardBox: (number) => `Kasten auf Karte ${number}. Pfeiltasten bewegen ihn, mit Umschalt weiter.`,
  cardEdge: (number) => `Untere rechte Ecke des Kastens auf Karte ${number}. Pfeiltasten ändern seine Größe.`,
  keys: 'Tab geht zu Ecken und Karten, Pfeiltasten bewegen sie. Plus und Minus vergrößern und verkleinern, Null zeigt das ganze Bild.',
  addKeys: 'Pfeiltasten bewegen das Kreuz, die Leertaste legt dort eine Karte hin, Esc lässt es sein.',

  cards: {
    title: 'Graue und weiße Karten',
    lead: 'Eine Karte macht die Farbe neutral. Zwei, an gegenüberliegenden Seiten, gleichen auch das Licht aus.',
    add: 'Graue oder weiße Karte markieren',
    addAnother: 'Weitere Karte markieren',
    stop: 'Jetzt nicht',
    one: (number) => `Karte ${number}`,
    is: (number) => `Karte ${number} ist`,
    grey: '18 % grau',
    white: 'weiße Karte oder weißes Papier',
    typed: 'eine andere, in Prozent',
    percent: (number) => `Wie viel Licht Karte ${number} zurückwirft, in Prozent`,
    percentSign: '% des Lichts',
    percentWrong:
      'Eine Karte wirft mehr als 0 und höchstens 100 Prozent des Lichts zurück, zum Beispiel 18 oder 90.',
    remove: (number) => `Karte ${number} wegnehmen`,
    removeShort: 'Wegnehmen',
    choose: (number) => `Karte ${number} im Foto zeigen`,
    full: 'Vier Karten genügen.',
    small: 'Dieser Kasten ist sehr klein. Zieh ihn größer, oder drück mitten auf die Karte.',
    fine: 'gut gelesen',
  },

  size: {
    title: 'Größe des Malgrunds',
    lead: 'Nur das Verhältnis zählt. Ohne Angabe ergibt es sich aus den Ecken.',
    choose: 'Übliche Größen',
    chosen: 'Unten eingetragen',
    none: 'Nicht angegeben',
    fitting: 'Zu diesen Ecken passend',
    inches: 'Zoll',
    french: 'Französische Reihe, cm',
    option: (name, width, height, unit) => `${name ? `${name}: ` : ''}${width} × ${height} ${unit}`,
    width: 'Breite',
    height: 'Höhe',
    wrong: 'Breite und Höhe sind Zahlen über 0, zum Beispiel 40 und 30.',
  },

  beside: {
    label: 'Was neben dem Foto steht',
    labelNarrow: 'Was gezeigt wird',
    righted: 'Entzerrt',
    reference: 'Vorlage',
    photo: 'Foto',
    alt: (name) => `Gemälde von ${name}, entzerrt`,
    none: 'Sobald die Ecken oder eine Karte gesetzt sind, steht hier das entzerrte Foto.',
    making: 'Es wird entzerrt …',
    hold: 'Halten: das Licht wie im Foto',
    proportion: (ratio) => `${ratio} : 1`,
  },

  trust: {
    title: 'Wie verlässlich dieses Foto ist',
    ...photoShownWords.trust,
    grade: (grade) => `Güte ${grade}`,
    A: 'Zwei Karten stimmen überein, und das Licht ist gleichmäßig: Tonwerte und Farben lassen sich auf eine Viertelstufe genau nennen.',
    B: 'Etwas Neutrales als Anhalt: Tonwerte und Farben lassen sich auf etwa eine halbe Stufe genau nennen.',
    C: 'Kein sicherer Anhalt: Genannt wird nur die Reihenfolge der Ebenen; zu Beträgen und Farbe wird nichts gesagt.',
    pending: 'Wird gemessen …',
    notYet: 'Die Güte steht fest, sobald Ebenen umrissen sind.',
    reasonsTitle: 'Was es besser machen würde',
    fineTitle: 'Nichts spricht dagegen.',
    reasons: {
      'no neutral': 'Nichts Neutrales im Foto',
      clipping: 'Lichter ausgefressen oder Dunkles zugelaufen',
      glare: 'Glanz auf der Farbe',
      'uneven light': 'Ungleichmäßiges Licht',
      crooked: 'Schräg aufgenommen',
      'too small or soft': 'Klein oder unscharf',
      'mixed light': 'Mischlicht',
      wet: 'Nasse Farbe',
      'reference looks tone-mapped': 'Tonwerte der Vorlage wirken bearbeitet',
      'one cast over everything': 'Ein Farbstich über allem',
    },
    uneven: (share) => `Das Licht fällt über das Gemälde hin um ${percentWords(share)} ab.`,
    again: 'In vier Schritten neu fotografieren',
  },

  overlay: {
    show: 'Glanz und Ausgefressenes zeigen',
    key: 'Was die Muster bedeuten',
    glare: (share) => `Glanz auf ${percentWords(share)} des Gemäldes; aus allen Zahlen ausgelassen`,
    blown: (share) => `Lichter ausgefressen auf ${percentWords(share)}; Zahlen sagen dort „mindestens“`,
    crushed: (share) => `Dunkles zugelaufen auf ${percentWords(share)}; Zahlen sagen dort „höchstens“`,
    nothing: 'Kein Glanz, nichts ausgefressen und nichts zugelaufen.',
  },
};
